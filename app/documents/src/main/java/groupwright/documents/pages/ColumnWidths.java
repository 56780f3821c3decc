package groupwright.documents.pages;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Shares the room of a table between columns that do not all fit as they are. It starts with the widest giving way to
 * one common width, none below its longest word; then room moves to a column from another or
 * from all others, in ever smaller steps, as long
 * as that makes the table lower, or breaks fewer cells. What is found is low, not surely the lowest of all. Cost: columns² × words of the
 * table for each of at most {@value #MOST_MOVES} moves; of more than {@value #MOST_ROWS} rows only some are looked at.
 */
final class ColumnWidths {
    private static final double[] STEPS = {60, 30, 15, 8, 4};
    private static final int MOST_MOVES = 60;
    private static final int MOST_ROWS = 300;
    /** A lower row counts so much more than a cell in it that breaks less often. */
    private static final int ROW_WEIGHT = 10;

    private final double[] least;
    private final double[] natural;
    private final List<List<CellWords>> rows;
    private final double[] widths;
    /** Lines by column and row. */
    private final int[][] lines;

    private ColumnWidths(double[] least, double[] natural, double room, List<List<CellWords>> rows) {
        this.least = least;
        this.natural = natural;
        this.rows = rows;
        this.widths = new double[least.length];
        double most = commonWidth(least, natural, room);
        for (int i = 0; i < widths.length; i++) {
            widths[i] = Math.max(least[i], Math.min(natural[i], most));
        }
        this.lines = new int[widths.length][];
        for (int i = 0; i < widths.length; i++) {
            lines[i] = lines(i, widths[i]);
        }
    }

    /**
     * Widths that together take up {@code room}.
     *
     * @param least widths of the longest words, no more than {@code room} in all
     * @param natural widths of the cells on one line, more than {@code room} in all
     */
    static double[] lowest(double[] least, double[] natural, double room, List<TableCells> cells) {
        int stride = 1 + cells.size() / MOST_ROWS;
        List<List<CellWords>> rows = IntStream.range(0, cells.size())
                .filter(row -> row % stride == 0)
                .mapToObj(row -> IntStream.range(0, least.length)
                        .mapToObj(column -> CellWords.of(cells.get(row).cell(column)))
                        .toList())
                .toList();
        ColumnWidths search = new ColumnWidths(least, natural, room, rows);
        search.descend();
        return search.widths;
    }

    /** Lines of the whole table, where a row is as high as its highest cell. */
    static int height(double[] widths, List<TableCells> cells) {
        return cells.stream()
                .mapToInt(row -> {
                    int most = 1;
                    for (int i = 0; i < widths.length; i++) {
                        most = Math.max(most, CellWords.of(row.cell(i)).lines(widths[i]));
                    }
                    return most;
                })
                .sum();
    }

    private void descend() {
        int moves = 0;
        for (double step : STEPS) {
            while (moves < MOST_MOVES && (moveOnce(step) || gatherOnce(step))) {
                moves++;
            }
        }
    }

    /** Makes the best move of a size, if any is better. */
    private boolean moveOnce(double step) {
        int best = height();
        int from = -1;
        int to = -1;
        for (int i = 0; i < widths.length; i++) {
            int[] narrower = widths[i] - step >= least[i] ? lines(i, widths[i] - step) : null;
            for (int j = 0; j < widths.length && narrower != null; j++) {
                if (j != i && widths[j] < natural[j]) {
                    int height = height(i, narrower, j, lines(j, widths[j] + step));
                    if (height < best) {
                        best = height;
                        from = i;
                        to = j;
                    }
                }
            }
        }
        if (from < 0) {
            return false;
        }
        widths[from] -= step;
        widths[to] += step;
        lines[from] = lines(from, widths[from]);
        lines[to] = lines(to, widths[to]);
        return true;
    }

    /** Gives room to the column that gains most by it, and takes it from all others, each by what it can spare. */
    private boolean gatherOnce(double step) {
        int best = height();
        double[] found = widths;
        for (int to = 0; to < widths.length; to++) {
            double[] moved = gathered(to, Math.min(step, natural[to] - widths[to]));
            if (!Arrays.equals(moved, widths)) {
                int height = height(moved);
                if (height < best) {
                    best = height;
                    found = moved;
                }
            }
        }
        if (found == widths) {
            return false;
        }
        for (int i = 0; i < widths.length; i++) {
            widths[i] = found[i];
            lines[i] = lines(i, widths[i]);
        }
        return true;
    }

    private double[] gathered(int to, double step) {
        double slack = 0;
        for (int i = 0; i < widths.length; i++) {
            slack += i == to ? 0 : widths[i] - least[i];
        }
        double[] moved = widths.clone();
        for (int i = 0; i < widths.length && step > 0.01 && slack >= step; i++) {
            moved[i] += i == to ? step : -step * (widths[i] - least[i]) / slack;
        }
        return moved;
    }

    private int height(double[] tried) {
        int[][] before = lines.clone();
        for (int i = 0; i < tried.length; i++) {
            lines[i] = lines(i, tried[i]);
        }
        int height = height();
        System.arraycopy(before, 0, lines, 0, before.length);
        return height;
    }

    private int height() {
        return height(0, lines[0], 0, lines[0]);
    }

    private int height(int one, int[] ofOne, int other, int[] ofOther) {
        int sum = 0;
        for (int row = 0; row < rows.size(); row++) {
            int most = 0;
            for (int i = 0; i < lines.length; i++) {
                int count = i == one ? ofOne[row] : i == other ? ofOther[row] : lines[i][row];
                most = Math.max(most, count);
                sum += count;
            }
            sum += ROW_WEIGHT * most;
        }
        return sum;
    }

    private int[] lines(int column, double width) {
        int[] counts = new int[rows.size()];
        Arrays.setAll(counts, row -> rows.get(row).get(column).lines(width));
        return counts;
    }

    /** The width above which columns give way so that all fit; found by halving, to a hundredth of a point. */
    private static double commonWidth(double[] least, double[] natural, double room) {
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
}
