package groupwright.definition.record;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** The rule for ids inside a list of a record. */
final class ItemIds {
    private static final Pattern PATTERN = Pattern.compile("[A-Za-z0-9][A-Za-z0-9-]{0,63}");

    private ItemIds() {}

    static void check(String field, List<? extends Item> items) {
        Set<String> seen = new HashSet<>();
        for (Item item : items) {
            if (!PATTERN.matcher(item.id()).matches()) {
                throw new Invalid(
                        field, "\"" + item.id() + "\" is no id", "use letters, digits and hyphens, for example k1");
            }
            if (!seen.add(item.id())) {
                throw new Invalid(field, "the id " + item.id() + " stands twice", "give each entry an id of its own");
            }
        }
    }
}
