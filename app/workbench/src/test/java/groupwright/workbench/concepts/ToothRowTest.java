package groupwright.workbench.concepts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.record.Amount;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Invalid;
import groupwright.workbench.Sample;
import groupwright.workbench.look.Words;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Teeth as they are typed and changed one by one; properties over seeded rows, the seed stands in each test's name. */
class ToothRowTest {
    private static final Words WORDS = Words.of(ToothRow.class, Locale.ENGLISH);

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 200);
    }

    private static List<Integer> row(ToothRow row, Random random) {
        int count = 1 + random.nextInt(row.longest());
        TreeSet<Integer> teeth = new TreeSet<>();
        while (teeth.size() < count) {
            teeth.add(row.least() + random.nextInt(row.most() - row.least() + 1));
        }
        List<Integer> listed = new ArrayList<>(teeth);
        if (row == ToothRow.RINGS) {
            Collections.reverse(listed);
        }
        return listed;
    }

    private static List<Integer> changed(ToothRow.Outcome outcome) {
        return ((ToothRow.Changed) outcome).teeth();
    }

    private static String sentence(ToothRow row, ToothRow.Outcome outcome) {
        ToothRow.Refused refused = (ToothRow.Refused) outcome;
        return WORDS.text(
                "refused." + row.field() + "." + refused.key(), refused.parts().toArray());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void whateverPartsTheNumbersTheRowIsTheSame(long seed) {
        Random random = new Random(seed);
        String[] between = {"-", " ", ", ", "–", "—", "/", "; ", "  ", " - ", "\u2212", "\u2011"};
        for (ToothRow row : ToothRow.values()) {
            List<Integer> teeth = row(row, random);
            StringBuilder typed = new StringBuilder(random.nextBoolean() ? " " : "");
            for (int wheel : teeth) {
                typed.append(wheel).append(between[random.nextInt(between.length)]);
            }
            assertEquals(teeth, changed(row.read(typed.toString())), "seed " + seed + ": " + typed);
            assertEquals(teeth, changed(row.read(row.text(teeth))), "seed " + seed);
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void nothingIsWrongOnTheWayToAGoodRow(long seed) {
        Random random = new Random(seed);
        for (ToothRow row : ToothRow.values()) {
            String whole = row.text(row(row, random));
            for (int end = 0; end <= whole.length(); end++) {
                assertTrue(
                        row.wrongSoFar(whole.substring(0, end)).isEmpty(),
                        "seed " + seed + ": " + whole.substring(0, end) + " of " + whole);
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void keysNeverMakeARowThatCannotBe(long seed) {
        Random random = new Random(seed);
        ToothRow row = random.nextBoolean() ? ToothRow.COGS : ToothRow.RINGS;
        List<Integer> teeth = row(row, random);
        for (int key = 0; key < 60; key++) {
            int place = random.nextInt(teeth.size());
            ToothRow.Outcome outcome = switch (random.nextInt(4)) {
                case 0 -> row.nudge(teeth, place, 1);
                case 1 -> row.nudge(teeth, place, -1);
                case 2 -> row.insert(teeth, place);
                default -> row.remove(teeth, place);
            };
            if (outcome instanceof ToothRow.Changed changed) {
                assertEquals(changed.teeth(), changed(row.read(row.text(changed.teeth()))), "seed " + seed);
                assertTrue(
                        changed.focus() >= 0
                                && changed.focus() < changed.teeth().size(),
                        "seed " + seed);
                assertEquals(1, differences(teeth, changed.teeth()), "seed " + seed);
                teeth = changed.teeth();
            } else {
                assertTrue(sentence(row, outcome).endsWith("."), "seed " + seed);
            }
        }
    }

    private static long differences(List<Integer> before, List<Integer> after) {
        long gone = before.stream().filter(wheel -> !after.contains(wheel)).count();
        long come = after.stream().filter(wheel -> !before.contains(wheel)).count();
        return Math.max(gone, come);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void oneToothMoreAndOneLessIsWhereOneBegan(long seed) {
        Random random = new Random(seed);
        for (ToothRow row : ToothRow.values()) {
            List<Integer> teeth = row(row, random);
            int place = random.nextInt(teeth.size());
            if (row.nudge(teeth, place, 1) instanceof ToothRow.Changed more) {
                assertEquals(teeth, changed(row.nudge(more.teeth(), place, -1)), "seed " + seed);
            }
        }
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(delimiter = '|', textBlock = """
            COGS  | 10-12-1o   | Not a number of teeth: “1o”. Type cogs like 10-12-14.
            COGS  | 10-12.5    | Not a number of teeth: “12.5”. Type cogs like 10-12-14.
            COGS  | 10-14-12-  | 12 follows 14. Type cogs smallest first.
            COGS  | 10-12-12   | The cog of 12 stands twice. Type each once.
            COGS  | 4-12       | A cog of 4 is too small. Cogs have 5 to 80 teeth.
            COGS  | 12-81      | A cog of 81 is too large. Cogs have 5 to 80 teeth.
            COGS  | 1-         | A cog of 1 is too small. Cogs have 5 to 80 teeth.
            COGS  | --         | No cog is left. Type at least one, for example 18.
            COGS  | 5 6 7 8 9 10 11 12 13 14 15 16 17 18 19 | A cassette has at most 14 cogs. Take one out first.
            RINGS | 24/36      | 36 follows 24. Type rings largest first.
            RINGS | 121        | A ring of 121 is too large. Rings have 5 to 120 teeth.
            RINGS | 44 33 23 20| A crankset has at most 3 rings. Take one out first.
            """)
    void saysWhatIsWrongInOneSentence(ToothRow row, String typed, String sentence) {
        assertEquals(sentence, sentence(row, row.read(typed)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "1", "10-1", "10-12-", "10-12-1", "10-7", "10 "})
    void whatMayStillBecomeRightIsNotWrongYet(String typed) {
        assertTrue(ToothRow.COGS.wrongSoFar(typed).isEmpty(), typed);
    }

    @ParameterizedTest
    @ValueSource(strings = {"9x", "10-12-11-", "10-12-12", "99", "10-3-", "40-12-", "80-9"})
    void whatCannotBecomeRightIsWrongAtOnce(String typed) {
        assertTrue(ToothRow.COGS.wrongSoFar(typed).isPresent(), typed);
    }

    @Test
    void aWheelIsAddedAtTheMiddleOfTheRatios() {
        assertEquals(List.of(20, 24, 28), changed(ToothRow.COGS.insert(List.of(20, 28), 0))); // sqrt(560) = 23.7
        assertEquals(List.of(20, 25, 31), changed(ToothRow.COGS.insert(List.of(20, 25), 1))); // 25 · 25/20 = 31.25
        assertEquals(List.of(48, 38, 30), changed(ToothRow.RINGS.insert(List.of(48, 38), 1))); // 38 · 38/48 = 30.1
        assertEquals(
                "Nothing fits between 20 and 21. Change one of them first.",
                sentence(ToothRow.COGS, ToothRow.COGS.insert(List.of(20, 21), 0)));
    }

    @Test
    void theLastWheelStays() {
        assertEquals(
                "The last cog cannot be removed. A concept has at least one.",
                sentence(ToothRow.COGS, ToothRow.COGS.remove(List.of(18), 0)));
    }

    @Test
    void spacingsOfSingleGapsComeAndGoWithThem() {
        Concept concept =
                Sample.definition().get(Sample.id("C-002"), Concept.class).orElseThrow();
        List<Amount> gaps = IntStream.rangeClosed(1, 10)
                .mapToObj(i -> Amount.of(3 + i / 10.0))
                .toList();
        var listed = Sample.with("C-002.cogSpacing_mm", gaps);
        List<Integer> more = changed(ToothRow.COGS.insert(concept.cogs(), 2)); // between 14 and 16, the third gap
        Concept longer = new ToothEdit(concept.id(), ToothRow.COGS, more)
                .of(listed)
                .get(concept.id(), Concept.class)
                .orElseThrow();
        assertEquals("3.1 3.2 3.3 3.3 3.4", spacings(longer, 5));
        List<Integer> fewer = changed(ToothRow.COGS.remove(concept.cogs(), 2));
        Concept shorter = new ToothEdit(concept.id(), ToothRow.COGS, fewer)
                .of(listed)
                .get(concept.id(), Concept.class)
                .orElseThrow();
        assertEquals("3.1 3.2 3.4 3.5 3.6", spacings(shorter, 5));
        Invalid unclear = Assertions.assertThrows(
                Invalid.class, () -> new ToothEdit(concept.id(), ToothRow.COGS, List.of(10, 20, 30)).of(listed));
        assertEquals("cogSpacing_mm", unclear.field());
    }

    private static String spacings(Concept concept, int first) {
        return concept.cogSpacing_mm().stream()
                .limit(first)
                .map(gap -> Double.toString(gap.value()))
                .collect(Collectors.joining(" "));
    }

    @Test
    void aGearThatIsNotUsedGoesWithItsCog() {
        Concept two = Sample.definition().get(Sample.id("C-001"), Concept.class).orElseThrow();
        List<Integer> fewer =
                changed(ToothRow.COGS.remove(two.cogs(), two.cogs().size() - 1)); // 38, excluded at 36
        Concept without = new ToothEdit(two.id(), ToothRow.COGS, fewer)
                .of(Sample.definition())
                .get(two.id(), Concept.class)
                .orElseThrow();
        assertEquals(List.of(), without.excludedGears());
    }
}
