package groupwright.drivetrain.loads;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class SteppedRainflowTest {
    private static RainflowSummary count(LoadLevels levels, CycleSink sink, double... history) {
        SteppedRainflow counter = new SteppedRainflow(levels, sink);
        for (double load : history) {
            counter.add(load);
        }
        return counter.finish();
    }

    @Test
    void theStandardsExampleOnItsOwnLevelsIsExact() {
        // ASTM E1049-85, Figure 6
        RangeCounts counts = new RangeCounts();
        RainflowSummary summary = count(new LoadLevels(-4, 1, 10), counts, Histories.STANDARD);
        assertEquals(Rainflow.spectrum(Histories.STANDARD), counts.spectrum());
        assertEquals(9, summary.largestRange());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void isRainflowOfTheRoundedHistory(long seed) {
        var random = new Random(seed);
        double[] history = random.doubles(300, -1, 1).toArray();
        int count = 2 + random.nextInt(40);
        LoadLevels levels = LoadLevels.between(-1, 1, count);
        RangeCounts counts = new RangeCounts();
        RainflowSummary summary = count(levels, counts, history);
        double[] numbers = Arrays.stream(history)
                .map(load -> Math.floor((load + 1) / (2.0 / (count - 1)) + 0.5))
                .toArray();
        RangeCounts expected = new RangeCounts();
        NaiveRainflow.cycles(numbers).forEach(c -> expected.accept(c.range() * levels.step(), 0, c.count()));
        assertEquals(expected.spectrum(), counts.spectrum());
        assertTrue(summary.deepest() <= count + 1, "open at a time: " + summary.deepest());
        assertTrue(counts.spectrum().blocks().size() < count);
    }

    @Test
    void whatDiesDownWithoutEndNeedsNoMoreRoomThanTheLevels() {
        double[] history = new double[100_000];
        for (int i = 0; i < history.length; i++) {
            history[i] = (i % 2 == 0 ? 1 : -1) * (1 - i / (double) history.length);
        }
        assertTrue(count(new LoadLevels(-1, 0.01, 201), (range, mean, count) -> {}, history)
                        .deepest()
                <= 202);
    }

    @ParameterizedTest
    @CsvSource({"-4.5, 0", "-4.51, -1", "5.49, 9", "5.5, -1", "0.5, 5", "-0.51, 3", "NaN, -1", "Infinity, -1"})
    void loadsGoToTheNearestLevelOrAreRefused(double load, int expected) {
        LoadLevels levels = new LoadLevels(-4, 1, 10);
        if (expected < 0) {
            var refused = assertThrows(IllegalArgumentException.class, () -> levels.nearest(load));
            assertTrue(refused.getMessage().contains("levels from -4.0 to 5.0"), refused.getMessage());
        } else {
            assertEquals(expected, levels.nearest(load));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.MAX_VALUE})
    void badStepsAreRefused(double step) {
        assertThrows(IllegalArgumentException.class, () -> new LoadLevels(0, step, 10));
        assertThrows(IllegalArgumentException.class, () -> new LoadLevels(0, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> LoadLevels.between(1, 1, 5));
    }
}
