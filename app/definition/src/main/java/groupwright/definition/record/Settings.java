package groupwright.definition.record;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;

/**
 * Parameters of a figure by name, for example {@code from-teeth = 14}; numbers are kept in their shortest form, so that
 * equal parameters are equal values.
 *
 * @param values name to value, in the order of names
 */
public record Settings(SortedMap<String, String> values) {
    private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9-]{0,39}");
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]{1,15}(\\.[0-9]{1,15})?");

    /** No parameters. */
    public static final Settings NONE = new Settings(new TreeMap<>());

    public Settings {
        TreeMap<String, String> copy = new TreeMap<>();
        for (Map.Entry<String, String> entry : values.entrySet()) {
            if (!NAME.matcher(entry.getKey()).matches()) {
                throw new Invalid(
                        "", "\"" + entry.getKey() + "\" is no name of a parameter", "use for example from-teeth");
            }
            if (entry.getValue().isBlank() || entry.getValue().chars().anyMatch(Character::isWhitespace)) {
                throw new Invalid("", "the value of " + entry.getKey() + " is empty or has blanks", "write one word");
            }
            copy.put(entry.getKey(), canonical(entry.getValue()));
        }
        values = java.util.Collections.unmodifiableSortedMap(copy);
    }

    private static String canonical(String value) {
        return isNumber(value) ? plain(new BigDecimal(value)) : value;
    }

    private static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }

    /** Whether a value reads as a number. */
    public static boolean isNumber(String value) {
        return NUMBER.matcher(value).matches();
    }

    /** The value of a parameter. */
    public Optional<String> get(String name) {
        return Optional.ofNullable(values.get(name));
    }

    /** These with one more or changed. */
    public Settings with(String name, String value) {
        TreeMap<String, String> copy = new TreeMap<>(values);
        copy.put(name, value);
        return new Settings(copy);
    }

    /** As written behind a figure: {@code from-teeth=14 ring=32}. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        values.forEach((name, value) ->
                text.append(text.isEmpty() ? "" : " ").append(name).append('=').append(value));
        return text.toString();
    }
}
