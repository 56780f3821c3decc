package groupwright.workbench.documents;

import groupwright.workbench.components.ActionButton;
import groupwright.workbench.components.Prose;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Words;
import groupwright.workbench.workings.StackLayout;
import java.awt.FlowLayout;
import java.awt.event.ActionEvent;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;

/** A button that asks for the name of a new template where it stands. */
final class AddTemplate extends JPanel {
    private final transient Words words;
    private final transient Consumer<String> asked;
    private final JTextField name = new JTextField();

    /** @param asked told the name that was typed */
    AddTemplate(Words words, Consumer<String> asked) {
        super(new StackLayout(Metric.HALF_STEP.px()));
        this.words = words;
        this.asked = asked;
        setOpaque(false);
        name.setName("documents.newName");
        name.getAccessibleContext().setAccessibleName(words.text("name"));
        name.addActionListener(event -> asked.accept(name.getText().strip()));
        name.getInputMap().put(KeyStroke.getKeyStroke("ESCAPE"), "leave");
        name.getActionMap().put("leave", new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                close().requestFocusInWindow();
            }
        });
        close();
    }

    private ActionButton close() {
        removeAll();
        ActionButton open = ActionButton.plain(words.text("add"), this::open);
        open.setName("documents.add");
        add(row(open));
        revalidate();
        repaint();
        return open;
    }

    private void open() {
        name.setText("");
        ask(Optional.empty());
        name.requestFocusInWindow();
    }

    private void ask(Optional<String> wrong) {
        boolean focused = name.isFocusOwner();
        removeAll();
        add(new Prose(words.text("name"), Type.TABLE, Token.INK));
        add(name);
        wrong.ifPresent(sentence -> {
            Prose said = new Prose(sentence, Type.SECONDARY, Token.INK);
            said.setName("documents.newName.refusal");
            add(said);
        });
        name.putClientProperty("JComponent.outline", wrong.isPresent() ? "error" : null);
        ActionButton done = ActionButton.plain(
                words.text("add.done"), () -> asked.accept(name.getText().strip()));
        done.setName("documents.addNow");
        ActionButton leave = ActionButton.plain(words.text("add.leave"), () -> close().requestFocusInWindow());
        add(row(done, leave));
        revalidate();
        repaint();
        if (focused) {
            name.requestFocusInWindow();
        }
    }

    /** Says why there is no template of that name, or closes once there is. */
    void answer(Optional<String> wrong) {
        if (wrong.isPresent()) {
            ask(wrong);
            name.requestFocusInWindow();
        } else {
            close();
        }
    }

    private static JPanel row(ActionButton... buttons) {
        JPanel row = new JPanel(new FlowLayout(FlowLayout.LEADING, Metric.STEP.px(), 0));
        row.setOpaque(false);
        row.setBorder(BorderFactory.createEmptyBorder(0, -Metric.STEP.px(), 0, 0));
        for (ActionButton button : buttons) {
            row.add(button);
        }
        return row;
    }
}
