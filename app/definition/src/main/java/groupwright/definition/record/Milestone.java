package groupwright.definition.record;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** A date that must be reached, with what must be true then, and who signed. */
public record Milestone(
        RecordId id,
        @Help("Short name") @Required String title,
        @Help("When") Optional<LocalDate> date,
        @Help("What must be true to pass") @Default("[]") List<EntryCriterion> entryCriteria,

        @Help("SHA-256 of the frozen file; empty before it is frozen") @Default("\"\"")
        String frozen,

        @Help("Who signed") @Default("[]") List<Signature> signatures,
        @Help("Remarks") @Default("\"\"") String note,

        @Help("Why it was dropped; empty while it stands") @Default("\"\"")
        String retired)
        implements Entry {
    public Milestone {
        entryCriteria = List.copyOf(entryCriteria);
        signatures = List.copyOf(signatures);
        ItemIds.check("entryCriteria", entryCriteria);
        ItemIds.check("signatures", signatures);
    }

    /** One thing that must be true. */
    public record EntryCriterion(
            @Help("Short id") String id,
            @Help("What must be true") @Required String text,
            @Help("Open or done") @Default("\"open\"") Progress progress)
            implements Item {
        /** How far it is. */
        public enum Progress {
            OPEN,
            DONE
        }
    }

    /** Who signed and when. */
    public record Signature(
            @Help("Short id") String id,
            @Help("Who, by role") @Required String by,
            @Help("When") LocalDate date) implements Item {}
}
