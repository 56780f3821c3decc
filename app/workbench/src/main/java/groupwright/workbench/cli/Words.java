package groupwright.workbench.cli;

import groupwright.drivetrain.search.Span;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers as they are typed on a command line. */
final class Words {
    private static final Pattern WHOLE = Pattern.compile("[+-]?[0-9]{1,6}");
    private static final Pattern NUMBER = Pattern.compile("[+-]?[0-9]{1,9}([.][0-9]{1,9})?");

    private static final Pattern RANGE = Pattern.compile("([0-9]{1,6})(?:\\s*[-\u2013]\\s*([0-9]{1,6}))?");
    private static final Pattern EITHER_SIGN = Pattern.compile("[0-9]{1,9}([.,][0-9]{1,9})?");

    private Words() {}

    /** A number that counts from a tooth count on; 0 teeth for all. */
    record From(double number, int teeth) {}

    /**
     * Counts of teeth, parted by commas.
     *
     * @throws Refusal naming the first that is no whole number
     */
    static int[] teeth(String option, String text) {
        String[] words = text.split(",", -1);
        int[] teeth = new int[words.length];
        for (int i = 0; i < words.length; i++) {
            String word = words[i].strip();
            if (!WHOLE.matcher(word).matches()) {
                throw Refusal.of(
                        option + ": \"" + word + "\" is no count of teeth",
                        "write whole numbers parted by commas, for example " + option + " 10,12,14");
            }
            teeth[i] = Integer.parseInt(word);
        }
        return teeth;
    }

    /**
     * A number.
     *
     * @throws Refusal if it is none
     */
    static double number(String option, String text) {
        if (!NUMBER.matcher(text).matches()) {
            throw Refusal.of(
                    option + ": \"" + text + "\" is no number", "write it with a point, for example 57 or 57.5");
        }
        return Double.parseDouble(text);
    }

    /**
     * A number or a range such as 42-48.
     *
     * @throws Refusal if it is neither, or ends before it begins
     */
    static Span span(String option, String text) {
        Matcher range = RANGE.matcher(text.strip());
        if (!range.matches()) {
            throw Refusal.of(
                    option + ": \"" + text + "\" is neither a whole number nor a range",
                    "write for example 42 or 42-48");
        }
        int least = Integer.parseInt(range.group(1));
        int most = range.group(2) == null ? least : Integer.parseInt(range.group(2));
        return checked(option, () -> new Span(least, most));
    }

    /**
     * One whole number, 0 or above.
     *
     * @throws Refusal if it is none
     */
    static int whole(String option, String text) {
        Span span = span(option, text);
        if (span.least() != span.most()) {
            throw Refusal.of(option + ": \"" + text + "\" is a range", "write one whole number");
        }
        return span.least();
    }

    /**
     * A number, 0 or above, with decimal comma or point.
     *
     * @throws Refusal if it is none
     */
    static double decimal(String option, String text) {
        if (!EITHER_SIGN.matcher(text.strip()).matches()) {
            throw Refusal.of(
                    option + ": \"" + text + "\" is no number of 0 or above", "write for example 12, 12.5 or 12,5");
        }
        return Double.parseDouble(text.strip().replace(',', '.'));
    }

    /**
     * A number, and behind an @ the teeth from which it counts: 25, 25@14.
     *
     * @throws Refusal if it is not written so
     */
    static From from(String option, String text) {
        int at = text.indexOf('@');
        return at < 0
                ? new From(decimal(option, text), 0)
                : new From(decimal(option, text.substring(0, at)), whole(option, text.substring(at + 1)));
    }

    /**
     * Numbers by position. Parted by commas, their decimals stand behind a point; parted by semicolons, behind either.
     * Empty where a hyphen stands.
     *
     * @throws Refusal naming the first that is no number
     */
    static List<OptionalDouble> positions(String option, String text) {
        return Arrays.stream(text.split(text.contains(";") ? ";" : ",", -1))
                .map(String::strip)
                .map(word -> word.equals("-") ? OptionalDouble.empty() : OptionalDouble.of(decimal(option, word)))
                .toList();
    }

    /**
     * A value that the calculus may refuse, which is a mistake of the user here.
     *
     * @throws Refusal with the calculus' sentence behind the option
     */
    static <T> T checked(String option, Supplier<T> value) {
        try {
            return value.get();
        } catch (IllegalArgumentException refused) {
            throw Refusal.saying(option + ": " + refused.getMessage());
        }
    }
}
