package groupwright.workbench.components;

import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import java.util.Objects;

/**
 * A number as it is shown: with its unit, where it stands, and what it is called.
 *
 * @param number as the reader writes it, or what stands for it where it is missing
 * @param unit may be empty
 * @param content whether there is a value, and whether the last step changed it
 * @param line where it stands
 * @param name for those who do not see it, for example {@code Largest step, C-002, 20.0 percent, misses}
 * @param copy what copying and dragging give, for example {@code 20.0 %  largest-step C-002}
 * @param tip for a missing value, which record and field to fill; may be empty
 */
public record Chip(
        String number,
        String unit,
        Content content,
        Line line,
        Type type,
        Weight weight,
        String name,
        String copy,
        String tip) {
    /** What is known of the value. */
    public enum Content {
        VALUE,
        /** Changed by the last step. */
        CHANGED,
        MISSING
    }

    /** Where it stands. */
    public enum Line {
        /** In a table: no line. */
        REST,
        /** Alone. */
        SHOWN,
        /** The pointer is over it. */
        HOVER,
        /** It is the one in Workings; exactly one in the window. */
        SELECTED
    }

    public Chip {
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(content, "content");
        Objects.requireNonNull(line, "line");
        Objects.requireNonNull(type, "type");
        Objects.requireNonNull(weight, "weight");
        Objects.requireNonNull(copy, "copy");
        Objects.requireNonNull(tip, "tip");
        if (number.isBlank() || name.isBlank()) {
            throw new IllegalArgumentException("a chip needs a number and a name, had " + number + " and " + name);
        }
    }

    /** A number in a table. */
    public static Chip of(String number, String unit, String name, String copy) {
        return new Chip(number, unit, Content.VALUE, Line.REST, Type.TABLE, Weight.REGULAR, name, copy, "");
    }

    /**
     * What stands where an input is missing.
     *
     * @param word "missing" in the reader's language
     * @param tip which record and field to fill
     */
    public static Chip missing(String word, String name, String copy, String tip) {
        return new Chip(word, "", Content.MISSING, Line.REST, Type.TABLE, Weight.REGULAR, name, copy, tip);
    }

    /** The same elsewhere. */
    public Chip at(Line other) {
        return new Chip(number, unit, content, other, type, weight, name, copy, tip);
    }

    /** The same, changed by the last step; a missing value stays missing. */
    public Chip changed() {
        return content == Content.MISSING
                ? this
                : new Chip(number, unit, Content.CHANGED, line, type, weight, name, copy, tip);
    }

    /** The same in another type. */
    public Chip in(Type other, Weight heavier) {
        return new Chip(number, unit, content, line, other, heavier, name, copy, tip);
    }
}
