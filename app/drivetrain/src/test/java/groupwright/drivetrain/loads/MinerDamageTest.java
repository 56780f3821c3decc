package groupwright.drivetrain.loads;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import groupwright.drivetrain.Seeds;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class MinerDamageTest {
    /** S-N line of Bhandari, Example 5.11: from 0.9 · 660 MPa at 1000 cycles to 280 MPa at a million. */
    private static final SnLine BHANDARI = SnLine.through(new LoadBlock(0.9 * 660, 1e3), new LoadBlock(280, 1e6));

    @Test
    void publishedLifeUnderThreeStresses() {
        // Bhandari, Design of Machine Elements, Example 5.11: 350, 400, 500 MPa for 85, 12, 3 % of the cycles
        LoadSpectrum shares =
                LoadSpectrum.of(new LoadBlock(350, 0.85), new LoadBlock(400, 0.12), new LoadBlock(500, 0.03));
        MinerDamage damage = MinerDamage.of(shares, BHANDARI.withEnduranceLimit(280));
        assertEquals(62731.118, damage.repeatsToFailure().orElseThrow(), 0.001);
    }

    @ParameterizedTest
    @CsvSource({"350, 128797", "400, 37780", "500, 4866", "594, 1000", "280, 1000000"})
    void livesOnThatLine(double stress, double cycles) {
        // the end points are the example's; the lives between were recomputed with another program, not published
        assertEquals(cycles, BHANDARI.lifeCycles(stress).orElseThrow(), 0.5);
        assertEquals(9.185, BHANDARI.slope(), 5e-4);
    }

    @Test
    void publishedSharesOfDamage() {
        // Documentation of the Python package reliability: lives 50000, 6500, 1000 h; 40, 15, 5 min of each cycle
        MinerDamage damage = MinerDamage.of(
                List.of(new Usage(40 / 60.0, 50_000), new Usage(15 / 60.0, 6_500), new Usage(5 / 60.0, 1_000)));
        assertEquals(7400.37951, damage.repeatsToFailure().orElseThrow(), 1e-4);
        assertEquals(9.86717, damage.sharesPct().get(0), 1e-4);
        assertEquals(28.463, damage.sharesPct().get(1), 1e-4);
        assertEquals(61.66983, damage.sharesPct().get(2), 1e-4);
    }

    @Test
    void belowTheEnduranceLimitNothingIsDamaged() {
        SnLine line = new SnLine(5, 100, 1e6, 80);
        assertEquals(OptionalDouble.empty(), line.lifeCycles(79.9));
        MinerDamage damage = MinerDamage.of(LoadSpectrum.of(new LoadBlock(79.9, 1e9)), line);
        assertEquals(OptionalDouble.empty(), damage.repeatsToFailure());
        assertEquals(List.of(0.0), damage.sharesPct());
        assertEquals(1e6 * Math.pow(100 / 80.0, 5), line.lifeCycles(80).orElseThrow(), 1e-3);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void damageAddsUpOverHistoriesAndRepeats(long seed) {
        var random = new Random(seed);
        LoadSpectrum one = Rainflow.spectrum(Histories.random(random));
        LoadSpectrum other = Rainflow.spectrum(Histories.random(random));
        SnLine line = new SnLine(Seeds.between(random, 1, 12), 5, 1e5);
        double sum =
                MinerDamage.of(one, line).sum() + MinerDamage.of(other, line).sum();
        assertEquals(sum, MinerDamage.of(one.plus(other), line).sum(), 1e-9 * sum);
        double thrice = 3 * MinerDamage.of(one, line).sum();
        assertEquals(thrice, MinerDamage.of(one.times(3), line).sum(), 1e-9 * thrice);
    }

    @Test
    void nonsenseIsRefused() {
        for (double bad : new double[] {-3, 0, 51, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThrows(IllegalArgumentException.class, () -> new SnLine(bad, 100, 1e6));
            assertThrows(IllegalArgumentException.class, () -> LoadSpectrum.of().powerSum(bad));
        }
        assertThrows(IllegalArgumentException.class, () -> new SnLine(5, 0, 1e6));
        assertThrows(IllegalArgumentException.class, () -> new SnLine(5, 100, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new SnLine(5, 100, 1e6, -1));
        assertThrows(
                IllegalArgumentException.class, () -> SnLine.through(new LoadBlock(100, 10), new LoadBlock(50, 10)));
        assertThrows(
                IllegalArgumentException.class, () -> SnLine.through(new LoadBlock(100, 10), new LoadBlock(100, 20)));
        assertThrows(IllegalArgumentException.class, () -> BHANDARI.lifeCycles(-1));
        assertThrows(IllegalArgumentException.class, () -> new Usage(-1, 5));
        assertThrows(IllegalArgumentException.class, () -> new Usage(1, 0));
        assertThrows(IllegalArgumentException.class, () -> new MinerDamage(List.of(Double.NaN)));
    }
}
