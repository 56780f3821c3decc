package groupwright.drivetrain.gearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.drivetrain.Seeds;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class GearTest {
    private static final double MM_PER_INCH = 25.4;

    private static Wheel ofDiameterMm(double diameterMm) {
        return new Wheel(Math.PI * diameterMm / 1000);
    }

    @Test
    void developmentIsDistanceInOneTurn() {
        // Footnote to 16 CFR 1512.5: 6.67 m (21.9 ft); that this is 24 km/h at 60 rpm is recomputed
        Wheel wheel = new Wheel(2.2233);
        assertEquals(6.67, Gear.of(90, 30).developmentM(wheel), 0.005);
        assertEquals(24, Gear.of(90, 30).speedKmh(wheel, 60), 0.02);
        assertEquals(60, Gear.of(90, 30).cadenceRpm(wheel, 24), 0.05);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            # Textbook definition front / rear x wheel diameter in inches
            50, 25, 28, 56
            50, 25, 27, 54
            """)
    void gearInches(int ring, int cog, double diameterIn, double expected) {
        assertEquals(expected, Gear.of(ring, cog).gearInches(ofDiameterMm(diameterIn * MM_PER_INCH)), 1e-9);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            # General tables: gear inches, development in m, rounded to 0.1
            20, 1.6
            70, 5.6
            125, 10
            """)
    void gearInchesMeanDevelopment(double inches, double developmentM) {
        Gear threeToOne = Gear.of(36, 12);
        Wheel wheel = ofDiameterMm(inches * MM_PER_INCH / 3);
        assertEquals(inches, threeToOne.gearInches(wheel), 1e-9);
        assertEquals(developmentM, threeToOne.developmentM(wheel), 0.05);
    }

    @Test
    void milesPerHourAreGearInchesTimesCadenceOver336() {
        // General rule of thumb, 336 rounded from 63360 / (60 pi) = 336.135
        Wheel wheel = ofDiameterMm(27 * MM_PER_INCH);
        double mph = Gear.of(50, 25).speedKmh(wheel, 90) / 1.609344;
        assertEquals(336, Gear.of(50, 25).gearInches(wheel) * 90 / mph, 0.2);
    }

    @Test
    void gainRatio() {
        // Textbook example: radius 340 mm, crank 170 mm, 53/13: 8.2
        assertEquals(8.2, Gear.of(53, 13).gainRatio(ofDiameterMm(680), 170), 0.05);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            # Regression values, not published: wheel 32-622, crank 172.5 mm, 90 rpm
            50, 11, 9.7961, 122.763, 9.0382, 52.899
            34, 34, 2.1551, 27.008, 1.9884, 11.638
            """)
    void mixedRegression(int ring, int cog, double development, double inches, double gain, double kmh) {
        Gear gear = Gear.of(ring, cog);
        Wheel wheel = Wheel.ofMarking(622, 32);
        assertEquals(development, gear.developmentM(wheel), 1e-4);
        assertEquals(inches, gear.gearInches(wheel), 1e-3);
        assertEquals(gain, gear.gainRatio(wheel, 172.5), 1e-4);
        assertEquals(kmh, gear.speedKmh(wheel, 90), 1e-3);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void developmentScalesWithTheWheel(long seed) {
        var random = new Random(seed);
        Wheel wheel = Seeds.wheel(random);
        Gear gear = Gear.of(20 + random.nextInt(40), 9 + random.nextInt(50));
        double scale = Seeds.between(random, 0.7, 1.5);
        Wheel scaled = new Wheel(wheel.circumferenceM() * scale);
        assertEquals(scale * gear.developmentM(wheel), gear.developmentM(scaled), 1e-12);
        assertEquals(scale * gear.gainRatio(wheel, 170), gear.gainRatio(scaled, 170), 1e-12);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void aShiftKeepsTheSpeed(long seed) {
        var random = new Random(seed);
        Wheel wheel = Seeds.wheel(random);
        Gear from = Gear.of(20 + random.nextInt(40), 9 + random.nextInt(50));
        Gear to = Gear.of(20 + random.nextInt(40), 9 + random.nextInt(50));
        double cadence = Seeds.between(random, 20, 130);
        double speed = from.speedKmh(wheel, cadence);
        assertEquals(cadence, from.cadenceRpm(wheel, speed), 1e-9);
        assertEquals(speed, to.speedKmh(wheel, from.cadenceAfterShiftRpm(to, cadence)), 1e-9);
    }

    @Test
    void ratiosAreComparedExactly() {
        // 24/12 and 36/18 are equal, 33/11 too; a double could not be trusted to say so
        List<Gear> sorted = Stream.of(Gear.of(33, 11), Gear.of(36, 18), Gear.of(24, 12), Gear.of(24, 8))
                .sorted()
                .toList();
        assertEquals(List.of(Gear.of(24, 12), Gear.of(36, 18), Gear.of(24, 8), Gear.of(33, 11)), sorted);
        assertEquals(0, Gear.of(24, 12).stepToPct(Gear.of(36, 18)));
    }

    @Test
    void standingStillIsNoCadence() {
        Wheel wheel = Wheel.ofMarking(622, 32);
        assertEquals(0, Gear.of(32, 16).cadenceRpm(wheel, 0));
        assertEquals(0, Gear.of(32, 16).speedKmh(wheel, 0));
        assertThrows(IllegalArgumentException.class, () -> Gear.of(32, 16).speedKmh(wheel, -1));
        assertThrows(IllegalArgumentException.class, () -> Gear.of(32, 16).cadenceRpm(wheel, Double.NaN));
        var error = assertThrows(
                IllegalArgumentException.class, () -> Gear.of(32, 16).gainRatio(wheel, 0));
        assertTrue(error.getMessage().startsWith("the crank length must lie between"), error.getMessage());
    }
}
