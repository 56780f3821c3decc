package groupwright.documents.pages;

import java.util.ArrayList;
import java.util.List;
import org.commonmark.ext.gfm.tables.TableCell;

/**
 * A column on the page.
 *
 * @param x its left edge
 * @param width room for text
 * @param hang room at its end for the marks of numbers, inside {@code width}
 */
record TableColumn(double x, double width, double hang, TableCell.Alignment alignment) {
    /** A small table is not pulled apart further than this between columns. */
    private static final double MOST_SPARE = 26;

    /**
     * Columns within {@code width}: as wide as their text where that fits, otherwise the widest give way first, down to
     * their longest word.
     */
    static List<TableColumn> fit(List<TableCells> rows, double x, double width, double gap) {
        int count = rows.get(0).cells().size();
        double[] least = new double[count];
        double[] natural = new double[count];
        double[] hang = new double[count];
        for (TableCells row : rows) {
            for (int i = 0; i < count; i++) {
                Line all = new Line(row.cell(i));
                hang[i] = Math.max(hang[i], all.hang());
                natural[i] = Math.max(natural[i], all.width() - all.hang());
                least[i] = Math.max(least[i], LineBreaker.narrowest(row.cell(i)));
            }
        }
        for (int i = 0; i < count; i++) {
            natural[i] += hang[i];
            least[i] = Math.min(natural[i], least[i] + hang[i]);
        }
        boolean firstStaysNarrow = rows.get(0).alignments().get(0) != TableCell.Alignment.LEFT;
        double[] widths = share(least, natural, width - gap * (count - 1), firstStaysNarrow);
        return place(widths, hang, rows.get(0).alignments(), x, gap);
    }

    /** Where a line starts. */
    double start(Line line) {
        double room = width - (line.width() - line.hang()) - hang;
        return switch (alignment) {
            case LEFT -> x;
            case CENTER -> x + (width - line.width()) / 2;
            case RIGHT -> x + room;
        };
    }

    private static double[] share(double[] least, double[] natural, double room, boolean firstStaysNarrow) {
        double[] widths = new double[natural.length];
        double spare = Math.min(MOST_SPARE, Math.max(0, room - sum(natural)) / widths.length);
        double squeeze = Math.min(1, room / sum(least));
        double most = mostWidth(least, natural, room);
        for (int i = 0; i < widths.length; i++) {
            boolean gains = i > 0 || !firstStaysNarrow;
            double fitting = Math.max(least[i], Math.min(natural[i], most)) + (gains ? spare : 0);
            widths[i] = squeeze < 1 ? least[i] * squeeze : fitting;
        }
        return widths;
    }

    /** The width above which columns give way so that all fit; found by halving, to a hundredth of a point. */
    private static double mostWidth(double[] least, double[] natural, double room) {
        double low = 0;
        double high = Math.max(room, 1);
        while (high - low > 0.01) {
            double most = (low + high) / 2;
            double sum = 0;
            for (int i = 0; i < natural.length; i++) {
                sum += Math.max(least[i], Math.min(natural[i], most));
            }
            if (sum <= room) {
                low = most;
            } else {
                high = most;
            }
        }
        return low;
    }

    private static List<TableColumn> place(
            double[] widths, double[] hang, List<TableCell.Alignment> alignments, double x, double gap) {
        List<TableColumn> columns = new ArrayList<>();
        double at = x;
        for (int i = 0; i < widths.length; i++) {
            columns.add(new TableColumn(at, widths[i], hang[i], alignments.get(i)));
            at += widths[i] + gap;
        }
        return columns;
    }

    private static double sum(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }
}
