package groupwright.workbench.claims;

import groupwright.workbench.components.ActionLink;
import groupwright.workbench.components.Prose;
import groupwright.workbench.lists.Line;
import groupwright.workbench.lists.Stack;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import java.awt.BorderLayout;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** The fields of a claim, with what its wording reads like above them. */
final class ClaimForm extends JPanel {
    private static final long serialVersionUID = 1L;

    private final JComponent form;
    private final Preview preview;

    ClaimForm(String title, JComponent form, Preview preview, String doneWords, Runnable done) {
        super(new BorderLayout());
        this.form = form;
        this.preview = preview;
        setOpaque(false);
        Stack stack = new Stack(Metric.STEP.units());
        stack.setBorder(
                BorderFactory.createEmptyBorder(Metric.STEP.px(), Metric.GAP.px(), Metric.GAP.px(), Metric.GAP.px()));
        ActionLink closing = new ActionLink(doneWords, done);
        closing.setName("claims.done");
        stack.add(new Line(Metric.GAP.units(), new Prose(title, Type.HEADING, Weight.STRONG, Token.INK), closing));
        stack.add(preview);
        stack.add(form);
        add(stack);
        follow();
    }

    /** Follows the wording; call after the form may have been built anew. */
    void follow() {
        preview.follow(form);
    }
}
