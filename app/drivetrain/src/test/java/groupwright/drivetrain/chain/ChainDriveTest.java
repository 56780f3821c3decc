package groupwright.drivetrain.chain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.drivetrain.Seeds;
import groupwright.drivetrain.quantity.Chainring;
import groupwright.drivetrain.quantity.Cog;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class ChainDriveTest {
    @ParameterizedTest(name = "{0} mm, {1}/{2} at {3} mm: {4}")
    @CsvSource(textBlock = """
            # Bhandari, Design of Machine Elements, Examples 14.3 and 14.4
            12.7, 21, 63, 500, 121.875097, 1e-6
            19.05, 17, 34, 762, 105.683011, 1e-6
            # Shigley, Mechanical Engineering Design, Example 17-5 (result from memory, recomputed)
            12.7, 17, 34, 317.5, 75.79, 0.005
            # A computer-aided chain drive paper, C = 36 pitches inferred, recomputed
            12.7, 20, 63, 457.2, 114.8, 0.05
            """)
    void publishedLengths(double pitch, int z1, int z2, double centreMm, double pitches, double tolerance) {
        var drive = new ChainDrive(pitch, z1, z2);
        assertEquals(pitches, drive.approximateLengthPitches(centreMm), tolerance);
        assertEquals(pitches, new ChainDrive(pitch, z2, z1).approximateLengthPitches(centreMm), tolerance);
    }

    @ParameterizedTest(name = "{0} mm, {1}/{2}, {3} links: {4} mm")
    @CsvSource(textBlock = """
            # Bhandari, Design of Machine Elements, Example 14.3
            12.7, 21, 63, 122, 500.804717, 1e-6
            # the same, Example 14.4, before its 0.2 % for sag: 763.496160 / 0.998
            19.05, 17, 34, 106, 765.026212, 2e-6
            # Shigley, Example 17-5: 25.10 pitches (from memory, recomputed)
            12.7, 17, 34, 76, 318.77, 0.07
            """)
    void publishedCentreDistances(double pitch, int z1, int z2, double links, double centreMm, double tolerance) {
        assertEquals(centreMm, new ChainDrive(pitch, z1, z2).centreDistanceMm(links), tolerance);
    }

    @ParameterizedTest(name = "{0} mm, {1}/{2}")
    @CsvSource(textBlock = """
            # Regression values, not published
            410, 11, 34, 87.4824, 87.4820
            410, 11, 50, 96.2640, 96.2603
            420, 28, 50, 105.5128, 105.5124
            430, 16, 44, 98.3039, 98.3031
            435, 10, 32, 89.8622, 89.8619
            """)
    void bicycleRegression(double centreMm, int cog, int ring, double exact, double approximate) {
        var drive = ChainDrive.of(new Chainring(ring), new Cog(cog));
        assertEquals(exact, drive.exactLengthPitches(centreMm), 1e-4);
        assertEquals(approximate, drive.approximateLengthPitches(centreMm), 1e-4);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void theSeriesStaysJustBelowTheExactLength(long seed) {
        var random = new Random(seed);
        var drive = new ChainDrive(12.7, 9 + random.nextInt(42), 20 + random.nextInt(31));
        double centreMm = Seeds.between(random, 400, 480);
        double exact = drive.exactLengthPitches(centreMm);
        double approximate = drive.approximateLengthPitches(centreMm);
        // 1e-6: the series takes the pitch circle's circumference for z pitches, the polygon is a little shorter
        assertTrue(approximate <= exact + 1e-6 && exact < approximate + 0.005, exact + " " + approximate);
        assertEquals(centreMm, drive.centreDistanceMm(approximate), 1e-6);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void equalSprocketsNeedTwoSpansAndOneTurn(long seed) {
        var random = new Random(seed);
        int teeth = 9 + random.nextInt(50);
        double centreMm = Seeds.between(random, 400, 600);
        double expected = 2 * centreMm / 12.7 + teeth;
        assertEquals(expected, new ChainDrive(12.7, teeth, teeth).exactLengthPitches(centreMm), 1e-9);
        assertEquals(expected, new ChainDrive(12.7, teeth, teeth).approximateLengthPitches(centreMm), 1e-9);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void onlyRatiosOfLengthsMatter(long seed) {
        var random = new Random(seed);
        int z1 = 9 + random.nextInt(40);
        int z2 = 9 + random.nextInt(40);
        double centreMm = Seeds.between(random, 400, 600);
        double scale = Seeds.between(random, 0.5, 2);
        double expected = new ChainDrive(12.7, z1, z2).exactLengthPitches(centreMm);
        assertEquals(expected, new ChainDrive(12.7 * scale, z1, z2).exactLengthPitches(centreMm * scale), 1e-9);
    }

    @Test
    void sprocketsMustNotTouchAndChainsMustReach() {
        var drive = new ChainDrive(12.7, 32, 50);
        for (double centreMm : new double[] {0, -1, Double.NaN, 165}) {
            assertThrows(IllegalArgumentException.class, () -> drive.exactLengthPitches(centreMm));
            assertThrows(IllegalArgumentException.class, () -> drive.approximateLengthPitches(centreMm));
        }
        for (double links : new double[] {0, 10, 41, 60, Double.NaN}) {
            assertThrows(IllegalArgumentException.class, () -> drive.centreDistanceMm(links));
        }
        var error = assertThrows(IllegalArgumentException.class, () -> drive.centreDistanceMm(60));
        assertEquals(
                "a chain of 60.0 pitches is too short to go round sprockets of 32 and 50 teeth", error.getMessage());
        assertThrows(IllegalArgumentException.class, () -> new ChainDrive(12.7, 2, 50));
    }
}
