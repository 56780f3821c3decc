package groupwright.drivetrain.gearing;

import groupwright.drivetrain.quantity.Bounds;
import java.util.Collections;
import java.util.List;

/** How far the guide pulley has to move along the axle. */
public final class SideTravel {
    private SideTravel() {}

    /**
     * Side travel for a cassette with one spacing.
     *
     * @param cassette the cogs
     * @param spacingMm distance from cog to cog in mm, above 0
     * @param extra what is needed beyond the outermost cogs
     * @return millimetres
     * @throws IllegalArgumentException if the spacing is not finite and above 0
     */
    public static double mm(Cassette cassette, double spacingMm, Extra extra) {
        return mm(Collections.nCopies(cassette.cogs().size() - 1, spacingMm), extra);
    }

    /**
     * Side travel for given spacings.
     *
     * <p>Formula: sum of the spacings + overshoot at both ends + hanger tolerance (common practice, no source).
     * Neglected: bending of hanger and linkage under cable pull. Cost: O(n) in the number of cogs.
     *
     * @param spacingsMm distances from each cog to the next in mm, each above 0
     * @param extra what is needed beyond the outermost cogs
     * @return millimetres
     * @throws IllegalArgumentException if a spacing is not finite and above 0
     */
    public static double mm(List<Double> spacingsMm, Extra extra) {
        double sum = 0;
        for (double spacing : spacingsMm) {
            sum += Bounds.positive("the spacing of two cogs", spacing, "mm");
        }
        return sum + extra.overshootSmallMm() + extra.overshootLargeMm() + extra.hangerToleranceMm();
    }

    /**
     * Travel needed beyond the outermost cogs.
     *
     * @param overshootSmallMm overshoot past the smallest cog in mm, 0 or more
     * @param overshootLargeMm overshoot past the largest cog in mm, 0 or more
     * @param hangerToleranceMm total width of the hanger's tolerance in mm, 0 or more
     */
    public record Extra(double overshootSmallMm, double overshootLargeMm, double hangerToleranceMm) {
        /** Nothing beyond the outermost cogs. */
        public static final Extra NONE = new Extra(0, 0, 0);

        /** Throws {@link IllegalArgumentException} if a length is negative or not finite. */
        public Extra {
            Bounds.notNegative("the overshoot past the smallest cog", overshootSmallMm, "mm");
            Bounds.notNegative("the overshoot past the largest cog", overshootLargeMm, "mm");
            Bounds.notNegative("the hanger tolerance", hangerToleranceMm, "mm");
        }
    }
}
