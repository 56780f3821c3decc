package groupwright.drivetrain.gearing;

import groupwright.drivetrain.quantity.ChainPitch;
import java.util.IntSummaryStatistics;

/** How much chain a derailleur has to take up between the largest and the smallest gears. */
public final class Capacity {
    private Capacity() {}

    /** Total capacity in teeth: (largest - smallest ring) + (largest - smallest cog) (common practice, no source). */
    public static int totalTeeth(GearSet set) {
        return set.crankset().largest().teeth()
                - set.crankset().smallest().teeth()
                + set.cassette().largest().teeth()
                - set.cassette().smallest().teeth();
    }

    /**
     * Capacity in teeth that the gears in use need: most less least ring + cog teeth among them.
     *
     * <p>Never above {@link #totalTeeth}; equal to it if no gear is excluded. Cost: O(n log n) in the number of gears.
     */
    public static int usedTeeth(GearSet set) {
        IntSummaryStatistics teeth = set.gears().stream()
                .mapToInt(gear -> gear.ring().teeth() + gear.cog().teeth())
                .summaryStatistics();
        return teeth.getMax() - teeth.getMin();
    }

    /** Capacity left over in teeth: declared - needed; negative if the derailleur is too small. */
    public static int marginTeeth(int declaredTeeth, int neededTeeth) {
        return declaredTeeth - neededTeeth;
    }

    /**
     * Chain in mm that so many teeth of capacity mean: p / 2 for each tooth.
     *
     * <p>A chain wraps half of each of two wheels, so its length holds (ring + cog) / 2 pitches. Neglected: the term
     * that grows with the square of ring - cog, below one pitch up to 35 teeth apart at a centre distance of 430 mm.
     *
     * @param teeth capacity in teeth; negative where a margin is short
     * @return millimetres, of the same sign
     */
    public static double slackMm(int teeth) {
        return ChainPitch.BICYCLE_MM * teeth / 2;
    }
}
