package groupwright.workbench.form;

import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import java.awt.Insets;
import javax.swing.JButton;

/** Something to do with a part of a form: accent words without a line, reached by Tab. */
final class Action extends JButton {
    private static final long serialVersionUID = 1L;

    Action(String words, String name, Runnable action) {
        super(words);
        putClientProperty("JButton.buttonType", "borderless");
        setMargin(margin());
        setOpaque(false);
        getAccessibleContext().setAccessibleName(name);
        addActionListener(pressed -> action.run());
        TextKeys.bind(this, "ENTER", action);
    }

    /** At 100 %; the look enlarges margins itself. */
    private static Insets margin() {
        int half = Metric.HALF_STEP.units();
        return new Insets(half, half, half, half);
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setFont(Type.SECONDARY.font(Weight.STRONG));
        setForeground(Token.ACCENT.colour());
    }
}
