package groupwright.workbench.cassettes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.cassettes.CogChange;
import groupwright.definition.figure.Quantity;
import groupwright.definition.ledger.Ledger;
import groupwright.definition.record.Definition;
import groupwright.definition.record.RecordId;
import groupwright.drivetrain.search.CassetteSearch;
import groupwright.drivetrain.search.Found;
import groupwright.drivetrain.search.LargestStep;
import groupwright.drivetrain.search.Limits;
import groupwright.drivetrain.search.Objective;
import groupwright.drivetrain.search.Progress;
import groupwright.drivetrain.search.Question;
import groupwright.drivetrain.search.Span;
import groupwright.workbench.Sample;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.look.Words;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Finding and judging, away from any window. */
class HuntTest {
    private static final RecordId C2 = Sample.id("C-002");
    private static final Words WORDS = Words.of(Hunt.class, Locale.ENGLISH);

    /** Small enough to be judged in a test. */
    static Inquiry few() {
        Question question = Question.of(
                        Span.of(10), new Span(44, 48), Span.of(11), Objective.UNEVENNESS, Objective.MASS)
                .with(Limits.of(new LargestStep(20, 0)));
        return new Inquiry(C2, question, List.of(32));
    }

    static Finding found(Definition definition, Inquiry inquiry) {
        Hunt hunt = Hunt.forCassettes(CassettesBench.CATALOGUE, definition, inquiry, WORDS);
        return assertInstanceOf(Hunt.Outcome.Ready.class, hunt.with(Bench.Progress.NONE))
                .finding();
    }

    static Finding judged(Definition definition, Inquiry inquiry) {
        Hunt hunt = Hunt.again(CassettesBench.CATALOGUE, definition, found(definition, inquiry), WORDS);
        return assertInstanceOf(Hunt.Outcome.Ready.class, hunt.with(Bench.Progress.NONE))
                .finding();
    }

    @Test
    void whatIsShownIsWhatTheEngineFinds() {
        List<Found> engine =
                CassetteSearch.find(few().question(), Progress.NONE).stream().toList();
        Finding finding = found(Sample.definition(), few());
        assertEquals(engine, finding.shown().stream().map(Candidate::found).toList());
        Candidate first = finding.shown().get(0);
        assertEquals(engine.get(0).values().massG(), Measure.WEIGHT.of(first));
        assertEquals(engine.get(0).values().unevennessPct(), Measure.UNEVENNESS.of(first));
    }

    /** The ledger's figures of the same cogs are the reference. */
    @Test
    void measuresOfTodayAreTheFiguresOfTheConcept() {
        Candidate today = found(Sample.definition(), few()).today();
        Ledger ledger = Sample.ledger();
        assertEquals(figure(ledger, "longest-wait C-002"), Measure.WAIT.of(today), 1e-12);
        assertEquals(figure(ledger, "largest-step C-002"), Measure.LARGEST_STEP.of(today), 1e-12);
        assertEquals(figure(ledger, "step-unevenness C-002"), Measure.UNEVENNESS.of(today), 1e-12);
        assertEquals(figure(ledger, "gear-range C-002"), Measure.RANGE.of(today), 1e-12);
    }

    private static double figure(Ledger ledger, String text) {
        return assertInstanceOf(Quantity.class, ledger.ask(Sample.ask(text))).value();
    }

    /** The verdict for a rider group, by a ledger in which the cogs really stand. */
    @Test
    void verdictsAreThoseOfTheProjectWithTheseCogs() {
        Finding finding = judged(Sample.definition(), few());
        assertTrue(finding.isWhole());
        Candidate one = finding.shown().get(finding.shown().size() / 2);
        Definition set = CogChange.in(Sample.definition(), C2, one.cassette());
        Ledger afresh = new Ledger(CassettesBench.CATALOGUE, set, 500);
        var verdict =
                (groupwright.definition.figure.Verdict) afresh.ask(Sample.ask("verdict-for-riders C-002 G-001 R-004"));
        var held = one.judged().orElseThrow().held().stream()
                .filter(h -> h.criterion().name().equals("R-004.k1"))
                .findFirst()
                .orElseThrow();
        assertEquals(verdict.margin(), held.verdict().margin(), 1e-12);
        assertEquals(
                verdict.outcome() == groupwright.definition.figure.Verdict.Outcome.MISSES,
                !one.suits(List.of(Sample.id("G-001"))));
    }

    @Test
    void aNewerSearchEndsTheOlderOne() {
        Hunt hunt = Hunt.forCassettes(CassettesBench.CATALOGUE, Sample.definition(), few(), WORDS);
        hunt.supersede();
        assertInstanceOf(Hunt.Outcome.Stopped.class, hunt.with(Bench.Progress.NONE));
    }

    /** Stopped after five: those five keep their verdicts, the others have none. */
    @Test
    void stoppingKeepsWhatWasJudged() {
        Finding before = found(Sample.definition(), few());
        Hunt hunt = Hunt.again(CassettesBench.CATALOGUE, Sample.definition(), before, WORDS);
        long[] reached = {0};
        Bench.Progress five = new Bench.Progress() {
            @Override
            public void at(long done, long total) {
                reached[0] = done;
            }

            @Override
            public boolean isStopped() {
                return reached[0] >= 5;
            }
        };
        Finding after = ((Hunt.Outcome.Ready) hunt.with(five)).finding();
        assertEquals(
                5,
                after.shown().stream()
                        .map(Candidate::judged)
                        .filter(Optional::isPresent)
                        .count());
        assertEquals(before.shown().size(), after.shown().size());
    }
}
