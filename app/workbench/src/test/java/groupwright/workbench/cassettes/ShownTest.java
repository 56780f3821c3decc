package groupwright.workbench.cassettes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.record.RecordId;
import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.search.Objective;
import groupwright.drivetrain.search.Question;
import groupwright.drivetrain.search.Span;
import groupwright.workbench.Sample;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Theme;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** One finding looked at in several ways. */
class ShownTest {
    private static final Finding FINDING = HuntTest.judged(Sample.definition(), HuntTest.few());
    private static final RecordId G3 = Sample.id("G-003");

    private final Shown shown = Shown.first(FINDING, Set.of(G3));

    @Test
    void theFilterLeavesThoseThatMissNothingForTheGroups() {
        List<Candidate> expected = FINDING.shown().stream()
                .filter(one -> one.judged().orElseThrow().forRiders(G3).stream()
                        .noneMatch(verdict -> verdict.words().startsWith("misses")))
                .toList();
        assertFalse(expected.isEmpty());
        assertTrue(expected.size() < FINDING.shown().size());
        assertEquals(Set.copyOf(expected), Set.copyOf(shown.rows()));
        assertEquals(
                FINDING.shown().size(), shown.filter(Shown.Filter.ALL).rows().size());
    }

    @Test
    void whereNothingSuitsAllAreListed() {
        Shown none = Shown.first(FINDING, Set.of(Sample.id("G-001"), G3));
        assertEquals(Shown.Filter.ALL, none.filter());
        assertEquals(FINDING.shown().size(), none.rows().size());
    }

    @ParameterizedTest
    @EnumSource(Measure.class)
    void sortingPutsTheBestFirstAndThenTheWorst(Measure measure) {
        Shown all = shown.filter(Shown.Filter.ALL);
        Sorting best = Sorting.AS_FOUND.next(measure);
        assertOrder(all.sorting(best).rows(), measure, 1);
        assertOrder(all.sorting(best.next(measure)).rows(), measure, -1);
        assertEquals(
                FINDING.shown(), all.sorting(best.next(measure).next(measure)).rows());
    }

    private static void assertOrder(List<Candidate> rows, Measure measure, int sign) {
        for (int i = 1; i < rows.size(); i++) {
            assertTrue(sign * measure.cost(rows.get(i - 1)) <= sign * measure.cost(rows.get(i)));
        }
    }

    /** Every pair of axes, against the definition: nobody is at least as good in both and better in one. */
    @Test
    void theStepLineHoldsExactlyThoseThatNobodyBeatsOnTheTwoAxes() {
        for (Measure across : Measure.values()) {
            for (Measure up : Measure.values()) {
                if (across != up) {
                    Set<List<Double>> expected = new LinkedHashSet<>();
                    FINDING.shown().stream()
                            .filter(one -> FINDING.shown().stream().noneMatch(other -> beats(other, one, across, up)))
                            .forEach(one -> expected.add(List.of(across.of(one), up.of(one))));
                    Set<List<Double>> found = new LinkedHashSet<>();
                    new TradeOff(across, up)
                            .best(FINDING.shown())
                            .forEach(one -> found.add(List.of(across.of(one), up.of(one))));
                    assertEquals(expected, found, across + " and " + up);
                }
            }
        }
    }

    private static boolean beats(Candidate one, Candidate other, Measure across, Measure up) {
        double first = across.cost(one) - across.cost(other);
        double second = up.cost(one) - up.cost(other);
        return first <= 0 && second <= 0 && (first < 0 || second < 0);
    }

    @Test
    void anAxisThatIsChosenTwiceChangesPlaces() {
        TradeOff axes = new TradeOff(Measure.WEIGHT, Measure.UNEVENNESS);
        assertEquals(new TradeOff(Measure.UNEVENNESS, Measure.WEIGHT), axes.across(Measure.UNEVENNESS));
        assertEquals(new TradeOff(Measure.WEIGHT, Measure.WAIT), axes.up(Measure.WAIT));
    }

    @Test
    void pinnedOnesStayOnTopWithTheirLettersWhateverIsFiltered() {
        Cassette last = FINDING.shown().get(FINDING.shown().size() - 1).cassette();
        Cassette today = FINDING.today().cassette();
        Shown pinned = shown.togglePin(last).togglePin(today);
        assertEquals(
                List.of(last, today),
                pinned.rows().stream().limit(2).map(Candidate::cassette).toList());
        assertEquals("b", pinned.letter(today));
        assertEquals("a", pinned.togglePin(last).letter(today));
    }

    /** 9 to 12, 32 to 52, 9 to 13 cogs: far more than 500. */
    @Test
    void ofLargeSetsItIsSaidHowManyAreShownAndByWhichRule() {
        Question question =
                Question.of(new Span(9, 12), new Span(44, 48), new Span(11, 12), Objective.UNEVENNESS, Objective.MASS);
        Finding large = HuntTest.found(Sample.definition(), new Inquiry(Sample.id("C-002"), question, List.of(32)));
        assertTrue(large.outOf() > 500, "only " + large.outOf());
        assertEquals(500, large.shown().size());
        String text = new CassetteWords(Locale.ENGLISH).shownOf(large);
        assertTrue(
                text.endsWith(
                        "500 of " + new CassetteWords(Locale.ENGLISH).number(large.outOf(), 0)
                                + " shown: the best in each objective, the rest evenly along the unevenness of steps, at most 500."),
                text);
    }

    @Test
    void whyNotSaysWhatBeatsItWhatItBreaksOrThatItIsThere() {
        Look.setUp(Theme.LIGHT, 1);
        WhyNot why = new WhyNot(new CassetteWords(Locale.ENGLISH));
        why.about(FINDING.set());
        assertEquals(
                "No cassette inside the limits beats it: it is in the best set.",
                why.answer(FINDING.shown().get(0).cogs()));
        assertTrue(
                why.answer("10 12 14 16 18 21 25 30 35 40 45").contains(" beats it: "),
                why.answer("10 12 14 16 18 21 25 30 35 40 45"));
        assertEquals(
                "It breaks a limit: a cassette must have no step above 20 %; 10 13 14 16 18 21 25 30 35 40 45 does not.",
                why.answer("10-13-14-16-18-21-25-30-35-40-45"));
        assertEquals("Its ends or its number of cogs are not among those asked for.", why.answer("10, 20, 30"));
        assertEquals("Not a number of teeth: “x”. Type cogs like 10-12-14.", why.answer("10 x"));
        assertEquals(Optional.empty(), Optional.of(why.answer(" ")).filter(text -> !text.isEmpty()));
    }
}
