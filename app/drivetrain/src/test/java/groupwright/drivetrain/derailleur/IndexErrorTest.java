package groupwright.drivetrain.derailleur;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class IndexErrorTest {
    @Test
    void errorsStackUpFromTheSmallestCog() {
        // by hand: 2.5 · 1.6 = 4.0 mm a click against 3.9, 4.2, 3.9
        var error = IndexError.of(List.of(3.9, 4.2, 3.9), List.of(2.5, 2.5, 2.5), 1.6);
        double[] expected = {0, 0.1, -0.1, 0};
        for (int i = 0; i < expected.length; i++) {
            assertEquals(expected[i], error.stackedMm().get(i), 1e-12);
        }
        assertEquals(0.1, error.worstSetOnSmallestMm(), 1e-12);
        assertEquals(0.1, error.worstSetBestMm(), 1e-12);
        // 0.05 mm too far at each of four clicks: 0.2 mm at the end, half of it if the adjuster shares it out
        var drift = IndexError.of(List.of(4.0, 4.0, 4.0, 4.0), List.of(4.05, 4.05, 4.05, 4.05), 1);
        assertEquals(0.2, drift.worstSetOnSmallestMm(), 1e-12);
        assertEquals(0.1, drift.worstSetBestMm(), 1e-12);
        assertEquals(0, IndexError.of(List.of(), List.of(), 1).worstSetBestMm());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void noSettingOfTheAdjusterDoesBetter(long seed) {
        var random = new Random(seed);
        List<Double> spacings = random.doubles(11, 3.4, 4.4).boxed().toList();
        List<Double> pulls = random.doubles(11, 2.4, 3.0).boxed().toList();
        var error = IndexError.of(spacings, pulls, 1.4);
        double best = Double.POSITIVE_INFINITY;
        for (double set = -8; set <= 8; set += 0.001) {
            double worst = 0;
            for (double at : error.stackedMm()) {
                worst = Math.max(worst, Math.abs(at - set));
            }
            best = Math.min(best, worst);
        }
        assertEquals(best, error.worstSetBestMm(), 0.0005 + 1e-9);
    }

    @Test
    void whatCannotBeIsRefused() {
        var two =
                assertThrows(IllegalArgumentException.class, () -> IndexError.of(List.of(4.0, 4.0), List.of(2.5), 1.6));
        assertTrue(two.getMessage().contains("as many pulls"), two.getMessage());
        assertThrows(IllegalArgumentException.class, () -> IndexError.of(List.of(4.0), List.of(2.5), 0));
        assertThrows(IllegalArgumentException.class, () -> IndexError.of(List.of(4.0), List.of(Double.NaN), 1));
        assertThrows(IllegalArgumentException.class, () -> IndexError.of(List.of(0.0), List.of(2.5), 1));
        assertThrows(IllegalArgumentException.class, () -> new IndexError(List.of()));
    }

    /** Exact sines. */
    @ParameterizedTest
    @CsvSource({"0, 0", "30, 50", "45, 70.71067811865476", "90, 100"})
    void impactCouplingIsTheSineOfTheSlope(double slopeDeg, double pct) {
        assertEquals(pct, ImpactCoupling.pct(slopeDeg), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> ImpactCoupling.pct(slopeDeg - 91));
    }
}
