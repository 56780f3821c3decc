package groupwright.workbench.documents;

import groupwright.workbench.components.Extent;
import groupwright.workbench.components.Mark;
import groupwright.workbench.components.Painter;
import groupwright.workbench.components.VerdictMark;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import java.util.Optional;

/** Paints a document in the list: its title, and how it stands against what was written last. */
record DocumentRow(VerdictMark marks) implements Painter<DocumentRow.Value> {
    static final double HEIGHT = 56;
    private static final double TITLE = 18;
    private static final double STATE = 38;

    /**
     * A document.
     *
     * @param pages how many; empty where there are none
     * @param mark before its state
     * @param selected whether its pages are shown
     */
    record Value(String title, String pages, String state, Optional<Mark> mark, boolean selected) {
        Value selected(boolean now) {
            return new Value(title, pages, state, mark, now);
        }
    }

    @Override
    public Extent extent(Value value) {
        return new Extent(200, HEIGHT, Type.BODY.baseline(TITLE));
    }

    @Override
    public String name(Value value) {
        String pages = value.pages().isEmpty() ? "" : ", " + value.pages();
        return value.title() + pages + ", " + value.state();
    }

    @Override
    public void paint(Drawing drawing, Value value) {
        double left = Metric.GAP.units();
        if (value.selected()) {
            drawing.box(0, 0, drawing.width(), drawing.height(), Token.WASH);
            drawing.level(0, drawing.width(), drawing.height() - 2, 2, Token.ACCENT);
        } else {
            drawing.level(left, drawing.width() - left, drawing.height() - 1, 1, Token.HAIRLINE);
        }
        double right = drawing.width() - left;
        double baseline = Type.BODY.baseline(TITLE);
        drawing.textUpTo(value.pages(), right, baseline, Type.SECONDARY, Weight.REGULAR, Token.MUTED);
        double room = right - left - Type.SECONDARY.width(value.pages(), Weight.REGULAR) - Metric.STEP.units();
        String title = Type.BODY.cut(value.title(), Weight.STRONG, room);
        drawing.text(title, left, baseline, Type.BODY, Weight.STRONG, Token.INK);
        double x = left;
        if (value.mark().isPresent()) {
            try (Drawing mark = drawing.part(left, STATE - VerdictMark.SIZE / 2, VerdictMark.SIZE, VerdictMark.SIZE)) {
                marks.paint(mark, value.mark().get());
            }
            x += VerdictMark.SIZE + Metric.STEP.units();
        }
        String state = Type.SECONDARY.cut(value.state(), Weight.REGULAR, drawing.width() - x - left);
        drawing.text(state, x, Type.SECONDARY.baseline(STATE), Type.SECONDARY, Weight.REGULAR, Token.MUTED);
    }
}
