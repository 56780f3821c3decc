package groupwright.definition.record;

import java.util.List;

/** Something we measure ourselves against. */
public record Yardstick(
        RecordId id,
        @Help("What we call it") @Required String title,
        @Help("What it is") @Default("\"\"") String description,
        @Help("What is known of it") @Default("[]") List<YardstickValue> values,

        @Help("Why it is no longer used; empty while it is") @Default("\"\"")
        String retired)
        implements Entry {
    public Yardstick {
        values = List.copyOf(values);
        ItemIds.check("values", values);
    }
}
