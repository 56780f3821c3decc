package groupwright.workbench.cassettes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.record.Concept;
import groupwright.drivetrain.search.JumpsNeverShrink;
import groupwright.drivetrain.search.LargestStep;
import groupwright.drivetrain.search.Limits;
import groupwright.drivetrain.search.Objective;
import groupwright.drivetrain.search.Question;
import groupwright.drivetrain.search.Span;
import groupwright.workbench.Sample;
import groupwright.workbench.look.Words;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is typed among the limits. */
class DraftReadingTest {
    private static final Words WORDS = Words.of(DraftReading.class, Locale.ENGLISH);
    private static final Concept C2 =
            Sample.definition().get(Sample.id("C-002"), Concept.class).orElseThrow();

    private static DraftReading.Read read(Draft draft) {
        return DraftReading.of(draft, C2.id(), WORDS);
    }

    /** The sample's C-002: 10 to 45 teeth, eleven cogs, largest step 20 %, ring 32. */
    @Test
    void oneBeginsAroundTheLeadConcept() {
        Inquiry inquiry = read(Draft.about(C2)).inquiry().orElseThrow();
        Question expected = Question.of(
                        new Span(10, 10),
                        new Span(42, 48),
                        new Span(11, 11),
                        Objective.LARGEST_STEP,
                        Objective.UNEVENNESS,
                        Objective.MISMATCH,
                        Objective.MASS)
                .with(Limits.of(new LargestStep(20, 0)));
        assertEquals(expected, inquiry.question());
        assertEquals(List.of(32), inquiry.rings());
    }

    @Test
    void commaAndPointAndFoldedLimitsAreRead() {
        Draft draft = Draft.about(C2)
                .with(Entry.STEP, "18,5")
                .with(Entry.STEP_FROM, "14")
                .with(Entry.RINGS, "36/24")
                .with(Draft.Jumps.NEVER_SHRINK);
        Inquiry inquiry = read(draft).inquiry().orElseThrow();
        assertEquals(
                List.of(new LargestStep(18.5, 14), new JumpsNeverShrink()),
                inquiry.question().limits().all());
        assertEquals(List.of(36, 24), inquiry.rings());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "SMALLEST_FROM | 1o | SMALLEST_FROM | Not a whole number: “1o”. Type one, for example 11.",
                "SMALLEST_FROM | '' | SMALLEST_FROM | Nothing is typed here. Type a whole number, for example 11.",
                "SMALLEST_TO | 9 | SMALLEST_TO | A range from 10 to 9 ends before it begins; write the smaller number first.",
                "LARGEST_TO | 99 | LARGEST_TO | The largest cog may be 5 to 80 teeth, not 42 to 99; keep within these bounds.",
                "COGS_TO | 30 | COGS_TO | The number of cogs may be 2 to 20 cogs, not 11 to 30; keep within these bounds.",
                "STEP | 5 | STEP | 10 steps of at most 5 % do not lead from 10 to 42 teeth; allow larger steps or more cogs.",
                "STEP | big | STEP | Not a number: “big”. Type one, for example 18.5.",
                "JUMP | 2 | JUMP | 10 jumps of at most 2 teeth do not lead from 10 to 42; allow larger jumps or more cogs.",
                "WITH | 50 | WITH | Forced cog 50 lies outside 10 to 48 teeth; move the ends or take it out of the list.",
                "RINGS | '' | RINGS | No ring is given. Type its teeth, for example 32."
            })
    void whatIsWrongIsSaidAtItsField(Entry typed, String text, Entry at, String sentence) {
        DraftReading.Read read = read(Draft.about(C2).with(typed, text));
        assertEquals(Map.of(at, sentence), read.wrong());
        assertTrue(read.inquiry().isEmpty());
    }

    @Test
    void withoutAnObjectiveNothingCanBeFound() {
        DraftReading.Read read = read(Draft.about(C2).with(Set.of()));
        assertEquals("Nothing makes a cassette better. Check at least one.", read.noObjective());
        assertTrue(read.inquiry().isEmpty());
    }
}
