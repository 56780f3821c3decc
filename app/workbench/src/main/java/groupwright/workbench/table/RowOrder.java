package groupwright.workbench.table;

import groupwright.definition.record.RecordId;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Which rows are shown, and in which order: pure functions of the rows. O(rows · cells) to filter, O(n log n) to sort. */
final class RowOrder {
    private RowOrder() {}

    /**
     * @param column position of the column sorted by
     * @param direction which way
     */
    record Sort(int column, Direction direction) {}

    /** Which way rows are sorted. */
    enum Direction {
        RISING,
        FALLING
    }

    /** The rows that hold all words of a filter; all of them where it is blank. */
    static List<TableRow> filtered(List<TableRow> rows, String filter) {
        String plain = plain(filter.strip());
        if (plain.isEmpty()) {
            return rows;
        }
        List<String> words = List.of(plain.split("\\s+"));
        List<TableRow> shown = new ArrayList<>();
        for (TableRow row : rows) {
            StringBuilder text = new StringBuilder();
            row.cells().forEach(cell -> text.append(cell.copied()).append('\n'));
            String all = plain(text.toString());
            if (words.stream().allMatch(all::contains)) {
                shown.add(row);
            }
        }
        return shown;
    }

    /** The rows sorted by a column; equal ones keep their order, empty cells come last either way. */
    static List<TableRow> sorted(List<TableRow> rows, Sort sort) {
        Comparator<TableCell> byOrder = (one, other) -> compare(one.order(), other.order());
        Comparator<TableCell> directed = sort.direction() == Direction.RISING ? byOrder : byOrder.reversed();
        Comparator<TableCell> emptyLast =
                Comparator.comparing((TableCell cell) -> cell.text().isEmpty()).thenComparing(directed);
        List<TableRow> copy = new ArrayList<>(rows);
        copy.sort(Comparator.comparing(row -> row.cells().get(sort.column()), emptyLast));
        return copy;
    }

    /** Numbers before ids before words. */
    private static int compare(Object one, Object other) {
        if (one instanceof Double number && other instanceof Double second) {
            return number.compareTo(second);
        } else if (one instanceof RecordId id && other instanceof RecordId second) {
            return id.compareTo(second);
        } else if (rank(one) != rank(other)) {
            return Integer.compare(rank(one), rank(other));
        }
        return String.CASE_INSENSITIVE_ORDER.compare(one.toString(), other.toString());
    }

    private static int rank(Object order) {
        return order instanceof Double ? 0 : order instanceof RecordId ? 1 : 2;
    }

    private static String plain(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFD)
                .replaceAll("\\p{M}+", "")
                .toLowerCase(Locale.ROOT);
    }
}
