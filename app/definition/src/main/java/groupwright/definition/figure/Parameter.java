package groupwright.definition.figure;

import groupwright.definition.record.Invalid;
import groupwright.definition.record.Settings;
import java.util.Optional;

/**
 * A parameter of a figure.
 *
 * @param name as written, for example {@code from-teeth}
 * @param type what it may be
 * @param usual what it is when nothing is said; nothing where it must be said
 * @param help what it does
 */
public record Parameter(String name, Type type, Optional<String> usual, String help) {
    /** What a parameter may be. */
    public enum Type {
        WHOLE,
        NUMBER,
        WORD
    }

    /** A whole number with a usual value. */
    public static Parameter whole(String name, int usual, String help) {
        return new Parameter(name, Type.WHOLE, Optional.of(Integer.toString(usual)), help);
    }

    /** A word that must be given. */
    public static Parameter word(String name, String help) {
        return new Parameter(name, Type.WORD, Optional.empty(), help);
    }

    /** A number that must be given. */
    public static Parameter number(String name, String help) {
        return new Parameter(name, Type.NUMBER, Optional.empty(), help);
    }

    void check(String value) {
        boolean fits = switch (type) {
            case WORD -> true;
            case NUMBER -> Settings.isNumber(value);
            case WHOLE -> value.matches("-?[0-9]{1,9}");
        };
        if (!fits) {
            throw new Invalid(
                    name,
                    "\"" + value + "\" is no " + (type == Type.WHOLE ? "whole number" : "number"),
                    "write for example " + name + "=" + usual.orElse("14"));
        }
    }
}
