package groupwright.workbench.components;

import groupwright.documents.content.BarShares;
import groupwright.documents.content.Verdict;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;

/** Paints criterion bars. The target stands in the middle of the room and its upright fills the height, so that in a column it is one line. */
public enum CriterionBar implements Painter<Bar> {
    /** In rows of a table, 6 high. */
    IN_ROW(6),
    /** Alone, 8 high. */
    ALONE(8);

    private static final double TICK = 3;
    private static final double WHISKER = 1;
    private static final double STRONG_WHISKER = 1.6;
    private static final double RING = 3.6;
    private static final double STRETCH = 11;

    private final double thickness;

    CriterionBar(double thickness) {
        this.thickness = thickness;
    }

    @Override
    public Extent extent(Bar bar) {
        return new Extent(Metric.BAR_LEAST.units(), Metric.CLOSE_ROW.units(), -1);
    }

    @Override
    public String name(Bar bar) {
        return bar.name();
    }

    /** Where things stand in one drawing: the middle, half the length, the height of the middle. */
    private record Frame(double target, double half, double middle) {
        static Frame of(Drawing drawing) {
            double length = Math.min(drawing.width(), Metric.BAR_MOST.units());
            return new Frame(Math.floor(drawing.width() / 2), length / 2, Math.floor(drawing.height() / 2) + 0.5);
        }

        double x(double share) {
            return target + share * half;
        }
    }

    @Override
    public void paint(Drawing drawing, Bar bar) {
        Frame frame = Frame.of(drawing);
        if (bar.verdict() == Verdict.MISSING_INPUT) {
            paintMissing(drawing, frame);
            return;
        }
        BarShares shares = BarShares.of(bar.margin(), bar.band(), bar.scale());
        drawing.level(frame.x(-1), frame.x(1), frame.middle() - 0.5, 1, Token.HAIRLINE);
        bar.stretch()
                .ifPresent(at -> BarShares.mark(at, bar.scale())
                        .ifPresent(share -> drawing.upright(
                                frame.x(share),
                                frame.middle() - STRETCH / 2,
                                frame.middle() + STRETCH / 2,
                                1,
                                Token.EDGE)));
        if (bar.verdict().isTooCloseToCall()) {
            paintHollow(drawing, frame, shares);
        } else {
            Token colour = Mark.of(bar.verdict()).colour();
            double end = frame.x(shares.end());
            drawing.box(
                    Math.min(frame.target(), end),
                    frame.middle() - thickness / 2,
                    Math.abs(end - frame.target()),
                    thickness,
                    colour);
            paintCut(drawing, frame, shares);
            paintWhisker(drawing, frame, shares);
        }
        drawing.upright(frame.target(), 0, drawing.height(), 1, Token.INK);
    }

    private static void paintMissing(Drawing drawing, Frame frame) {
        double y = frame.middle();
        double beside = RING + 2;
        drawing.dashes(new Line2D.Double(frame.target() - beside, y, frame.x(-1), y), 1, 2, 4, Token.MISSING);
        drawing.dashes(new Line2D.Double(frame.target() + beside, y, frame.x(1), y), 1, 2, 4, Token.MISSING);
        drawing.upright(frame.target(), 0, y - beside, 1, Token.INK);
        drawing.upright(frame.target(), y + beside, drawing.height(), 1, Token.INK);
        double x = frame.target() + 0.5;
        drawing.stroke(new Ellipse2D.Double(x - RING, y - RING, 2 * RING, 2 * RING), 1.6, Token.MISSING);
    }

    /** No verdict, no hue: an outline, and the whisker across the upright. */
    private void paintHollow(Drawing drawing, Frame frame, BarShares shares) {
        double end = frame.x(shares.end());
        double left = Math.min(frame.target(), end);
        double width = Math.abs(end - frame.target());
        double top = frame.middle() - thickness / 2;
        if (width > 2) {
            drawing.box(left, top, width, thickness, Token.RAISED);
            drawing.frame(left, top, width, thickness, 1, Token.CLOSE);
        }
        shares.whisker().ifPresent(whisker -> {
            double from = frame.x(whisker.low());
            double to = frame.x(whisker.high());
            drawing.level(from, to, frame.middle() - STRONG_WHISKER / 2, STRONG_WHISKER, Token.CLOSE);
            double reach = thickness / 2 + 1;
            for (double x : new double[] {from, to - STRONG_WHISKER}) {
                drawing.upright(x, frame.middle() - reach, frame.middle() + reach, STRONG_WHISKER, Token.CLOSE);
            }
        });
    }

    private void paintWhisker(Drawing drawing, Frame frame, BarShares shares) {
        shares.whisker().ifPresent(whisker -> {
            double y = frame.middle() - WHISKER / 2;
            drawing.level(frame.x(whisker.low()), frame.x(whisker.high()), y, WHISKER, Token.INK);
            shares.inside()
                    .ifPresent(inside ->
                            drawing.level(frame.x(inside.low()), frame.x(inside.high()), y, WHISKER, Token.RAISED));
            for (double share : new double[] {whisker.low(), whisker.high()}) {
                boolean inside = shares.covers(share);
                double reach = inside ? Math.min(TICK, thickness / 2) : TICK + 0.5;
                drawing.upright(
                        frame.x(share),
                        frame.middle() - reach,
                        frame.middle() + reach,
                        WHISKER,
                        inside ? Token.RAISED : Token.INK);
            }
        });
    }

    private void paintCut(Drawing drawing, Frame frame, BarShares shares) {
        if (shares.reach() != BarShares.Reach.CUT) {
            return;
        }
        double away = Math.signum(shares.end());
        for (double back : new double[] {5.5, 9.5}) {
            double x = frame.x(shares.end()) - away * back;
            Path2D slash = new Path2D.Double();
            slash.moveTo(x - 1.5, frame.middle() + thickness / 2);
            slash.lineTo(x + 1.5, frame.middle() - thickness / 2);
            drawing.stroke(slash, STRONG_WHISKER, Token.RAISED);
        }
    }

    /**
     * Paints the head of a column of bars: what its ends stand for, and the word over the target.
     *
     * @param low for example {@code −15 %}
     * @param high for example {@code +15}
     */
    public static void paintHead(Drawing drawing, String low, String target, String high) {
        Frame frame = Frame.of(drawing);
        double baseline = Type.CAPTION.baseline(drawing.height() / 2);
        double half = Type.CAPTION.width(target, Weight.STRONG) / 2;
        drawing.text(low, frame.x(-1), baseline, Type.CAPTION, Weight.REGULAR, Token.MUTED);
        drawing.text(target, frame.target() + 0.5 - half, baseline, Type.CAPTION, Weight.STRONG, Token.INK);
        drawing.textUpTo(high, frame.x(1), baseline, Type.CAPTION, Weight.REGULAR, Token.MUTED);
    }
}
