package groupwright.drivetrain.gearing;

import groupwright.drivetrain.quantity.Bounds;
import groupwright.drivetrain.quantity.ChainPitch;
import groupwright.drivetrain.quantity.Chainring;
import java.util.List;
import java.util.Optional;

/**
 * Where round a pair of cogs the chain can change over, as number theory has it. Cost of each: O(log teeth) a pair.
 *
 * <p>Two rigid coaxial cogs stand to each other in the same way gcd(z1, z2) times per turn. Neglected: chain flex,
 * ramps and pins, and sideways motion, which decide how well a position works.
 */
public final class ShiftPositions {
    private static final double SECONDS_PER_MINUTE = 60;

    private ShiftPositions() {}

    /** Like positions: how often per turn the two cogs stand to each other in the same way, gcd(z1, z2); 1 or more. */
    public static int likePositions(Step step) {
        return gcd(step.smaller().teeth(), step.larger().teeth());
    }

    /**
     * Longest wait for the next like position, with the chain still on the smaller cog.
     *
     * <p>Formula: 60 · z1 / (cadence · ring · g). The cassette turns cadence · ring / z1 times a minute; one turn has g
     * = {@link #likePositions} evenly spaced positions, so a rider who just missed one waits 1/g turn.
     *
     * @param step the two cogs
     * @param ring the ring in use
     * @param cadenceRpm cadence in rpm, above 0
     * @return seconds
     * @throws IllegalArgumentException if the cadence is not finite and above 0
     */
    public static double longestWaitS(Step step, Chainring ring, double cadenceRpm) {
        Bounds.positive("the cadence", cadenceRpm, "rpm");
        return SECONDS_PER_MINUTE * step.smaller().teeth() / (cadenceRpm * ring.teeth() * likePositions(step));
    }

    /**
     * Phase mismatch: over the shift positions round a pair of cogs, the largest distance from ideal meshing, with the
     * cogs clocked to each other in the best way.
     *
     * <p>Formula: p · (d - g) / (2 · z1) with pitch p, d = z2 - z1, g = gcd(z1, d). Derivation: going round, the larger
     * cog gains d pitches on the smaller one, so there are d angles, 1/d turn apart, where the two mesh ideally. A
     * position must sit on a tooth of the smaller cog. Counted in those teeth the ideal angles are k · z1/d + c, k = 0
     * … d - 1, where the clocking sets c; modulo 1 they are d/g points, g/d apart. The best c lays them evenly about a
     * tooth and leaves (1 - g/d) / 2 teeth for the worst one. Each tooth off costs d/z1 pitches between the two cogs.
     *
     * <p>0 when d divides both counts. Own derivation; the condition that the distance between the two roller centres
     * be a whole number of pitches is in the published text of US 9 528 588 B2.
     *
     * @param step the two cogs
     * @return millimetres, 0 or more
     */
    public static double phaseMismatchMm(Step step) {
        int z1 = step.smaller().teeth();
        int d = step.teeth();
        return ChainPitch.BICYCLE_MM * (d - gcd(z1, d)) / (2 * z1);
    }

    /** The step with the largest phase mismatch, the first of equal ones; empty if there is no step. */
    public static Optional<Step> worstPhaseMismatch(List<Step> steps) {
        return steps.stream().reduce((a, b) -> phaseMismatchMm(b) > phaseMismatchMm(a) ? b : a);
    }

    private static int gcd(int a, int b) {
        return b == 0 ? a : gcd(b, a % b);
    }
}
