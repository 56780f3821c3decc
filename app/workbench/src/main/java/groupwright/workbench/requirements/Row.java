package groupwright.workbench.requirements;

import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Verdict;
import groupwright.definition.record.Address;
import groupwright.definition.record.RecordId;
import groupwright.documents.content.Inline;
import groupwright.documents.trace.ShownValue;
import java.util.Optional;

/** A row of the table: a criterion, or what is said where there is none. */
sealed interface Row {
    RecordId requirement();

    /** Id of the criterion; empty where there is none. */
    String criterion();

    /** What Workings shows of it; nothing without a lead concept. */
    Optional<Ask> ask();

    /**
     * A criterion.
     *
     * @param where rider group, bike and parameters it speaks of; may be empty
     * @param whereTold the same in full
     * @param limit what it must reach
     * @param value what the lead concept reaches; nothing where input is missing or no concept leads
     * @param missing which field to fill, where input is missing
     * @param bar from the target to the value; nothing where the target is zero, since no share exists
     * @param stretch how far beyond the target one would like to be, in shares of the target
     * @param margin with sign, in percent of the target; in its unit where the target is zero; else empty
     */
    record Measured(
            RecordId requirement,
            String criterion,
            String figure,
            String where,
            String whereTold,
            Limit limit,
            Optional<ShownValue> value,
            Optional<Missing> missing,
            Optional<Inline.Bar> bar,
            Optional<Double> stretch,
            String margin,
            Optional<Verdict> verdict,
            Optional<Ask> ask)
            implements Row {
        /** Where the target stands. */
        Address target() {
            return Address.of(requirement, "criteria", criterion, "target");
        }
    }

    /** What a criterion must reach. */
    record Limit(String comparator, String number, String unit) {}

    /** A field to fill. */
    record Missing(Address address, String remedy) {}

    /**
     * A requirement without criteria, parked or retired.
     *
     * @param sentence what is wrong, or why it stands so
     */
    record Note(RecordId requirement, String sentence, Step step, Optional<Ask> ask) implements Row {
        @Override
        public String criterion() {
            return "";
        }
    }

    /** What can be done about a note at once. */
    enum Step {
        CHOOSE_FIGURE,
        TAKE_UP_AGAIN,
        BRING_BACK
    }
}
