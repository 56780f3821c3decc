package groupwright.workbench.components;

import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import java.awt.geom.Ellipse2D;

/** Paints how well a value is known: the band as a dimension line, the value as a dot, the target as an upright. */
public enum CriterionBand implements Painter<Known> {
    /** As in Workings. */
    PLAIN;

    private static final double HEIGHT = 46;
    private static final double LINE_Y = 22;
    private static final double LEAST_WIDTH = 160;
    /** What stays free beyond band and target, as a share of what they span. */
    private static final double AIR = 0.25;

    private static final double DOT = 3.5;
    private static final double TICK = 9;

    @Override
    public Extent extent(Known known) {
        double texts = Type.CAPTION.width(known.lowText(), Weight.REGULAR)
                + Type.CAPTION.width(known.highText(), Weight.REGULAR);
        return new Extent(Math.max(LEAST_WIDTH, 2 * texts), HEIGHT, -1);
    }

    @Override
    public String name(Known known) {
        return known.name();
    }

    /** Turns values into places; band and target always lie inside. */
    private record Axis(double first, double perUnit) {
        static Axis of(Known known, double width) {
            double target = known.target().map(Known.Target::at).orElse(known.value());
            double low = Math.min(known.low(), target);
            double span = Math.max(known.high(), target) - low;
            double shown = span == 0 ? 1 : span * (1 + 2 * AIR);
            return new Axis(low - (shown - span) / 2, width / shown);
        }

        double x(double value) {
            return (value - first) * perUnit;
        }
    }

    @Override
    public void paint(Drawing drawing, Known known) {
        Axis axis = Axis.of(known, drawing.width());
        double low = axis.x(known.low());
        double high = axis.x(known.high());
        drawing.level(0, drawing.width(), LINE_Y, 1, Token.HAIRLINE);
        drawing.level(low, high, LINE_Y - 0.5, 2, Token.CLOSE);
        drawing.upright(low, LINE_Y - TICK / 2, LINE_Y + TICK / 2 + 1, 1.6, Token.CLOSE);
        drawing.upright(high - 1.6, LINE_Y - TICK / 2, LINE_Y + TICK / 2 + 1, 1.6, Token.CLOSE);
        double dot = axis.x(known.value());
        drawing.fill(new Ellipse2D.Double(dot - DOT, LINE_Y + 0.5 - DOT, 2 * DOT, 2 * DOT), Token.INK);
        known.target().ifPresent(target -> paintTarget(drawing, target, axis.x(target.at())));
        paintEnds(drawing, known, low, high);
    }

    private static void paintTarget(Drawing drawing, Known.Target target, double x) {
        drawing.upright(x, LINE_Y - 14, LINE_Y + 10, 1, Token.INK);
        double width = Type.CAPTION.width(target.word(), Weight.REGULAR);
        double left = x + 4 + width <= drawing.width() ? x + 4 : x - 4 - width;
        drawing.text(target.word(), left, LINE_Y - 7, Type.CAPTION, Weight.REGULAR, Token.MUTED);
    }

    /** Under the ends of the band, kept apart and inside the drawing. */
    private static void paintEnds(Drawing drawing, Known known, double low, double high) {
        double lowWidth = Type.CAPTION.width(known.lowText(), Weight.REGULAR);
        double highWidth = Type.CAPTION.width(known.highText(), Weight.REGULAR);
        double apart = 8;
        double lowX = Math.max(0, Math.min(low - lowWidth / 2, (low + high - apart) / 2 - lowWidth));
        double highX = Math.min(
                drawing.width() - highWidth, Math.max(high - highWidth / 2, Math.max(lowX + lowWidth + apart, 0)));
        drawing.text(known.lowText(), lowX, HEIGHT - 6, Type.CAPTION, Weight.REGULAR, Token.INK);
        drawing.text(known.highText(), highX, HEIGHT - 6, Type.CAPTION, Weight.REGULAR, Token.INK);
    }
}
