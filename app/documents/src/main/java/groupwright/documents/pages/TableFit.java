package groupwright.documents.pages;

import java.util.Arrays;
import java.util.List;
import org.commonmark.ext.gfm.tables.TableCell;

/**
 * What the columns of a table need.
 *
 * @param rows with the head
 * @param least widths of the longest words; of numbers, which do not break, the widest below the head, as
 *     long as that fits
 * @param natural widths of the cells on one line
 * @param hang room at the end of each for the marks of numbers, inside the widths
 */
record TableFit(List<TableCells> rows, double[] least, double[] natural, double[] hang) {
    private static final double GAP = 8;
    /** A small table is not pulled apart further than this between columns. */
    private static final double MOST_SPARE = 26;
    /** Tables of so many columns, and longer ones without numbers, go over the page where that saves a quarter. */
    private static final int MANY_COLUMNS = 8;

    private static final int LONG = 15;

    private static final double LOWER_ENOUGH = 0.75;

    static TableFit of(List<TableCells> rows, double width) {
        TableCells head = rows.get(0);
        TableFit whole = of(
                rows,
                (row, column) -> row != head
                                && head.alignments().get(column) == TableCell.Alignment.RIGHT
                                && startsWithNumber(row.cell(column))
                        ? new Line(row.cell(column)).width()
                        : longestWord(row, column));
        return sum(whole.least) <= width - whole.gaps() ? whole : of(rows, TableFit::longestWord);
    }

    /** A target such as "at least 50 rpm" may break before its number; a number keeps its unit beside it. */
    private static boolean startsWithNumber(List<Piece> cell) {
        return !cell.isEmpty()
                && (cell.get(0) instanceof Piece.Number
                        || cell.get(0) instanceof Piece.Word word
                                && word.run().text().matches("[0-9+\u2212—].*"));
    }

    private static double longestWord(TableCells row, int column) {
        List<Piece> cell = row.cell(column);
        double mark = !cell.isEmpty() && cell.get(0) instanceof Piece.Mark first ? first.width() : 0;
        return LineBreaker.narrowest(cell) + mark; // a mark takes its room from every line
    }

    private static TableFit of(List<TableCells> rows, Need need) {
        int count = rows.get(0).cells().size();
        double[] least = new double[count];
        double[] natural = new double[count];
        double[] hang = new double[count];
        for (TableCells row : rows) {
            for (int i = 0; i < count; i++) {
                Line all = new Line(row.cell(i));
                hang[i] = Math.max(hang[i], all.hang());
                natural[i] = Math.max(natural[i], all.width() - all.hang());
                least[i] = Math.max(least[i], need.of(row, i));
            }
        }
        for (int i = 0; i < count; i++) {
            natural[i] += hang[i];
            least[i] = Math.min(natural[i], least[i] + hang[i]);
        }
        return new TableFit(rows, least, natural, hang);
    }

    private interface Need {
        double of(TableCells row, int column);
    }

    /** Whether the table reads much better when it may be wider. */
    boolean wants(double wider, double width) {
        double room = width - gaps();
        if (sum(least) > room) {
            return true;
        }
        return (least.length >= MANY_COLUMNS || rows.size() > LONG && !hasNumbers())
                && sum(natural) > room
                && ColumnWidths.height(widths(wider), rows) < LOWER_ENOUGH * ColumnWidths.height(widths(width), rows);
    }

    private boolean hasNumbers() {
        return rows.stream()
                .flatMap(row -> row.cells().stream())
                .flatMap(List::stream)
                .anyMatch(Piece.Number.class::isInstance);
    }

    /** Columns within a width; words are cut only where not even the longest of each column fit beside each other. */
    List<TableColumn> columns(double x, double width) {
        return TableColumn.place(widths(width), hang, rows.get(0).alignments(), x, GAP);
    }

    private double[] widths(double width) {
        double room = width - gaps();
        if (sum(least) > room) {
            return squeezed(room);
        }
        return sum(natural) > room ? ColumnWidths.lowest(least, natural, room, rows) : spread(room);
    }

    /** The widest words give way first, down to one width. */
    private double[] squeezed(double room) {
        double[] none = new double[least.length];
        return ColumnWidths.lowest(none, least, room, rows);
    }

    private double[] spread(double room) {
        double spare = Math.min(MOST_SPARE, (room - sum(natural)) / natural.length);
        boolean firstStaysNarrow = rows.get(0).alignments().get(0) != TableCell.Alignment.LEFT;
        double[] widths = natural.clone();
        for (int i = firstStaysNarrow ? 1 : 0; i < widths.length; i++) {
            widths[i] += spare;
        }
        return widths;
    }

    private double gaps() {
        return GAP * (least.length - 1);
    }

    private static double sum(double[] values) {
        return Arrays.stream(values).sum();
    }
}
