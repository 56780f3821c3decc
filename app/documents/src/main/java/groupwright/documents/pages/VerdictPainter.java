package groupwright.documents.pages;

import groupwright.documents.content.Verdict;
import java.awt.Color;

/** Draws the verdict marks, all of which grow from the upright of the criterion bar. */
final class VerdictPainter {
    private VerdictPainter() {}

    /** Draws the mark in a square of {@code size} that stands a little below the baseline. */
    static void paint(Canvas canvas, Verdict verdict, double x, double baseline, double size) {
        double unit = size / 12;
        double top = baseline - 10.2 * unit;
        double middleX = x + 6 * unit;
        double middleY = top + 6 * unit;
        double upright = 1.7 * unit;
        Color colour = Paper.of(verdict);
        if (verdict == Verdict.MISSING_INPUT) {
            canvas.line(middleX, top, middleX, top + 2.2 * unit, upright, colour);
            canvas.line(middleX, top + 9.8 * unit, middleX, top + 12 * unit, upright, colour);
            canvas.ring(middleX, middleY, 3 * unit, 1.3 * unit, colour);
            return;
        }
        double uprightX = verdict == Verdict.MISSES ? x + 9 * unit : verdict == Verdict.MEETS ? x + 3 * unit : middleX;
        canvas.line(uprightX, top, uprightX, top + 12 * unit, upright, colour);
        if (verdict == Verdict.MEETS) {
            canvas.fillHalfDisc(uprightX + 1.5 * unit, middleY, 4.9 * unit, colour);
        } else if (verdict == Verdict.MISSES) {
            double back = uprightX - 1.6 * unit;
            canvas.fillTriangle(back, top + 1.6 * unit, back, top + 10.4 * unit, back - 6.6 * unit, middleY, colour);
        } else {
            canvas.line(x + 0.6 * unit, middleY, x + 11.4 * unit, middleY, upright, colour);
            canvas.line(x + 0.9 * unit, top + 3 * unit, x + 0.9 * unit, top + 9 * unit, upright, colour);
            canvas.line(x + 11.1 * unit, top + 3 * unit, x + 11.1 * unit, top + 9 * unit, upright, colour);
        }
    }
}
