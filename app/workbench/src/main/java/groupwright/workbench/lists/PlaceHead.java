package groupwright.workbench.lists;

import groupwright.workbench.components.ActionButton;
import groupwright.workbench.components.Extent;
import groupwright.workbench.components.PaintedView;
import groupwright.workbench.components.Painter;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.FlowLayout;
import javax.swing.BorderFactory;
import javax.swing.JPanel;

/** The head of a place: its title, what it is about in muted, and what one can add, at the right. */
public final class PlaceHead extends JPanel {
    private static final long serialVersionUID = 1L;

    /** Title and what it is about. */
    private record Heading(String title, String about) {}

    private enum HeadingPainter implements Painter<Heading> {
        PLAIN;

        private static final double HEIGHT = 28;

        @Override
        public Extent extent(Heading heading) {
            double about = Type.BODY.width(heading.about(), Weight.REGULAR);
            return new Extent(after(heading) + about, HEIGHT, baseline(HEIGHT));
        }

        private static double baseline(double height) {
            return Type.TITLE.baseline(height / 2);
        }

        private static double after(Heading heading) {
            return Type.TITLE.width(heading.title(), Weight.STRONG) + Metric.GAP.units() - Metric.HALF_STEP.units();
        }

        @Override
        public void paint(Drawing drawing, Heading heading) {
            double baseline = baseline(drawing.height());
            drawing.text(heading.title(), 0, baseline, Type.TITLE, Weight.STRONG, Token.INK);
            double room = drawing.width() - after(heading);
            if (room > Metric.UNIT_COLUMN.units()) {
                String about = Type.BODY.cut(heading.about(), Weight.REGULAR, room + 1);
                drawing.text(about, after(heading), baseline, Type.BODY, Weight.REGULAR, Token.MUTED);
            }
        }

        @Override
        public String name(Heading heading) {
            return heading.title() + ", " + heading.about();
        }
    }

    private final String title;
    private final PaintedView<Heading> heading;

    /** @param buttons at the right, the best step last */
    public PlaceHead(String title, ActionButton... buttons) {
        super(new BorderLayout(Metric.GAP.px(), 0));
        this.title = title;
        this.heading = new PaintedView<>(HeadingPainter.PLAIN, new Heading(title, ""));
        heading.setMinimumSize(new Dimension(1, 1));
        setOpaque(false);
        setBorder(BorderFactory.createEmptyBorder(
                Metric.STEP.px() + Look.pixels(2), Metric.GAP.px(), Metric.STEP.px(), Metric.GAP.px()));
        add(heading, BorderLayout.CENTER);
        JPanel right = new JPanel(new FlowLayout(FlowLayout.TRAILING, Metric.STEP.px(), 0));
        right.setOpaque(false);
        for (ActionButton button : buttons) {
            right.add(button);
        }
        add(right, BorderLayout.LINE_END);
    }

    /** Says what the place is about. */
    public void about(String words) {
        heading.show(new Heading(title, words));
    }
}
