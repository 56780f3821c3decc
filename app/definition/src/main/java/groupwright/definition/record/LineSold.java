package groupwright.definition.record;

import java.util.List;
import java.util.Optional;

/** What is sold as one line: a variant with its contents, channel and price. */
public record LineSold(
        RecordId id,
        @Help("Name of the line") @Required String title,

        @Help("The concept it is made from") @RefersTo(Concept.class)
        RecordId concept,

        @Help("Parts in the box; empty means all of the concept") @RefersTo(Part.class) @Default("[]")
        List<RecordId> contents,

        @Help("Who buys it, for example bike makers") @Default("\"\"")
        String channel,

        @Help("Price to that channel, in cents or the like") @Limits(least = 0, most = 1e12)
        Optional<Amount> price_minor,

        @Help("Share of the volume sold in this line") @Limits(least = 0, most = 100)
        Optional<Amount> volume_pct,

        @Help("Remarks") @Default("\"\"") String note,

        @Help("Why it is no longer sold; empty while it is") @Default("\"\"")
        String retired)
        implements Entry {
    public LineSold {
        contents = List.copyOf(contents);
    }
}
