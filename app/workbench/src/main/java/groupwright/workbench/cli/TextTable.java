package groupwright.workbench.cli;

import java.util.ArrayList;
import java.util.List;

/** Rows of text in columns that line up; columns part by two blanks, no blanks at the end of a line. */
final class TextTable {
    /** A cell longer than this runs over its column rather than widen it for all rows. */
    private static final int LONG = 72;

    private final List<List<String>> rows = new ArrayList<>();
    private final List<Side> sides;

    /** On which side a column lines up. */
    enum Side {
        LEFT,
        RIGHT
    }

    /** A table with one column for each side. */
    TextTable(List<Side> sides) {
        this.sides = List.copyOf(sides);
    }

    /** Adds a row; it has a cell for each column. */
    TextTable row(String... cells) {
        if (cells.length != sides.size()) {
            throw new IllegalArgumentException(cells.length + " cells for " + sides.size() + " columns");
        }
        rows.add(List.of(cells));
        return this;
    }

    @Override
    public String toString() {
        int[] widths = new int[sides.size()];
        for (List<String> row : rows) {
            for (int column = 0; column < widths.length; column++) {
                int length = length(row.get(column));
                widths[column] = length > LONG ? widths[column] : Math.max(widths[column], length);
            }
        }
        StringBuilder text = new StringBuilder();
        rows.forEach(row -> text.append(line(row, widths)).append('\n'));
        return text.toString();
    }

    private String line(List<String> row, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int column = 0; column < widths.length; column++) {
            String cell = row.get(column);
            String blanks = " ".repeat(Math.max(0, widths[column] - length(cell)));
            line.append(column == 0 ? "" : "  ").append(sides.get(column) == Side.LEFT ? cell + blanks : blanks + cell);
        }
        return line.toString().stripTrailing();
    }

    private static int length(String cell) {
        return cell.codePointCount(0, cell.length());
    }
}
