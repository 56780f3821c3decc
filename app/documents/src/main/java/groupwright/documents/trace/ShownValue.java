package groupwright.documents.trace;

import java.util.Objects;

/**
 * A value as it is printed: already rounded and written in the reader's language.
 *
 * @param value the number or word, never empty
 * @param unit empty where there is none
 */
public record ShownValue(String value, String unit) {
    private static final String NARROW_NO_BREAK_SPACE = "\u202F";

    public ShownValue {
        Objects.requireNonNull(unit, "unit");
        if (value.isEmpty()) {
            throw new IllegalArgumentException("a shown value must not be empty");
        }
    }

    /** A value without unit. */
    public static ShownValue of(String value) {
        return new ShownValue(value, "");
    }

    /** What stands between value and unit: a narrow space that never breaks, nothing before a degree sign. */
    public String gap() {
        return unit.isEmpty() || unit.startsWith("°") ? "" : NARROW_NO_BREAK_SPACE;
    }

    /** Value and unit in one text. */
    public String text() {
        return value + gap() + unit;
    }
}
