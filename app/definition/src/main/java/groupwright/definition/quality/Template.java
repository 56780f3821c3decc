package groupwright.definition.quality;

import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A sentence with places such as {@code {words}}. Filled in one pass, so that braces in a statement stay what they are.
 *
 * @param text the sentence
 */
record Template(String text) {
    private static final Pattern PLACE = Pattern.compile("\\{([a-z]+)}");

    String filled(UnaryOperator<String> value) {
        return PLACE.matcher(text).replaceAll(place -> Matcher.quoteReplacement(value.apply(place.group(1))));
    }
}
