package groupwright.drivetrain.loads;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class LevelCrossingsTest {
    private static List<Long> count(double[] levels, double... history) {
        LevelCrossings counter = new LevelCrossings(0, levels);
        for (double load : history) {
            counter.add(load);
        }
        return counter.counts().stream().map(LevelCount::crossings).toList();
    }

    @Test
    void publishedCounts() {
        // ASTM E1049-85, Figure 2a, as in the tests of the library ffpack
        double[] history = {-0.8, 1.3, 0.7, 3.4, 0.7, 2.5, -1.4, -0.5, -2.3, -2.2, -2.6, -2.4, -3.3, 1.5, 0.6, 3.4, -0.5
        };
        assertEquals(List.of(1L, 1L, 2L, 2L, 5L, 3L, 2L), count(new double[] {-3, -2, -1, 0, 1, 2, 3}, history));
    }

    @ParameterizedTest
    @CsvSource({"0 1 0, 0", "0 1 2, 1", "0 1 1 2, 1", "0 2, 1", "2 0, 0", "0 2 1 2, 2", "2, 0"})
    void aLevelIsPassedByExceedingIt(String history, long expected) {
        double[] loads = java.util.Arrays.stream(history.split(" "))
                .mapToDouble(Double::parseDouble)
                .toArray();
        assertEquals(List.of(expected), count(new double[] {1}, loads));
        for (int i = 0; i < loads.length; i++) {
            loads[i] = -loads[i];
        }
        assertEquals(List.of(expected), count(new double[] {-1}, loads)); // below the reference all is mirrored
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void searchingFindsWhatComparingFinds(long seed) {
        var random = new Random(seed);
        double[] history = Histories.random(random);
        double[] levels = random.ints(-15, 16)
                .distinct()
                .limit(12)
                .sorted()
                .asDoubleStream()
                .toArray();
        long[] expected = new long[levels.length];
        for (int i = 1; i < history.length; i++) {
            for (int k = 0; k < levels.length; k++) {
                boolean rises = levels[k] >= 0 && history[i - 1] <= levels[k] && history[i] > levels[k];
                boolean falls = levels[k] < 0 && history[i - 1] >= levels[k] && history[i] < levels[k];
                expected[k] += rises || falls ? 1 : 0;
            }
        }
        List<Long> wanted = java.util.Arrays.stream(expected).boxed().toList();
        assertEquals(wanted, count(levels, history));
        assertEquals(wanted, count(levels, Histories.padded(history, random)));
    }

    @Test
    void nonsenseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new LevelCrossings(Double.NaN, 1));
        assertThrows(IllegalArgumentException.class, () -> new LevelCrossings(0, 2, 1));
        assertThrows(IllegalArgumentException.class, () -> new LevelCrossings(0, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> new LevelCrossings(0, 1, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new LevelCrossings(0, 1).add(Double.NaN));
    }
}
