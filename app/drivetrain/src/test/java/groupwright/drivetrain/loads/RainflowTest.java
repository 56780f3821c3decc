package groupwright.drivetrain.loads;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class RainflowTest {
    private static final double LAST_DIGITS = 1e-14; // the expected numbers near 1 were summed in another order

    private static double[] numbers(String spaced) {
        return Stream.of(spaced.trim().split(" +"))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }

    private static Map<Double, Double> counts(LoadSpectrum spectrum) {
        return spectrum.blocks().stream().collect(Collectors.toMap(LoadBlock::load, LoadBlock::cycles));
    }

    @Test
    void theStandardsExampleCycleByCycle() {
        // ASTM E1049-85, Figure 6, as in the tests of two independent libraries (rainflow, ffpack) that cite it
        assertEquals(
                List.of(
                        new Cycle(3, -0.5, 0.5),
                        new Cycle(4, -1, 0.5),
                        new Cycle(4, 1, 1),
                        new Cycle(8, 1, 0.5),
                        new Cycle(9, 0.5, 0.5),
                        new Cycle(8, 0, 0.5),
                        new Cycle(6, 1, 0.5)),
                Rainflow.cycles(Histories.STANDARD));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            # first: ASTM E1049-85, Figure 6; others: tests of the library ffpack, which cite the same standard
            -2 1 -3 5 -1 3 -4 4 -2 | 3 0.5 4 1.5 6 0.5 8 1 9 0.5
            0 2.5 0 3              | 2.5 1 3 0.5
            -1 3 -0.5 1 -2         | 1.5 1 4 0.5 5 0.5
            0 1.5                  | 1.5 0.5
            -1 1 -3 3 2            | 1 0.5 2 0.5 4 0.5 6 0.5
            """)
    void publishedCountsByRange(String history, String rangesAndCounts) {
        double[] expected = numbers(rangesAndCounts);
        Map<Double, Double> found = counts(Rainflow.spectrum(numbers(history)));
        assertEquals(expected.length / 2, found.size());
        for (int i = 0; i < expected.length; i += 2) {
            assertEquals(expected[i + 1], found.get(expected[i]));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"rainflow_standard_example", "rainflow_two_sines"})
    void publishedCycleLists(String name) {
        // cycle lists of the library rainflow, see the README of the resources; sorted there by the end of the cycle
        List<Cycle> expected = Histories.expected(name + "_expected.csv");
        List<Cycle> found = Rainflow.cycles(Histories.file(name + ".csv"));
        assertEquals(expected.size(), found.size());
        for (int i = 0; i < expected.size(); i++) {
            assertEquals(expected.get(i).range(), found.get(i).range(), LAST_DIGITS);
            assertEquals(expected.get(i).mean(), found.get(i).mean(), LAST_DIGITS);
            assertEquals(expected.get(i).count(), found.get(i).count());
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void streamingFindsWhatTheNaiveCounterFinds(long seed) {
        double[] history = Histories.random(new Random(seed));
        assertEquals(NaiveRainflow.cycles(history), Rainflow.cycles(history));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void pointsOnTheWayAndRepeatsChangeNothing(long seed) {
        var random = new Random(seed);
        double[] history = Histories.random(random);
        assertEquals(Rainflow.cycles(history), Rainflow.cycles(Histories.padded(history, random)));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void countsAddUpToHalfTheReversals(long seed) {
        double[] history = Histories.random(new Random(seed));
        double[] sum = new double[1];
        RainflowSummary summary = Rainflow.count((range, mean, count) -> sum[0] += count, history);
        int reversals = NaiveRainflow.reversals(history).size();
        assertEquals(reversals, summary.reversals());
        assertEquals(Math.max(0, reversals - 1) / 2.0, sum[0]);
        assertEquals(sum[0], summary.cycles());
        assertEquals(history.length, summary.samples());
        double span = Arrays.stream(history).max().orElse(0)
                - Arrays.stream(history).min().orElse(0);
        assertEquals(span, summary.largestRange()); // the whole span always counts, at least as a half
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void noMoreReversalsStayOpenThanThereAreValues(long seed) {
        double[] history = Histories.random(new Random(seed));
        long values = Arrays.stream(history).distinct().count();
        assertTrue(Rainflow.count((range, mean, count) -> {}, history).deepest() <= values + 1);
    }

    @Test
    void anOscillationThatDiesDownStaysOpen() {
        double[] history = new double[1000];
        for (int i = 0; i < history.length; i++) {
            history[i] = (i % 2 == 0 ? 1 : -1) * (history.length - i);
        }
        RainflowSummary summary = Rainflow.count((range, mean, count) -> {}, history);
        assertEquals(1000, summary.deepest());
        assertEquals(999, summary.halfCycles());
    }

    @Test
    void aLoadThatNeverChangesHasNoCycles() {
        assertEquals(List.of(), Rainflow.cycles(7, 7, 7));
        assertEquals(List.of(), Rainflow.cycles());
        assertEquals(0, Rainflow.count((range, mean, count) -> {}).cycles());
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.MAX_VALUE})
    void badSamplesAreRefusedAndLeaveTheCountAsItWas(double bad) {
        RangeCounts counts = new RangeCounts();
        Rainflow counter = new Rainflow(counts);
        for (double sample : Histories.STANDARD) {
            counter.add(sample);
            var refused = assertThrows(IllegalArgumentException.class, () -> counter.add(bad));
            assertTrue(refused.getMessage().contains(Double.toString(bad)), refused.getMessage());
        }
        counter.finish();
        assertEquals(Rainflow.spectrum(Histories.STANDARD), counts.spectrum());
    }

    @Test
    void aFinishedHistoryTakesNoMore() {
        Rainflow counter = new Rainflow((range, mean, count) -> {});
        counter.finish();
        assertThrows(IllegalStateException.class, () -> counter.add(1));
        assertThrows(IllegalStateException.class, counter::finish);
    }
}
