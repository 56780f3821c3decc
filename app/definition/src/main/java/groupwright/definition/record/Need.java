package groupwright.definition.record;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** What a rider said, in the rider's words, with its source. */
public record Need(
        RecordId id,
        @Help("The rider's words, unpolished") @Required String words,

        @Help("Rider groups who say so") @RefersTo(RiderGroup.class) @Default("[]")
        List<RecordId> riders,

        @Help("Where it was heard") Source source,
        @Help("How much it matters") Importance importance,
        @Help("When it was heard") Optional<LocalDate> date,

        @Help("Needs that ask for the opposite") @RefersTo(Need.class) @Default("[]")
        List<RecordId> contradicts,

        @Help("Remarks: how many said it, on which ride") @Default("\"\"")
        String note,

        @Help("Why it is no longer followed; empty while it is") @Default("\"\"")
        String retired)
        implements Entry {
    /** Where a need was heard. */
    public enum Source {
        INTERVIEW,
        RIDE,
        DEALER,
        WARRANTY
    }

    /** How much a need matters. */
    public enum Importance {
        MUST,
        MORE,
        DELIGHT
    }

    public Need {
        riders = List.copyOf(riders);
        contradicts = List.copyOf(contradicts);
    }

    public static final Field<Need, String> RETIRED = Field.of(Need.class, "retired", Need::retired);

    @Override
    public String title() {
        return words;
    }
}
