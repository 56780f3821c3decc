package groupwright.drivetrain.gearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.drivetrain.quantity.Chainring;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShiftPositionsTest {
    @ParameterizedTest(name = "{0} / {1}: {2}")
    @CsvSource(textBlock = """
            # Greatest common divisors, elementary; checked by laying both polygons on each other
            11, 12, 1
            11, 13, 1
            12, 14, 2
            14, 16, 2
            15, 18, 3
            18, 21, 3
            16, 20, 4
            21, 24, 3
            24, 28, 4
            28, 32, 4
            32, 36, 4
            36, 42, 6
            34, 50, 2
            36, 52, 4
            30, 46, 2
            36, 46, 2
            """)
    void likePositions(int smaller, int larger, int expected) {
        assertEquals(expected, ShiftPositions.likePositions(Step.of(smaller, larger)));
        assertEquals(expected, turnsThatMapTeethOnTeeth(smaller, larger));
    }

    /** Turns by whole teeth of one cog, within one revolution, that bring both tooth patterns onto themselves. */
    private static int turnsThatMapTeethOnTeeth(int z1, int z2) {
        int count = 0;
        for (int tooth = 0; tooth < z1; tooth++) {
            if (tooth * z2 % z1 == 0) {
                count++;
            }
        }
        return count;
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            # Invented ladder, 70 rpm, ring 32, independent script: the cassette does 106.7 and so many turns a minute
            21, 25, 0.5625
            21, 24, 0.1875
            """)
    void longestWait(int smaller, int larger, double seconds) {
        assertEquals(seconds, ShiftPositions.longestWaitS(Step.of(smaller, larger), new Chainring(32), 70), 1e-12);
    }

    @Test
    void twiceTheCadenceIsHalfTheWait() {
        Step step = Step.of(18, 21);
        double slow = ShiftPositions.longestWaitS(step, new Chainring(34), 45);
        assertEquals(slow / 2, ShiftPositions.longestWaitS(step, new Chainring(34), 90), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> ShiftPositions.longestWaitS(step, new Chainring(34), 0));
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            # Invented ladders, rounded values of an independent script
            21, 25, 0.91
            24, 28, 0
            21, 24, 0
            16, 18, 0
            """)
    void phaseMismatch(int smaller, int larger, double mm) {
        assertEquals(mm, ShiftPositions.phaseMismatchMm(Step.of(smaller, larger)), 0.005);
    }

    @Test
    void worstPhaseMismatchFromSixteenTeeth() {
        // Invented ladders, rounded values of an independent script
        assertWorst(0.79, Step.of(32, 38), 11, 12, 14, 16, 18, 21, 24, 28, 32, 38);
        assertWorst(0.91, Step.of(21, 25), 10, 12, 14, 16, 18, 21, 25, 30, 35, 40, 45);
        assertWorst(0.79, Step.of(32, 38), 10, 12, 14, 16, 18, 21, 24, 28, 32, 38, 44, 50);
        assertEquals(Optional.empty(), ShiftPositions.worstPhaseMismatch(List.of()));
    }

    private static void assertWorst(double mm, Step at, int... cogs) {
        Step worst = ShiftPositions.worstPhaseMismatch(Steps.of(Cassette.of(cogs), 16))
                .orElseThrow();
        assertEquals(at, worst);
        assertEquals(mm, ShiftPositions.phaseMismatchMm(worst), 0.005);
    }

    /**
     * The proof of the closed form: for all pairs of 9 to 60 teeth try every clocking and look at every position.
     *
     * <p>Whole numbers only. One tooth of the smaller cog is 4d units. Position k has its ideal angle at 4 · z1 · k + c
     * units, and the chain takes the nearest tooth; c runs over a whole tooth in steps of one unit. The best c is at a
     * multiple of 2 · gcd, where two distances to a tooth cross, so that the grid has it and points between.
     */
    @Test
    void noClockingIsBetterThanTheClosedFormAndOneReachesIt() {
        for (int z1 = 9; z1 <= 60; z1++) {
            for (int z2 = z1 + 1; z2 <= 60; z2++) {
                int d = z2 - z1;
                int best = Integer.MAX_VALUE;
                for (int clocking = 0; clocking < 4 * d; clocking++) {
                    best = Math.min(best, worstDistance(z1, d, clocking));
                }
                double teethOff = best / (4.0 * d);
                double pitchesOff = teethOff * d / z1; // the larger cog gains d pitches in z1 teeth
                assertEquals(12.7 * pitchesOff, ShiftPositions.phaseMismatchMm(Step.of(z1, z2)), 1e-12, z1 + "/" + z2);
            }
        }
    }

    private static int worstDistance(int z1, int d, int clocking) {
        int worst = 0;
        for (int k = 0; k < d; k++) {
            int pastTooth = (4 * z1 * k + clocking) % (4 * d);
            worst = Math.max(worst, Math.min(pastTooth, 4 * d - pastTooth));
        }
        return worst;
    }

    @Test
    void noMismatchWhenTheDifferenceDividesBothCounts() {
        for (int z1 = 9; z1 <= 60; z1++) {
            for (int z2 = z1 + 1; z2 <= 60; z2++) {
                int d = z2 - z1;
                double mm = ShiftPositions.phaseMismatchMm(Step.of(z1, z2));
                assertTrue(mm >= 0);
                assertEquals(z1 % d == 0 && z2 % d == 0, mm == 0, z1 + "/" + z2);
            }
        }
    }
}
