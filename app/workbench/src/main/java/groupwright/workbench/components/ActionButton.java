package groupwright.workbench.components;

import java.util.Objects;
import javax.swing.JButton;

/** A button: verb and thing, with "…" only where a question follows. */
public final class ActionButton extends JButton {
    private ActionButton(String text, Runnable done) {
        super(text);
        Objects.requireNonNull(done, "done");
        addActionListener(event -> done.run());
        getAccessibleContext().setAccessibleName(text);
    }

    /** The best next step, filled with accent; at most one in sight. */
    public static ActionButton main(String text, Runnable done) {
        ActionButton button = new ActionButton(text, done);
        button.putClientProperty("FlatLaf.styleClass", "main");
        return button;
    }

    /** Any other step. */
    public static ActionButton plain(String text, Runnable done) {
        return new ActionButton(text, done);
    }
}
