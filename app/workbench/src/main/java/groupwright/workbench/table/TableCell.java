package groupwright.workbench.table;

import java.util.Objects;

/**
 * What a cell says, an immutable value made away from the event thread.
 *
 * @param text what is read; empty where there is nothing
 * @param unit muted behind a number; empty where there is none
 * @param order what it is sorted by: a {@link Double}, a record id, or any text; texts are compared without case
 * @param value what a painter of the column paints; the text itself where there is no painter
 * @param state how it is shown
 */
public record TableCell(String text, String unit, Object order, Object value, State state) {
    /** How a cell is shown. */
    public enum State {
        PLAIN,
        /** The last step changed it. */
        CHANGED,
        /** It speaks of something retired or not given. */
        MUTED
    }

    public TableCell {
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(order, "order");
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(state, "state");
    }

    /** Words. */
    public static TableCell of(String text) {
        return new TableCell(text, "", text, text, State.PLAIN);
    }

    /** A number as it reads, with its unit. */
    public static TableCell number(double number, String text, String unit) {
        return new TableCell(text, unit, number, text, State.PLAIN);
    }

    /**
     * Something a painter of the column shows.
     *
     * @param text the same in words, for copies, filters and screen readers
     */
    public static TableCell painted(Object value, double order, String text) {
        return new TableCell(text, "", order, value, State.PLAIN);
    }

    /** The same in another state. */
    public TableCell in(State other) {
        return new TableCell(text, unit, order, value, other);
    }

    /** As it is copied. */
    public String copied() {
        return unit.isEmpty() || text.isEmpty() ? text : text + " " + unit;
    }
}
