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
    /** Where a line starts. */
    double start(Line line) {
        double room = width - (line.width() - line.hang()) - hang;
        return switch (alignment) {
            case LEFT -> x;
            case CENTER -> x + (width - line.width()) / 2;
            case RIGHT -> x + room;
        };
    }

    /** Columns beside each other. */
    static List<TableColumn> place(
            double[] widths, double[] hang, List<TableCell.Alignment> alignments, double x, double gap) {
        List<TableColumn> columns = new ArrayList<>();
        double at = x;
        for (int i = 0; i < widths.length; i++) {
            columns.add(new TableColumn(at, widths[i], hang[i], alignments.get(i)));
            at += widths[i] + gap;
        }
        return columns;
    }
}
