package groupwright.documents.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LogScaleTest {
    private static final double SUM_OF_ROUNDING = 1e-9;

    @ParameterizedTest(name = "{0} stands at {1}")
    @CsvSource(textBlock = """
            # By hand, from 1 at 100 to 8 at 400: 8 is 2 · 2 · 2, so each doubling takes 100
            1, 100
            2, 200
            4, 300
            8, 400
            # the square root of 2 is half a doubling
            1.4142135623730951, 150
            # beyond the ends it goes on
            16, 500
            """)
    void doublingsAreEqualLengths(double value, double expected) {
        assertEquals(expected, new LogScale(1, 8, 100, 400).position(value), SUM_OF_ROUNDING);
    }

    @ParameterizedTest(name = "{0} to {1}: {2}")
    @CsvSource(textBlock = """
            # By hand: the fullest choice that gives five to seven
            1.39, 8.25, 2.0 3.0 4.0 5.0 6.0 7.0 8.0
            1.30, 9.40, 2.0 3.0 4.0 5.0 6.0 8.0
            0.90, 11,   1.0 2.0 3.0 5.0 10.0
            0.5,  60,   0.5 1.0 2.0 5.0 10.0 20.0 50.0
            2.05, 2.95, 2.2 2.4 2.6 2.8
            2.00, 3.00, 2.0 2.2 2.4 2.6 2.8 3.0
            """)
    void ticksAreRoundAndFew(double low, double high, String expected) {
        String ticks = new LogScale(low, high, 0, 1)
                .ticks().stream()
                        .map(tick -> Double.toString(Math.rint(tick * 1e6) / 1e6))
                        .collect(Collectors.joining(" "));
        assertEquals(expected, ticks);
    }

    @Test
    void ticksOfAnyScaleLieOnItAndRise() {
        long seed = 20260309;
        Random random = new Random(seed);
        for (int i = 0; i < 2000; i++) {
            double low = Math.exp(random.nextDouble() * 6 - 3);
            double high = low * Math.exp(0.05 + random.nextDouble() * 3.5);
            List<Double> ticks = new LogScale(low, high, 0, 1).ticks();
            String what = "seed " + seed + ", " + low + " to " + high + ": " + ticks;
            assertTrue(ticks.size() >= 3 && ticks.size() <= 9, what);
            for (int k = 0; k < ticks.size(); k++) {
                assertTrue(ticks.get(k) >= low && ticks.get(k) <= high, what);
                assertTrue(k == 0 || ticks.get(k) > ticks.get(k - 1), what);
            }
        }
    }

    @Test
    void aScaleNeedsTwoEndsAboveZero() {
        assertThrows(IllegalArgumentException.class, () -> new LogScale(0, 1, 0, 1));
        assertThrows(IllegalArgumentException.class, () -> new LogScale(2, 2, 0, 1));
        assertThrows(IllegalArgumentException.class, () -> new LogScale(Double.NaN, 2, 0, 1));
    }
}
