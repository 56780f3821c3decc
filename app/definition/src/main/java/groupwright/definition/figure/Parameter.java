package groupwright.definition.figure;

import groupwright.definition.record.Invalid;
import groupwright.definition.record.Settings;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * A parameter of a figure.
 *
 * @param name as written, for example {@code from-teeth}
 * @param type what it may be
 * @param presence whether it may be left out
 * @param usual what it is when nothing is said; nothing where it must be said, or where the figure then takes what its
 *     subject holds
 * @param least smallest number allowed
 * @param most largest number allowed
 * @param choices the words allowed; empty where any word is
 * @param help what it does
 */
public record Parameter(
        String name,
        Type type,
        Presence presence,
        Optional<String> usual,
        double least,
        double most,
        List<String> choices,
        String help) {
    public Parameter {
        choices = List.copyOf(choices);
        usual = usual.map(value -> Settings.NONE.with(name, value).get(name).orElseThrow());
    }

    /** What a parameter may be. */
    public enum Type {
        WHOLE,
        NUMBER,
        WORD
    }

    /** Whether a parameter may be left out. */
    public enum Presence {
        REQUIRED,
        OPTIONAL
    }

    private static Parameter of(String name, Type type, Presence presence, Optional<String> usual, String help) {
        return new Parameter(
                name, type, presence, usual, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, List.of(), help);
    }

    /** A whole number with a usual value. */
    public static Parameter whole(String name, int usual, String help) {
        return of(name, Type.WHOLE, Presence.OPTIONAL, Optional.of(Integer.toString(usual)), help);
    }

    /** A word that must be given. */
    public static Parameter word(String name, String help) {
        return of(name, Type.WORD, Presence.REQUIRED, Optional.empty(), help);
    }

    /** A word with a usual value. */
    public static Parameter word(String name, String usual, String help) {
        return of(name, Type.WORD, Presence.OPTIONAL, Optional.of(usual), help);
    }

    /** One of several words, the first of them usual. */
    public static Parameter choice(String name, List<String> choices, String help) {
        Parameter word = of(name, Type.WORD, Presence.OPTIONAL, Optional.of(choices.get(0)), help);
        return new Parameter(name, word.type, word.presence, word.usual, word.least, word.most, choices, help);
    }

    /** A number that must be given. */
    public static Parameter number(String name, String help) {
        return of(name, Type.NUMBER, Presence.REQUIRED, Optional.empty(), help);
    }

    /** A number with a usual value. */
    public static Parameter number(String name, int usual, String help) {
        return of(name, Type.NUMBER, Presence.OPTIONAL, Optional.of(Integer.toString(usual)), help);
    }

    /** A number that may be left out; the figure then takes what its subject holds, and the help says what that is. */
    public static Parameter optionalNumber(String name, String help) {
        return of(name, Type.NUMBER, Presence.OPTIONAL, Optional.empty(), help);
    }

    /** The same with limits to the number, both included. */
    public Parameter within(double smallest, double largest) {
        return new Parameter(name, type, presence, usual, smallest, largest, choices, help);
    }

    void check(String value) {
        boolean fits = switch (type) {
            case WORD -> choices.isEmpty() || choices.contains(value);
            case NUMBER -> Settings.isNumber(value);
            case WHOLE -> value.matches("-?[0-9]{1,9}");
        };
        if (!fits && type == Type.WORD) {
            throw new Invalid(name, "\"" + value + "\" is none of its words", "write " + limits());
        }
        if (!fits) {
            throw new Invalid(
                    name,
                    "\"" + value + "\" is no " + (type == Type.WHOLE ? "whole number" : "number"),
                    "write for example " + name + "=" + usual.orElse("14"));
        }
        if (type != Type.WORD && !(Double.parseDouble(value) >= least && Double.parseDouble(value) <= most)) {
            throw new Invalid(name, value + " is out of its limits", "write " + limits());
        }
    }

    /** The limits in words, for example {@code 10 to 200} or {@code time, distance}; empty where there is none. */
    public String limits() {
        if (!choices.isEmpty()) {
            return String.join(", ", choices);
        } else if (Double.isInfinite(least) && Double.isInfinite(most)) {
            return "";
        } else if (Double.isInfinite(most)) {
            return "at least " + shown(least);
        }
        return Double.isInfinite(least) ? "at most " + shown(most) : shown(least) + " to " + shown(most);
    }

    private static String shown(double number) {
        return new BigDecimal(Double.toString(number)).stripTrailingZeros().toPlainString();
    }
}
