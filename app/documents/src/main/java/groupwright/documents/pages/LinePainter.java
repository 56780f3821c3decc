package groupwright.documents.pages;

import java.util.List;

/** Draws lines of pieces. */
final class LinePainter {
    /** Where the line under a number runs, below its baseline. */
    static final double BELOW = 2.4;

    private static final double OVERHANG = 1;
    private static final double TICK = 1.3;

    private LinePainter() {}

    /**
     * Draws a line.
     *
     * @param top upper edge of the row around it
     * @param bottom lower edge of that row
     */
    static void paint(Canvas canvas, Line line, double x, double baseline, double top, double bottom) {
        double at = x;
        for (Piece piece : line.pieces()) {
            if (piece instanceof Piece.Word word) {
                canvas.text(word.run(), at, baseline);
            } else if (piece instanceof Piece.Space space) {
                canvas.text(space.run(), at, baseline); // a real space, so that copied text has its words apart
            } else if (piece instanceof Piece.Linked linked) {
                paintRuns(canvas, linked.runs(), at, baseline);
                canvas.link(linked.anchor(), at, baseline - 8, at + linked.width(), baseline + 2.5);
            } else if (piece instanceof Piece.Number number) {
                paintNumber(canvas, number, at, baseline);
            } else if (piece instanceof Piece.Mark mark) {
                VerdictPainter.paint(canvas, mark.verdict(), at, baseline, mark.size());
            } else if (piece instanceof Piece.Bar bar) {
                BarPainter.paint(canvas, bar.bar(), at, bar.width(), baseline - 2.9, top, bottom);
            }
            at += piece.width();
        }
    }

    private static void paintNumber(Canvas canvas, Piece.Number number, double x, double baseline) {
        double end = x + number.valueWidth();
        canvas.number(number, x, baseline);
        canvas.anchor(number.use().anchor(), x, baseline - 24);
        paintRuns(canvas, number.value(), x, baseline);
        double y = baseline + BELOW;
        if (number.line() == Piece.Number.Line.DIMENSION) {
            canvas.line(x - OVERHANG, y, end + OVERHANG, y, 0.5, Paper.EDGE);
            canvas.line(x - OVERHANG, y - TICK, x - OVERHANG, y + TICK, 0.5, Paper.EDGE);
            canvas.line(end + OVERHANG, y - TICK, end + OVERHANG, y + TICK, 0.5, Paper.EDGE);
        } else {
            canvas.line(x, y - 0.6, end, y - 0.6, 0.35, Paper.HAIRLINE);
        }
        canvas.text(number.mark(), end + Piece.Number.GAP, baseline);
        canvas.link(number.use().entryAnchor(), x, baseline - 8.5, x + number.width(), y + TICK);
    }

    static void paintRuns(Canvas canvas, List<Run> runs, double x, double baseline) {
        double at = x;
        for (Run run : runs) {
            canvas.text(run, at, baseline);
            at += run.width();
        }
    }
}
