package groupwright.workbench.form;

import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.text.JTextComponent;

/** Listens to a text component the same way everywhere. */
final class TextKeys {
    private TextKeys() {}

    /** Enter and focus lost. */
    static void done(JComponent input, Runnable done) {
        bind(input, "ENTER", done);
        input.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent lost) {
                if (!lost.isTemporary()) {
                    done.run();
                }
            }
        });
    }

    /** A key while a component has the focus. */
    static void bind(JComponent input, String key, Runnable action) {
        input.getInputMap().put(KeyStroke.getKeyStroke(key), key);
        input.getActionMap().put(key, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent pressed) {
                action.run();
            }
        });
    }

    /** Every change of the text. */
    static void typing(JTextComponent input, Runnable typing) {
        input.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent change) {
                typing.run();
            }

            @Override
            public void removeUpdate(DocumentEvent change) {
                typing.run();
            }

            @Override
            public void changedUpdate(DocumentEvent change) {
                typing.run();
            }
        });
    }
}
