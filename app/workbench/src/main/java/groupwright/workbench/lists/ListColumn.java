package groupwright.workbench.lists;

import groupwright.workbench.components.PaintedCell;
import groupwright.workbench.components.Painter;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.table.TableCellRenderer;

/**
 * One column of a list.
 *
 * @param width at 100 %; the least one where the column grows
 * @param from the column is shown in lists of at least this width, at 100 %
 * @param value what stands in a row; nothing leaves the cell empty
 * @param leads what a click or Enter on the cell does; nothing where it opens the row as any cell does
 * @param <R> what a row shows
 */
public record ListColumn<R>(
        String head,
        int width,
        Room room,
        int from,
        TableCellRenderer renderer,
        Function<R, Optional<?>> value,
        Optional<Function<R, Optional<Runnable>>> leads) {
    /** Whether a column takes room that is left. */
    public enum Room {
        FIXED,
        GROWS
    }

    private static final int PADDING = 8;

    /** A column of texts. */
    public static <R> ListColumn<R> text(String head, int width, Room room, Function<R, CellText> text) {
        ListColumn<R> column =
                of(head, width, CellText.class, CellTextPainter.PLAIN, row -> Optional.of(text.apply(row)));
        return column.in(room);
    }

    /** A column of one painter. */
    public static <R, V> ListColumn<R> of(
            String head, int width, Class<V> type, Painter<V> painter, Function<R, Optional<?>> value) {
        return new ListColumn<>(
                head, width, Room.FIXED, 0, new PaintedCell<>(type, painter, PADDING), value, Optional.empty());
    }

    private ListColumn<R> in(Room other) {
        return new ListColumn<>(head, width, other, from, renderer, value, leads);
    }

    /** The same, only in lists of at least a width. */
    public ListColumn<R> from(int least) {
        return new ListColumn<>(head, width, room, least, renderer, value, leads);
    }

    /** The same, with cells that lead somewhere; nothing for those that do not. */
    public ListColumn<R> leading(Function<R, Optional<Runnable>> where) {
        return new ListColumn<>(head, width, room, from, renderer, value, Optional.of(where));
    }

    /** What a cell does. */
    Optional<Runnable> action(R row) {
        return leads.flatMap(where -> where.apply(row));
    }

    /** Tells a consumer of a row, as an action. */
    public static <R> Function<R, Optional<Runnable>> always(Consumer<R> told) {
        return row -> Optional.of(() -> told.accept(row));
    }
}
