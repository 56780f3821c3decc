package groupwright.documents.charts;

import java.awt.Color;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** Draws step bars. */
final class StepBarsPainter {
    private static final double DOT = 1.6;
    private static final double DOT_PITCH = 4.4;
    private static final int MOST_DOTS = 5;
    private static final double RING = 4;
    /** What exceeds a limit stays visible however little it is. */
    private static final double LEAST_EXCESS = 2;

    private final StepBars bars;
    private final StepBarsLayout layout;
    private final StepBarsWords words;

    StepBarsPainter(StepBars bars, StepBarsLayout layout) {
        this.bars = bars;
        this.layout = layout;
        this.words = new StepBarsWords(bars);
    }

    void paint(Pen pen) {
        List<StepBars.Step> steps = bars.steps();
        for (int i = 0; i < steps.size(); i++) {
            bar(pen, steps.get(i), layout.barX(i));
            positions(pen, steps.get(i).likePositions(), layout.barX(i));
        }
        double axis = Pen.sharp(StepBarsLayout.BASE);
        pen.line(0, axis, layout.right(steps.size()), axis, 1, pen.palette().edge());
        cog(pen, steps.get(0).smaller(), 0);
        for (int i = 0; i < steps.size(); i++) {
            cog(pen, steps.get(i).larger(), i + 1);
        }
        bars.limit().ifPresent(limit -> limit(pen, limit));
    }

    private void cog(Pen pen, int teeth, int place) {
        pen.textCentred(
                Integer.toString(teeth),
                layout.cogX(place),
                StepBarsLayout.COGS_BASELINE,
                Lettered.LABEL,
                pen.palette().ink());
    }

    private void bar(Pen pen, StepBars.Step step, double middle) {
        boolean concerned = bars.limit().map(limit -> limit.concerns(step)).orElse(true);
        boolean exceeds = bars.limit().map(limit -> limit.isExceededBy(step)).orElse(false);
        double left = Math.rint(middle - layout.barWidth() / 2);
        if (!concerned) {
            hollow(
                    pen,
                    left,
                    layout.y(step.pct()),
                    StepBarsLayout.BASE,
                    1,
                    pen.palette().edge());
        } else if (exceeds) {
            double top = layout.y(bars.limit().orElseThrow().mostPct());
            solid(pen, left, top);
            hollow(
                    pen,
                    left,
                    Math.min(layout.y(step.pct()), top - LEAST_EXCESS),
                    top,
                    1.5,
                    pen.palette().misses());
        } else {
            solid(pen, left, layout.y(step.pct()));
        }
        Lettered style = exceeds ? Lettered.SMALL.strong() : Lettered.SMALL;
        Color colour = concerned ? pen.palette().ink() : pen.palette().muted();
        pen.textCentred(words.pct(step), middle, StepBarsLayout.VALUES_BASELINE, style, colour);
    }

    private void solid(Pen pen, double left, double top) {
        pen.fill(
                new Rectangle2D.Double(left, top, layout.barWidth(), StepBarsLayout.BASE - top),
                bars.sign().hue(pen.palette()));
    }

    /** Three sides; below stands the axis or the rest of the bar. */
    private void hollow(Pen pen, double left, double top, double bottom, double thickness, Color colour) {
        double right = left + layout.barWidth();
        pen.fill(
                new Rectangle2D.Double(left, top, right - left, bottom - top),
                pen.palette().surface());
        Path2D sides = new Path2D.Double();
        sides.moveTo(left + thickness / 2, bottom);
        sides.lineTo(left + thickness / 2, top + thickness / 2);
        sides.lineTo(right - thickness / 2, top + thickness / 2);
        sides.lineTo(right - thickness / 2, bottom);
        pen.stroke(sides, thickness, colour);
    }

    private void positions(Pen pen, int positions, double middle) {
        double y = StepBarsLayout.DOTS;
        Color ink = pen.palette().ink();
        if (positions > MOST_DOTS) {
            String number = Integer.toString(positions);
            double width = Lettered.SMALL.width(number, pen.lettering());
            double left = middle - (width + DOT_PITCH) / 2;
            pen.text(number, left, y + 3.6, Lettered.SMALL, ink);
            dot(pen, left + width + DOT_PITCH - DOT, y);
            return;
        }
        for (int i = 0; i < positions; i++) {
            dot(pen, middle + (i - (positions - 1) / 2.0) * DOT_PITCH, y);
        }
        if (positions == 1) {
            pen.stroke(
                    new Ellipse2D.Double(middle - RING, y - RING, 2 * RING, 2 * RING),
                    1.2,
                    pen.palette().misses());
        }
    }

    private static void dot(Pen pen, double x, double y) {
        pen.fill(
                new Ellipse2D.Double(x - DOT, y - DOT, 2 * DOT, 2 * DOT),
                pen.palette().ink());
    }

    private void limit(Pen pen, StepBars.Limit limit) {
        int first = (int)
                bars.steps().stream().filter(step -> !limit.concerns(step)).count();
        double right = layout.right(bars.steps().size());
        double y = layout.y(limit.mostPct());
        if (first < bars.steps().size()) {
            pen.dotted(layout.cogX(first), Pen.sharp(y), right, pen.palette().ink());
        }
        Lettered strong = Lettered.SMALL.strong();
        if (layout.sentence() == StepBarsLayout.Sentence.BESIDE) {
            double x = right + StepBarsLayout.SENTENCE_GAP;
            pen.text(words.limit(limit), x, y + 3.6, strong, pen.palette().ink());
            pen.text(
                    words.from(limit),
                    x,
                    y + 15.6,
                    Lettered.SMALL,
                    pen.palette().muted());
        } else {
            pen.text(
                    words.wholeLimit(limit),
                    0,
                    StepBarsLayout.SENTENCE_BASELINE,
                    strong,
                    pen.palette().ink());
        }
    }
}
