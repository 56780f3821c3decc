package groupwright.documents.content;

import java.util.Objects;

/**
 * A table column.
 *
 * @param head its head; empty for a column of marks
 * @param alignment where its cells stand; numbers stand at the end
 */
public record Column(String head, Alignment alignment) {
    /** Where the text of a column stands. */
    public enum Alignment {
        START,
        CENTRE,
        END
    }

    public Column {
        Objects.requireNonNull(head, "head");
        Objects.requireNonNull(alignment, "alignment");
    }

    /** A column of text. */
    public static Column text(String head) {
        return new Column(head, Alignment.START);
    }

    /** A column of numbers. */
    public static Column number(String head) {
        return new Column(head, Alignment.END);
    }
}
