package groupwright.workbench.components;

import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.BoxLayout;
import javax.swing.JPanel;
import javax.swing.border.Border;

/** Stands, top left, where there is nothing yet: what is not there, why it matters here, and what to do. */
public final class EmptyPlace extends JPanel {
    /**
     * An empty place.
     *
     * @param what is not there, for example {@code No tests yet.}
     * @param why it matters here, with a count
     * @param best the best next step
     * @param other one more step
     */
    public EmptyPlace(String what, String why, Optional<Step> best, Optional<Step> other) {
        super(new BorderLayout());
        setOpaque(false);
        JPanel lines = new JPanel();
        lines.setOpaque(false);
        lines.setLayout(new BoxLayout(lines, BoxLayout.PAGE_AXIS));
        Prose head = new Prose(what, Type.HEADING, Weight.STRONG, Token.INK);
        head.setAlignmentX(LEFT_ALIGNMENT);
        head.setBorder(indent());
        lines.add(head);
        Prose reason = new Prose(why, Type.TABLE, Token.MUTED);
        reason.setAlignmentX(LEFT_ALIGNMENT);
        reason.setBorder(indent());
        lines.add(reason);
        if (best.isPresent() || other.isPresent()) {
            lines.add(buttons(best, other));
        }
        add(lines, BorderLayout.NORTH);
        getAccessibleContext().setAccessibleName(what);
        getAccessibleContext().setAccessibleDescription(why);
    }

    /** Level with the buttons, which leave room for their focus ring. */
    private static Border indent() {
        return BorderFactory.createEmptyBorder(0, FocusBorder.room(), 0, 0);
    }

    private static JPanel buttons(Optional<Step> best, Optional<Step> other) {
        JPanel buttons = new JPanel(new FlowLayout(FlowLayout.LEADING, 0, 0));
        buttons.setOpaque(false);
        buttons.setAlignmentX(LEFT_ALIGNMENT);
        buttons.setBorder(BorderFactory.createEmptyBorder(Metric.GAP.px(), 0, 0, 0));
        best.ifPresent(step -> buttons.add(spaced(ActionButton.main(step.label(), step.done()))));
        other.ifPresent(step -> buttons.add(spaced(ActionButton.plain(step.label(), step.done()))));
        return buttons;
    }

    private static JPanel spaced(ActionButton button) {
        JPanel panel = new JPanel(new BorderLayout());
        panel.setOpaque(false);
        panel.setBorder(BorderFactory.createEmptyBorder(0, 0, 0, Metric.STEP.px()));
        panel.add(button);
        return panel;
    }
}
