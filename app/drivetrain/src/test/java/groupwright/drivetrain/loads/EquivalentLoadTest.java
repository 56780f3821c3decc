package groupwright.drivetrain.loads;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.drivetrain.Seeds;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Equivalent loads, and bench cycles equal to a distance. */
class EquivalentLoadTest {
    private static final LoadSpectrum STANDARD = Rainflow.spectrum(Histories.STANDARD);

    /** A spectrum that has cycles, of loads between about 1 and 30. */
    private static LoadSpectrum spectrum(Random random) {
        return LoadSpectrum.of(random.doubles(1 + random.nextInt(20), 1, 30)
                .mapToObj(load -> new LoadBlock(load, Seeds.between(random, 0.5, 1000)))
                .toList());
    }

    @ParameterizedTest
    @CsvSource({"3, 1094, 6.49111", "5, 67838, 7.01266"})
    void ofTheStandardsHistory(double slope, double powerSum, double equivalent) {
        // counts: ASTM E1049-85, Figure 6; sums by hand: 0.5·27 + 1.5·64 + 0.5·216 + 512 + 0.5·729 = 1094
        assertEquals(powerSum, STANDARD.powerSum(slope), 1e-9 * powerSum);
        assertEquals(equivalent, EquivalentLoad.of(STANDARD, slope).orElseThrow(), 1e-5);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void theEquivalentLoadDoesTheSameDamage(long seed) {
        var random = new Random(seed);
        LoadSpectrum spectrum = spectrum(random);
        double slope = Seeds.between(random, 1, 15);
        double cycles = Seeds.between(random, 1, 1e6);
        SnLine line = new SnLine(slope, 20, 1e5);
        double load = EquivalentLoad.over(spectrum, slope, cycles);
        double damage = MinerDamage.of(spectrum, line).sum();
        assertEquals(
                damage,
                MinerDamage.of(LoadSpectrum.of(new LoadBlock(load, cycles)), line)
                        .sum(),
                1e-9 * damage);
        double mild = EquivalentLoad.of(spectrum, slope).orElseThrow();
        double harsh = EquivalentLoad.of(spectrum, slope + 1).orElseThrow();
        assertTrue(mild <= harsh * (1 + 1e-12), "a steeper line weighs large loads more: " + mild + ", " + harsh);
        assertTrue(harsh <= spectrum.largestLoad() * (1 + 1e-12));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void benchCyclesDoTheDamageOfTheDistance(long seed) {
        var random = new Random(seed);
        RiddenSpectrum ridden = new RiddenSpectrum(spectrum(random), Seeds.between(random, 10, 500));
        double slope = Seeds.between(random, 1, 12);
        double bench = Seeds.between(random, 5, 60);
        double km = Seeds.between(random, 1, 20_000);
        double cycles = ridden.benchCycles(km, bench, slope);
        SnLine line = new SnLine(slope, 20, 1e5);
        double onTheRoad =
                MinerDamage.of(ridden.spectrum().times(km / ridden.km()), line).sum();
        double onTheBench = MinerDamage.of(LoadSpectrum.of(new LoadBlock(bench, cycles)), line)
                .sum();
        assertEquals(onTheRoad, onTheBench, 1e-9 * onTheRoad);
        assertEquals(km, ridden.distanceKm(cycles, bench, slope), 1e-9 * km);
        assertEquals(
                cycles / Math.pow(2, slope), ridden.benchCycles(km, 2 * bench, slope), 1e-9 * cycles); // as documented
    }

    @Test
    void oneSizeOfLoadIsItsOwnEquivalent() {
        LoadSpectrum one = LoadSpectrum.of(new LoadBlock(40, 250));
        assertEquals(40, EquivalentLoad.of(one, 7).orElseThrow(), 1e-12);
        assertEquals(2500, new RiddenSpectrum(one, 10).benchCycles(100, 40, 7), 1e-9);
    }

    @Test
    void aSpectrumWithoutLoadHasNoEquivalentAndNoDistance() {
        LoadSpectrum none = Rainflow.spectrum(3, 3);
        assertEquals(OptionalDouble.empty(), EquivalentLoad.of(none, 5));
        assertEquals(0, EquivalentLoad.over(none, 5, 100));
        RiddenSpectrum ridden = new RiddenSpectrum(none, 5);
        assertEquals(0, ridden.benchCycles(1000, 40, 5));
        assertThrows(IllegalArgumentException.class, () -> ridden.distanceKm(1000, 40, 5));
    }

    @Test
    void nonsenseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> EquivalentLoad.of(STANDARD, -5));
        assertThrows(IllegalArgumentException.class, () -> EquivalentLoad.of(LoadSpectrum.of(), Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> EquivalentLoad.over(STANDARD, 5, 0));
        assertThrows(IllegalArgumentException.class, () -> new RiddenSpectrum(STANDARD, 0));
        RiddenSpectrum ridden = new RiddenSpectrum(STANDARD, 1);
        assertThrows(IllegalArgumentException.class, () -> ridden.benchCycles(-1, 40, 5));
        assertThrows(IllegalArgumentException.class, () -> ridden.benchCycles(1, 0, 5));
        assertThrows(IllegalArgumentException.class, () -> ridden.benchCycles(1, 40, -5));
        assertThrows(IllegalArgumentException.class, () -> ridden.distanceKm(Double.NaN, 40, 5));
        assertThrows(IllegalArgumentException.class, () -> new LoadBlock(Double.NaN, 1));
        assertThrows(IllegalArgumentException.class, () -> new LoadBlock(1, 0));
        assertThrows(
                IllegalArgumentException.class,
                () -> new LoadSpectrum(List.of(new LoadBlock(2, 1), new LoadBlock(2, 1))));
        var tooLarge = assertThrows(
                IllegalArgumentException.class,
                () -> LoadSpectrum.of(new LoadBlock(1e200, 1)).powerSum(2));
        assertTrue(tooLarge.getMessage().contains("the sum of cycles"), tooLarge.getMessage());
    }
}
