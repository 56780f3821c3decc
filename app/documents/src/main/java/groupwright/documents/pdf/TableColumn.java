package groupwright.documents.pdf;

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
    /**
     * Columns that fill {@code width}: as wide as their text where that fits, otherwise the wide ones give way first,
     * down to their longest word; room left over goes to columns of text.
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
        double[] widths = share(least, natural, width - gap * (count - 1));
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

    private static double[] share(double[] least, double[] natural, double room) {
        double sumLeast = sum(least);
        double sumNatural = sum(natural);
        double[] widths = new double[natural.length];
        for (int i = 0; i < widths.length; i++) {
            if (sumNatural <= room) {
                widths[i] = natural[i] + (room - sumNatural) / widths.length;
            } else if (sumLeast <= room) {
                widths[i] = least[i] + (natural[i] - least[i]) * (room - sumLeast) / (sumNatural - sumLeast);
            } else {
                widths[i] = least[i] * room / sumLeast;
            }
        }
        return widths;
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
