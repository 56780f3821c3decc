package groupwright.workbench.ripple;

import groupwright.definition.figure.Ask;
import groupwright.definition.record.Address;
import java.util.List;
import java.util.Optional;

/**
 * What a step changed, as the line at the foot of the window and as the list behind it.
 *
 * @param edited what was changed, for example {@code R-005 target 20 → 18 %}
 * @param items what followed, in the order of weight: verdicts, claims, figures
 * @param rows everything, before and after
 */
public record RippleSheet(String edited, List<Item> items, List<Row> rows) {
    /** What followed, in a few words; leads to the record where there is one. */
    public record Item(String text, Optional<Address> leadsTo) {}

    /** What a row speaks of; rows stand in this order. */
    public enum Section {
        EDITED,
        VERDICTS,
        CLAIMS,
        FIGURES
    }

    /**
     * One difference.
     *
     * @param ask the question, where the row is an answer
     */
    public record Row(
            Section section, String what, String before, String after, Optional<Address> leadsTo, Optional<Ask> ask) {}

    public RippleSheet {
        items = List.copyOf(items);
        rows = List.copyOf(rows);
    }

    /** Everything in one sentence, for those who hear it. */
    public String sentence(String nothing) {
        if (items.isEmpty()) {
            return edited + ". " + nothing;
        }
        return edited + ". " + String.join("; ", items.stream().map(Item::text).toList()) + ".";
    }
}
