package groupwright.drivetrain.riding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.drivetrain.Seeds;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class PowerBalanceTest {
    private static final RidingSystem MARTIN =
            new RidingSystem(90, 0.0032, 0.2565, 0.0044, BearingDrag.MARTIN_1998, 0.97698);

    static RidingSystem system(Random random) {
        return new RidingSystem(
                Seeds.between(random, 50, 150),
                Seeds.between(random, 0.002, 0.03),
                Seeds.between(random, 0.2, 0.7),
                0.0044,
                BearingDrag.MARTIN_1998,
                Seeds.between(random, 0.9, 1));
    }

    @Test
    void sampleCalculationOfMartin1998() {
        // Martin et al., J. Applied Biomechanics 14(3), 1998, sample calculation: 213 W
        double speed = 471.8 / 56.42;
        var wind = new Wind(2.94, 310);
        var air = Air.in(1.2234, wind, 340);
        var change = new SpeedChange(8.28, 8.45, 56.42, 0.14, 0.311);
        PowerTerms terms = PowerBalance.terms(MARTIN, air, 0.003, speed).with(change, 90);
        assertEquals(213, terms.crankW(MARTIN), 0.5);
        // the terms: regression values, not published
        assertEquals(10.9084, speed + air.headwindMps(), 1e-4);
        assertEquals(7.675, wind.yawDeg(340, speed), 1e-3);
        assertEquals(158.80, terms.aerodynamicW(), 0.05);
        assertEquals(23.63, terms.rollingW(), 0.05);
        assertEquals(1.37, terms.bearingsW(), 0.05);
        assertEquals(22.15, terms.slopeW(), 0.05);
        assertEquals(2.30, terms.kineticW(), 0.05);
        assertEquals(208.25, terms.wheelW(), 0.05);
    }

    @ParameterizedTest(name = "{0} m/s: {1} W")
    @CsvSource(textBlock = """
            # Regression values, not published
            7, 96.34
            9, 171.07
            11, 281.16
            """)
    void steadyRegression(double speed, double watts) {
        assertEquals(watts, PowerBalance.crankPowerW(MARTIN, Air.still(1.2234), 0.003, speed), 0.01);
        assertEquals(speed, PowerBalance.speedMps(MARTIN, Air.still(1.2234), 0.003, watts), 0.001);
    }

    @Test
    void climbRegression() {
        // inputs of table 1 of DOI 10.1007/s12283-021-00345-2, numbers recomputed, not published
        var system = new RidingSystem(72, 0.0032, 0.473, 0.0044, BearingDrag.MARTIN_1998, 0.98);
        PowerTerms terms = PowerBalance.terms(system, Air.still(1.225), 0.075, 6);
        assertEquals(63.16, terms.aerodynamicW(), 0.01);
        assertEquals(13.52, terms.rollingW(), 0.01);
        assertEquals(0.86, terms.bearingsW(), 0.01);
        assertEquals(316.95, terms.slopeW(), 0.01);
        assertEquals(402.55, terms.crankW(system), 0.01);
    }

    @Test
    void onlyTheAirLeavesACubicLaw() {
        // P = ½ rho CdA v³: exact
        var system = RidingSystem.plain(80, 0, 0.5, 1);
        assertEquals(250, PowerBalance.crankPowerW(system, Air.still(1), 0, 10), 1e-9);
        assertEquals(10, PowerBalance.speedMps(system, Air.still(1), 0, 250), 1e-9);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void speedAndPowerUndoEachOther(long seed) {
        var random = new Random(seed);
        var system = system(random);
        var air = new Air(Seeds.between(random, 0.9, 1.3), Seeds.between(random, -12, 12));
        double grade = Seeds.between(random, -0.1, 0.25);
        double power = Seeds.between(random, 1, 1000);
        double speed = PowerBalance.speedMps(system, air, grade, power);
        assertEquals(power, PowerBalance.crankPowerW(system, air, grade, speed), 1e-9 * 1000);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void strongerIsFasterHeavierAndSteeperAreSlower(long seed) {
        var random = new Random(seed);
        var system = system(random);
        var heavier = new RidingSystem(
                system.massKg() + 5,
                system.rollingCoefficient(),
                system.dragAreaM2(),
                system.wheelDragAreaM2(),
                system.bearings(),
                system.efficiency());
        var air = new Air(1.2, Seeds.between(random, -5, 5));
        var windier = new Air(1.2, air.headwindMps() + 1);
        double grade = Seeds.between(random, 0, 0.2);
        double power = Seeds.between(random, 50, 500);
        double speed = PowerBalance.speedMps(system, air, grade, power);
        assertTrue(speed < PowerBalance.speedMps(system, air, grade, power + 10));
        assertTrue(speed > PowerBalance.speedMps(heavier, air, grade, power));
        assertTrue(speed > PowerBalance.speedMps(system, air, grade + 0.01, power));
        assertTrue(speed > PowerBalance.speedMps(system, windier, grade, power));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void coastingNeedsNoPower(long seed) {
        var random = new Random(seed);
        var system = system(random);
        double grade = Seeds.between(random, -0.3, -0.05);
        double speed = PowerBalance.speedMps(system, Air.still(1.2), grade, 0);
        assertTrue(speed > 1);
        PowerTerms terms = PowerBalance.terms(system, Air.still(1.2), grade, speed);
        assertEquals(0, terms.wheelW(), 1e-8 * -terms.slopeW());
        assertTrue(PowerBalance.terms(system, Air.still(1.2), grade, speed / 2).wheelW() < 0);
        assertEquals(0, PowerBalance.crankPowerW(system, Air.still(1.2), grade, speed / 2));
    }

    @Test
    void withoutPowerUphillOneStands() {
        assertEquals(0, PowerBalance.speedMps(MARTIN, Air.still(1.2), 0.05, 0));
        assertEquals(0, PowerBalance.crankPowerW(MARTIN, new Air(1.2, 8), 0.05, 0));
    }

    @Test
    void aTailwindFasterThanTheRiderPushes() {
        PowerTerms terms = PowerBalance.terms(MARTIN, new Air(1.2, -10), 0, 4);
        assertEquals(-PowerBalance.terms(MARTIN, new Air(1.2, 2), 0, 4).aerodynamicW(), terms.aerodynamicW(), 1e-9);
        assertTrue(terms.aerodynamicW() < 0);
    }

    @Test
    void withNothingToHoldItBackThereIsNoSpeed() {
        var frictionless = RidingSystem.plain(80, 0, 0, 1);
        var error = assertThrows(
                IllegalArgumentException.class, () -> PowerBalance.speedMps(frictionless, Air.still(1.2), 0, 100));
        assertEquals(
                "nothing holds the bicycle back below 1000 m/s, enter rolling resistance and drag area",
                error.getMessage());
        assertThrows(
                IllegalArgumentException.class, () -> PowerBalance.speedMps(frictionless, Air.still(1.2), -0.1, 0));
        assertEquals(0, PowerBalance.speedMps(frictionless, Air.still(1.2), 0, 0));
    }

    @Test
    void nonsenseIsRefused() {
        Air air = Air.still(1.2);
        assertThrows(IllegalArgumentException.class, () -> PowerBalance.speedMps(MARTIN, air, 0, -1));
        assertThrows(IllegalArgumentException.class, () -> PowerBalance.speedMps(MARTIN, air, 8, 200));
        assertThrows(IllegalArgumentException.class, () -> PowerBalance.speedMps(MARTIN, air, Double.NaN, 200));
        assertThrows(IllegalArgumentException.class, () -> PowerBalance.terms(MARTIN, air, 0, -1));
        assertThrows(IllegalArgumentException.class, () -> RidingSystem.plain(0, 0.01, 0.4, 1));
        assertThrows(IllegalArgumentException.class, () -> RidingSystem.plain(80, 0.01, 0.4, 1.01));
        assertThrows(IllegalArgumentException.class, () -> RidingSystem.plain(80, 0.01, 0.4, 0));
        assertThrows(IllegalArgumentException.class, () -> Air.still(-1));
        assertThrows(IllegalArgumentException.class, () -> new SpeedChange(8, 9, 0, 0.14, 0.311));
    }
}
