package groupwright.workbench.components;

import groupwright.workbench.look.Words;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.StringJoiner;

/**
 * What a claim rests on: figure, test, signature, in this order.
 *
 * @param name in words
 */
public record Evidence(List<Pin> pins, String name) {
    private static final List<String> KEYS = List.of("pins.FIGURE", "pins.TEST", "pins.SIGNED");

    /** How one of them stands. */
    public enum Pin {
        HOLDS,
        PLANNED,
        NOTHING,
        /** Changed since it was approved. */
        CHANGED,
        MISSES
    }

    public Evidence {
        Objects.requireNonNull(name, "name");
        pins = List.copyOf(pins);
        if (pins.size() != KEYS.size()) {
            throw new IllegalArgumentException("three pins make evidence, were " + pins.size());
        }
    }

    /** Evidence named in the reader's language. */
    public static Evidence of(Pin figure, Pin test, Pin signed, Locale locale) {
        List<Pin> pins = List.of(figure, test, signed);
        Words words = Words.of(Evidence.class, locale);
        StringJoiner name = new StringJoiner(", ");
        for (int i = 0; i < KEYS.size(); i++) {
            name.add(words.text(KEYS.get(i), words.text("pin." + pins.get(i).name())));
        }
        return new Evidence(pins, name.toString());
    }
}
