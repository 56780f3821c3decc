package groupwright.workbench.concepts;

import groupwright.definition.figure.Ask;
import groupwright.definition.figure.MissingInput;
import groupwright.definition.figure.Verdict;
import groupwright.definition.record.RecordId;
import groupwright.documents.charts.ConceptSign;
import groupwright.documents.charts.GearLadder;
import groupwright.documents.charts.StepBars;
import groupwright.documents.content.Inline;
import groupwright.documents.trace.ShownValue;
import java.util.List;
import java.util.Optional;

/**
 * What the place shows: texts in the reader's language and digits, and the questions behind them.
 *
 * @param summary how many concepts, on which wheel
 * @param counts how many concepts each choice of {@link Shown} would show, in its order
 * @param shown the choice that is shown
 * @param concepts side by side; those worked on first
 * @param riders rider groups whose wheel can be chosen
 * @param wheel the one chosen
 * @param ladder the gears of all concepts on that wheel
 * @param lacks what stands in the way of concepts that the ladder leaves out
 * @param rows figures of all concepts
 * @param meets for each concept, how many targets it meets for certain
 * @param targets how many rows have a target
 */
record ConceptsSheet(
        String summary,
        List<Integer> counts,
        Shown shown,
        List<Entrant> concepts,
        List<Riders> riders,
        Optional<RecordId> wheel,
        Optional<GearLadder> ladder,
        List<MissingInput> lacks,
        List<Row> rows,
        List<Integer> meets,
        int targets) {
    ConceptsSheet {
        counts = List.copyOf(counts);
        concepts = List.copyOf(concepts);
        riders = List.copyOf(riders);
        lacks = List.copyOf(lacks);
        rows = List.copyOf(rows);
        meets = List.copyOf(meets);
    }

    /** A rider group as it is chosen: id and title. */
    record Riders(RecordId id, String words) {
        @Override
        public String toString() {
            return words;
        }
    }

    /**
     * A concept among the others.
     *
     * @param setUp for example {@code 1 × 11}
     * @param steps nothing where it has one cog only
     * @param standing whether it is worked on
     * @param reason why it stands so; may be empty
     */
    record Entrant(
            RecordId id,
            ConceptSign sign,
            String title,
            String setUp,
            List<Integer> rings,
            List<Integer> cogs,
            Optional<StepBars> steps,
            Shown.Standing standing,
            String reason) {
        Entrant {
            rings = List.copyOf(rings);
            cogs = List.copyOf(cogs);
        }

        List<Integer> teeth(ToothRow row) {
            return row == ToothRow.COGS ? cogs : rings;
        }
    }

    /** Whether a row is the first of its figure. */
    enum Place {
        FIRST,
        FURTHER
    }

    /**
     * What is asked.
     *
     * @param comparator for example {@code at least}
     * @param number without unit
     */
    record Limit(String comparator, String number, String unit) {
        String text() {
            return comparator + " " + new ShownValue(number, unit).text();
        }
    }

    /**
     * A figure of all concepts.
     *
     * @param figure its name
     * @param where what it is asked of, in few words; may be empty
     * @param requirement who asks for a target
     * @param limit the target; nothing where there is none yet
     * @param cells one for each concept
     */
    record Row(
            String figure,
            String where,
            Place place,
            Optional<RecordId> requirement,
            Optional<Limit> limit,
            List<Cell> cells) {
        Row {
            cells = List.copyOf(cells);
        }
    }

    /**
     * A figure of one concept.
     *
     * @param ask opens in Workings; nothing where the figure cannot be asked
     * @param watched the question whose change shows that this one has changed
     * @param value nothing where an input is missing
     * @param verdict nothing where there is no target
     * @param bar nothing where there is no target, or it is zero
     * @param stretch how far beyond the target one would like to be, in shares of it
     * @param lacks the field that would fill it
     * @param name for those who do not see it
     */
    record Cell(
            Optional<Ask> ask,
            Optional<Ask> watched,
            Optional<ShownValue> value,
            Optional<Verdict> verdict,
            Optional<Inline.Bar> bar,
            Optional<Double> stretch,
            Optional<MissingInput> lacks,
            String name) {
        /** What copying gives: value, unit and figure. */
        String copy() {
            return value.map(ShownValue::text).orElse("")
                    + ask.map(asked -> "  " + asked).orElse("");
        }
    }
}
