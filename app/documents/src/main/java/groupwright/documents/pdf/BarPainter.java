package groupwright.documents.pdf;

import groupwright.documents.content.Band;
import groupwright.documents.content.Inline;
import groupwright.documents.content.Verdict;
import java.awt.Color;

/** Draws criterion bars: the target is the upright in the middle, good is to the right. */
final class BarPainter {
    /** Margin at which a bar is cut. */
    static final double SCALE = 0.15;

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
        double perShare = (width / 2 - 3) / SCALE;
        if (bar.verdict() == Verdict.MISSING_INPUT) {
            Color colour = Paper.of(bar.verdict());
            canvas.dotted(x + 3, middle, target - 4, 0.9, colour);
            canvas.ring(target, middle, 2.2, 0.9, colour);
            canvas.dotted(target + 5, middle, x + width - 3, 0.9, colour);
            canvas.line(target, top, target, middle - 4, 0.9, Paper.INK);
            canvas.line(target, middle + 4, target, bottom, 0.9, Paper.INK);
            return;
        }
        canvas.line(x + 3, middle, x + width - 3, middle, 0.4, Paper.HAIRLINE);
        double end = target + clamp(bar.margin()) * perShare;
        paintBody(canvas, bar, target, end, middle);
        if (Math.abs(bar.margin()) > SCALE) {
            paintCut(canvas, target, end, middle);
        }
        bar.band().ifPresent(band -> paintBand(canvas, bar, band, target, perShare, middle));
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
            Canvas canvas, Inline.Bar bar, Band band, double target, double perShare, double middle) {
        double low = target + clamp(band.low()) * perShare;
        double high = target + clamp(band.high()) * perShare;
        double end = target + clamp(bar.margin()) * perShare;
        boolean close = bar.verdict().isTooCloseToCall();
        double thickness = close ? 1.1 : 0.7;
        double tick = close ? HEIGHT / 2 + 0.6 : 2.4;
        Color colour = Paper.of(Verdict.MEETS_CLOSE);
        canvas.line(low, middle, high, middle, thickness, colour);
        if (!close) { // inside the filled bar the whisker is knocked out
            double from = Math.max(low, Math.min(target, end));
            double to = Math.min(high, Math.max(target, end));
            if (from < to) {
                canvas.line(from, middle, to, middle, thickness, Paper.WHITE);
            }
        }
        for (double x : new double[] {low, high}) {
            boolean inside = !close && (x - target) * (x - end) < 0;
            canvas.line(x, middle - tick, x, middle + tick, thickness, inside ? Paper.WHITE : colour);
        }
    }

    private static double clamp(double share) {
        return Math.max(-SCALE, Math.min(SCALE, share));
    }
}
