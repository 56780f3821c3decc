package groupwright.documents.pages;

import groupwright.documents.content.BarShares;
import groupwright.documents.content.Inline;
import groupwright.documents.content.Verdict;
import java.awt.Color;

/** Draws criterion bars: the target is the upright in the middle, good is to the right. */
final class BarPainter {
    private static final double HEIGHT = 5;

    private BarPainter() {}

    /**
     * Draws a bar.
     *
     * @param middle height of its middle
     * @param top upper edge of the row, from which the upright runs to {@code bottom}
     */
    static void paint(Canvas canvas, Inline.Bar bar, double x, double width, double middle, double top, double bottom) {
        double target = x + width / 2;
        if (bar.verdict() == Verdict.MISSING_INPUT) {
            Color colour = Paper.of(bar.verdict());
            canvas.dotted(x + 3, middle, target - 4, 0.9, colour);
            canvas.ring(target, middle, 2.2, 0.9, colour);
            canvas.dotted(target + 5, middle, x + width - 3, 0.9, colour);
            canvas.line(target, top, target, middle - 4, 0.9, Paper.INK);
            canvas.line(target, middle + 4, target, bottom, 0.9, Paper.INK);
            return;
        }
        double half = width / 2 - 3;
        BarShares shares = BarShares.of(bar.margin(), bar.band(), BarShares.USUAL_SCALE);
        canvas.line(x + 3, middle, x + width - 3, middle, 0.4, Paper.HAIRLINE);
        double end = target + shares.end() * half;
        paintBody(canvas, bar, target, end, middle);
        if (shares.reach() == BarShares.Reach.CUT) {
            paintCut(canvas, target, end, middle);
        }
        paintBand(canvas, bar, shares, target, half, middle);
        canvas.line(target, top, target, bottom, 0.8, Paper.INK);
    }

    private static void paintBody(Canvas canvas, Inline.Bar bar, double target, double end, double middle) {
        double left = Math.min(target, end);
        double width = Math.abs(end - target);
        double top = middle - HEIGHT / 2;
        Color colour = Paper.of(bar.verdict());
        if (bar.verdict().isTooCloseToCall()) {
            canvas.strokeBox(left, top, width, HEIGHT, 0.7, colour);
        } else {
            canvas.fillBox(left, top, width, HEIGHT, colour);
        }
    }

    private static void paintCut(Canvas canvas, double target, double end, double middle) {
        double away = Math.signum(end - target);
        for (double back : new double[] {4, 6.5}) {
            double x = end - away * back;
            canvas.line(x - 1.2, middle + HEIGHT / 2 + 0.6, x + 1.2, middle - HEIGHT / 2 - 0.6, 0.9, Paper.WHITE);
        }
    }

    private static void paintBand(
            Canvas canvas, Inline.Bar bar, BarShares shares, double target, double half, double middle) {
        if (shares.whisker().isEmpty()) {
            return;
        }
        BarShares.Whisker whisker = shares.whisker().get();
        boolean close = bar.verdict().isTooCloseToCall();
        double thickness = close ? 1.1 : 0.7;
        double tick = close ? HEIGHT / 2 + 0.6 : 2.4;
        Color colour = Paper.of(Verdict.MEETS_CLOSE);
        canvas.line(target + whisker.low() * half, middle, target + whisker.high() * half, middle, thickness, colour);
        if (!close) { // inside the filled bar the whisker is knocked out
            shares.inside()
                    .ifPresent(inside -> canvas.line(
                            target + inside.low() * half,
                            middle,
                            target + inside.high() * half,
                            middle,
                            thickness,
                            Paper.WHITE));
        }
        for (double share : new double[] {whisker.low(), whisker.high()}) {
            double x = target + share * half;
            boolean inside = !close && shares.covers(share);
            canvas.line(x, middle - tick, x, middle + tick, thickness, inside ? Paper.WHITE : colour);
        }
    }
}
