package groupwright.documents.project;

import groupwright.definition.record.Invalid;
import groupwright.documents.numbers.ShownIn;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A figure between double braces: the question, and how its answer is shown here.
 *
 * @param question in the figure grammar
 * @param shown unit and decimals, where the author gave them
 */
record FigurePlaceholder(String question, ShownIn shown) {
    /** Names that are never parameters of figures. */
    static final List<String> RESERVED = List.of("unit", "decimals");

    /**
     * Takes {@code unit=} and {@code decimals=} out of a text.
     *
     * @throws Invalid if one is given twice or holds nothing that can be used
     */
    static FigurePlaceholder parse(String text) {
        List<String> question = new ArrayList<>();
        Optional<String> unit = Optional.empty();
        OptionalInt decimals = OptionalInt.empty();
        for (String word : text.strip().split("\\s+")) {
            if (word.startsWith("unit=")) {
                refuseTwice(unit.isPresent(), word);
                unit = Optional.of(unit(word.substring("unit=".length())));
            } else if (word.startsWith("decimals=")) {
                refuseTwice(decimals.isPresent(), word);
                decimals = OptionalInt.of(decimals(word.substring("decimals=".length())));
            } else {
                question.add(word);
            }
        }
        return new FigurePlaceholder(String.join(" ", question), new ShownIn(unit, decimals));
    }

    private static String unit(String text) {
        if (text.isEmpty()) {
            throw new Invalid("", "unit is empty", "write for example unit=mm, or unit=none");
        }
        return text;
    }

    private static int decimals(String text) {
        if (!text.matches("[0-6]")) {
            throw new Invalid("", "decimals is \"" + text + "\"", "write a whole number from 0 to 6");
        }
        return Integer.parseInt(text);
    }

    private static void refuseTwice(boolean given, String word) {
        if (given) {
            throw new Invalid("", "\"" + word + "\" is given twice", "give it once");
        }
    }
}
