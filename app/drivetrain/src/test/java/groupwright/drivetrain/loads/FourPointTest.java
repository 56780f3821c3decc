package groupwright.drivetrain.loads;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FourPointTest {
    private static List<Double> count(CycleSink sink, double... history) {
        FourPoint counter = new FourPoint(sink);
        for (double load : history) {
            counter.add(load);
        }
        return counter.finish();
    }

    @Test
    void closedCycleAndResidueOfTheStandardsHistory() {
        // history: ASTM E1049-85, Figure 6; counts worked out by hand, no source
        List<Cycle> cycles = new ArrayList<>();
        List<Double> residue = count((range, mean, n) -> cycles.add(new Cycle(range, mean, n)), Histories.STANDARD);
        assertEquals(List.of(new Cycle(4, 1, 1)), cycles);
        assertEquals(List.of(-2.0, 1.0, -3.0, 5.0, -4.0, 4.0, -2.0), residue);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void withTheResidueInHalvesItIsTheStandardsCount(long seed) {
        double[] history = Histories.random(new Random(seed));
        RangeCounts counts = new RangeCounts();
        List<Double> residue = count(counts, history);
        for (int i = 1; i < residue.size(); i++) {
            counts.accept(Math.abs(residue.get(i) - residue.get(i - 1)), 0, 0.5);
        }
        assertEquals(Rainflow.spectrum(history), counts.spectrum());
        assertTrue(residue.size() <= 2 * Arrays.stream(history).distinct().count());
    }

    @Test
    void badSamplesAndFinishedHistoriesAreRefused() {
        FourPoint counter = new FourPoint((range, mean, n) -> {});
        assertThrows(IllegalArgumentException.class, () -> counter.add(Double.NaN));
        counter.finish();
        assertThrows(IllegalStateException.class, () -> counter.add(1));
    }
}
