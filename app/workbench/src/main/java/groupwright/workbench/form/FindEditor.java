package groupwright.workbench.form;

import groupwright.workbench.notation.Found;
import java.util.List;
import java.util.function.Function;
import javax.swing.JComponent;
import javax.swing.JTextField;

/** A field that finds as one types; what it holds is the text of the one chosen. */
final class FindEditor implements Editor {
    private final JTextField field = new JTextField();
    private final FindList list;
    private boolean quiet;
    private Runnable done = () -> {};

    /**
     * @param text what stands in the field when something was chosen
     */
    FindEditor(Function<String, List<Found>> find, Function<Found, String> text) {
        list = new FindList(field, find, found -> {
            show(text.apply(found));
            done.run();
        });
        TextKeys.bind(field, "DOWN", () -> moveOrOpen(1));
        TextKeys.bind(field, "UP", () -> moveOrOpen(-1));
        TextKeys.bind(field, "F2", field::selectAll);
    }

    private void moveOrOpen(int by) {
        if (list.isOpen()) {
            list.move(by);
        } else {
            list.search("");
        }
    }

    @Override
    public JComponent component() {
        return field;
    }

    @Override
    public JComponent input() {
        return field;
    }

    @Override
    public String text() {
        return field.getText();
    }

    @Override
    public void show(String text) {
        quiet = true;
        field.setText(text);
        field.setCaretPosition(0);
        quiet = false;
        list.close();
    }

    @Override
    public void lock() {
        field.setEditable(false);
    }

    @Override
    public void tell(Runnable typing, Runnable whenDone) {
        done = whenDone;
        TextKeys.typing(field, () -> {
            if (!quiet) {
                typing.run();
                list.search(field.getText());
            }
        });
        TextKeys.done(field, () -> {
            if (list.isOpen() && field.isFocusOwner()) { // Enter takes the marked one; leaving takes what was typed
                list.choose();
            } else {
                list.close();
                whenDone.run();
            }
        });
    }
}
