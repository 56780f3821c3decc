package groupwright.workbench.form;

import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.List;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.event.PopupMenuEvent;
import javax.swing.event.PopupMenuListener;

/**
 * One of a few words. Arrow keys only try words; the choice holds on Enter, when the list closes, or when the focus goes, so
 * that walking through the words is not an edit each.
 */
final class ChoiceEditor implements Editor {
    private final JComboBox<String> box = new JComboBox<>();
    private boolean quiet;

    ChoiceEditor(List<String> words) {
        words.forEach(box::addItem);
        box.setSelectedIndex(-1); // a box takes the first word by itself
        box.setMaximumRowCount(Math.max(1, words.size()));
    }

    @Override
    public JComponent component() {
        return box;
    }

    @Override
    public JComponent input() {
        return box;
    }

    @Override
    public String text() {
        return box.getSelectedItem() instanceof String word ? word : "";
    }

    @Override
    public void show(String text) {
        quiet = true;
        box.setSelectedItem(text);
        if (!text.equals(text())) { // no choice yet
            box.setSelectedIndex(-1);
        }
        quiet = false;
    }

    @Override
    public void lock() {
        box.setEnabled(false);
    }

    @Override
    public void tell(Runnable typing, Runnable done) {
        box.addActionListener(changed -> {
            if (!quiet) {
                typing.run();
            }
        });
        box.addPopupMenuListener(new PopupMenuListener() {
            @Override
            public void popupMenuWillBecomeVisible(PopupMenuEvent opens) {
                // nothing is chosen yet
            }

            @Override
            public void popupMenuWillBecomeInvisible(PopupMenuEvent closes) {
                javax.swing.SwingUtilities.invokeLater(done); // after the box took the word over
            }

            @Override
            public void popupMenuCanceled(PopupMenuEvent cancelled) {
                // the word before stays
            }
        });
        TextKeys.bind(box, "ENTER", done);
        box.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent lost) {
                if (!lost.isTemporary()) {
                    done.run();
                }
            }
        });
    }
}
