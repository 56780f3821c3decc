package groupwright.workbench.bikes;

import groupwright.definition.figure.Ask;
import groupwright.definition.figure.MissingInput;
import groupwright.definition.figure.Verdict;
import groupwright.definition.record.RecordId;
import groupwright.documents.charts.ConceptSign;
import groupwright.documents.charts.FromAbove;
import groupwright.documents.content.Inline;
import groupwright.documents.trace.ShownValue;
import java.util.List;
import java.util.Optional;

/**
 * What the place shows: texts in the reader's language and digits, and the questions behind them.
 *
 * @param concepts worked on; each is a column
 * @param rows bikes in use
 * @param counted what the bars show; nothing where no requirement is measured on bikes
 * @param retired bikes no longer used
 * @param drawing of the bike chosen; nothing where there is no bike or no concept
 * @param opened all checks of the cell that is open
 */
record BikesSheet(
        List<Column> concepts,
        List<Row> rows,
        Optional<Counted> counted,
        List<Retired> retired,
        Optional<Picture> drawing,
        Optional<Opened> opened) {
    static final BikesSheet NOTHING =
            new BikesSheet(List.of(), List.of(), Optional.empty(), List.of(), Optional.empty(), Optional.empty());

    BikesSheet {
        concepts = List.copyOf(concepts);
        rows = List.copyOf(rows);
        retired = List.copyOf(retired);
    }

    /** A concept on a bike. */
    record Pair(RecordId concept, RecordId bike) {}

    /**
     * The criterion measured on bikes that counts most.
     *
     * @param words as a head writes it, for example {@code gap at least 6 mm; line in mm}
     * @param name in full, with the requirement
     */
    record Counted(RecordId requirement, String words, String name) {}

    /**
     * A concept.
     *
     * @param verdicts how it fits each bike, in the order of rows
     * @param fits for those who do not see the counts
     */
    record Column(RecordId id, ConceptSign sign, String title, List<Verdict> verdicts, String fits) {
        Column {
            verdicts = List.copyOf(verdicts);
        }
    }

    /**
     * A bike.
     *
     * @param measures chainstay, middle of the cassette, front chain lines, largest ring
     * @param lacks what is missing in few words, with the first of the fields
     * @param fields all fields whose numbers are missing
     * @param name for those who do not see it
     */
    record Row(
            RecordId id,
            String title,
            List<String> measures,
            String source,
            Optional<Lack> lacks,
            List<Lack> fields,
            List<Cell> cells,
            String name) {
        Row {
            measures = List.copyOf(measures);
            fields = List.copyOf(fields);
            cells = List.copyOf(cells);
        }
    }

    /** What is missing, in words, and where to write it. */
    record Lack(String words, MissingInput input) {}

    /** Whether the bike is the one a concept is judged on. */
    enum Place {
        WORST,
        ANY
    }

    /**
     * A concept on a bike.
     *
     * @param fits the worst of all checks
     * @param cause the check that decided, where no number of the cell tells it; may be empty
     * @param counted what is held against the limit of the column
     * @param bar nothing where there is no limit for this bike, or its target is zero
     * @param name for those who do not see it
     */
    record Cell(
            Pair pair,
            Verdict fits,
            String cause,
            Place place,
            Optional<Number> counted,
            Optional<Inline.Bar> bar,
            Number beside,
            Number links,
            Number line,
            String name) {
        /** The numbers below the bar, from left to right. */
        List<Number> below() {
            return List.of(beside, links, line);
        }
    }

    /** Whether a check of a number fails. */
    enum Check {
        FAILS,
        HOLDS
    }

    /**
     * A number of a cell.
     *
     * @param word before it; may be empty
     * @param value nothing where an input is missing
     * @param ask opens in Workings; nothing where it cannot be asked
     * @param lacks the field that would fill it
     * @param name for those who do not see it
     */
    record Number(
            String word,
            Optional<ShownValue> value,
            Optional<Ask> ask,
            Optional<MissingInput> lacks,
            Check check,
            String name) {
        /** What copying gives: value, unit and figure. */
        String copy() {
            return value.map(ShownValue::text).orElse("")
                    + ask.map(asked -> "  " + asked).orElse("");
        }
    }

    /** A bike that is retired, and why. */
    record Retired(RecordId id, String title, String reason) {}

    /**
     * Concepts over each other on one bike.
     *
     * @param above nothing where none can be drawn
     * @param lacks what stands in the way of those that are left out
     */
    record Picture(RecordId bike, Optional<FromAbove> above, List<Lack> lacks) {
        Picture {
            lacks = List.copyOf(lacks);
        }
    }

    /** All checks of a concept on a bike. */
    record Opened(Pair pair, String title, Verdict fits, List<CheckLine> checks) {
        Opened {
            checks = List.copyOf(checks);
        }
    }

    /**
     * One check.
     *
     * @param number what is held against the limit
     * @param requirement who asks; nothing for what must hold anyway
     * @param lacks what is missing for it
     * @param sentence all of it
     */
    record CheckLine(
            String title,
            Number number,
            String limit,
            Verdict verdict,
            Optional<RecordId> requirement,
            List<Lack> lacks,
            String sentence) {
        CheckLine {
            lacks = List.copyOf(lacks);
        }
    }
}
