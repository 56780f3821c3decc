package groupwright.drivetrain.riding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.drivetrain.Seeds;
import groupwright.drivetrain.gearing.Gear;
import groupwright.drivetrain.gearing.Wheel;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class ClimbingTest {
    private static final Air AIR = Air.still(1.2);
    private static final Wheel WHEEL = Wheel.ofMarking(622, 57);

    @ParameterizedTest(name = "{0} kg, {4} W, {5}: {6}, {7}, {8} rpm")
    @CsvSource(textBlock = """
            # Invented riders and gears; cadences of an independent script, rounded to 0.1
            94.5, .022, .45, .96, 190, .12, 57.1, 50.7, 53.0
            83.5, .016, .38, .96, 270, .15, 78.7, 69.9, 73.1
            107, .020, .50, .96, 150, .08, 56.2, 50.0, 52.2
            """)
    void cadenceInTheLowestGear(
            double mass,
            double rolling,
            double area,
            double efficiency,
            double watts,
            double grade,
            double in24x38,
            double in32x45,
            double in34x50) {
        var system = RidingSystem.plain(mass, rolling, area, efficiency);
        assertEquals(
                in24x38,
                Climbing.climb(system, AIR, grade, watts, Gear.of(24, 38), WHEEL)
                        .cadenceRpm(),
                0.05);
        assertEquals(
                in32x45,
                Climbing.climb(system, AIR, grade, watts, Gear.of(32, 45), WHEEL)
                        .cadenceRpm(),
                0.05);
        assertEquals(
                in34x50,
                Climbing.climb(system, AIR, grade, watts, Gear.of(34, 50), WHEEL)
                        .cadenceRpm(),
                0.05);
    }

    @ParameterizedTest(name = "{0} x {1}: {2} km/h")
    @CsvSource(textBlock = """
            # Invented gears at 95 rpm, independent script, rounded to 0.1
            36, 11, 43.1
            32, 10, 42.2
            34, 10, 44.8
            """)
    void spinOutSpeed(int ring, int cog, double kmh) {
        assertEquals(kmh, Climbing.spinOutSpeedKmh(Gear.of(ring, cog), WHEEL, 95), 0.05);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void onTheSteepestGradeTheCadenceIsHeld(long seed) {
        var random = new Random(seed);
        var system = PowerBalanceTest.system(random);
        var air = new Air(1.2, Seeds.between(random, -3, 6));
        Gear gear = Gear.of(22 + random.nextInt(30), 10 + random.nextInt(40));
        double cadence = Seeds.between(random, 50, 100);
        double power = Seeds.between(random, 100, 400);
        double pct = Climbing.steepestGradePct(system, air, power, gear, WHEEL, cadence)
                .orElseThrow();
        Climb there = Climbing.climb(system, air, pct / 100, power, gear, WHEEL);
        assertEquals(cadence, there.cadenceRpm(), 1e-6);
        Climb steeper = Climbing.climb(system, air, pct / 100 + 0.001, power, gear, WHEEL);
        assertTrue(steeper.cadenceRpm() < cadence);
    }

    @Test
    void whereNoSlopeIsSteepEnoughThereIsNone() {
        var system = RidingSystem.plain(80, 0.01, 0.4, 1);
        Gear gear = Gear.of(32, 45);
        // at 1 rpm 300 W lift far more than 80 kg; at 500 rpm in a high gear the air alone is too much for free fall
        assertEquals(OptionalDouble.empty(), Climbing.steepestGradePct(system, AIR, 300, gear, WHEEL, 1));
        assertEquals(OptionalDouble.empty(), Climbing.steepestGradePct(system, AIR, 0, Gear.of(50, 10), WHEEL, 500));
        assertTrue(Climbing.steepestGradePct(system, AIR, 0, gear, WHEEL, 60).orElseThrow() < -1);
        assertThrows(IllegalArgumentException.class, () -> Climbing.steepestGradePct(system, AIR, 300, gear, WHEEL, 0));
    }

    @Test
    void heldSpeedIsTheCubeRootWhereOnlyTheAirResists() {
        assertEquals(36, Climbing.heldSpeedKmh(RidingSystem.plain(80, 0, 0.5, 1), Air.still(1), 250), 1e-9);
    }

    @Test
    void belowWalkingPaceOneWalks() {
        assertTrue(new Climb(4.49, 40).walks(Climb.WALKING_PACE_KMH));
        assertFalse(new Climb(4.5, 40).walks(Climb.WALKING_PACE_KMH));
    }
}
