package groupwright.drivetrain.gearing;

import groupwright.drivetrain.quantity.Bounds;
import java.util.HashSet;
import java.util.Set;

/**
 * Where rings and cogs stand beside each other, measured outwards from the middle plane of the frame. Larger rings and
 * smaller cogs stand further out.
 *
 * @param frontMm middle of the rings in mm, 20 to 100
 * @param ringSpacingMm from ring to ring in mm, 0 or more; without meaning for one ring
 * @param cassetteMm middle of the cassette in mm, 10 to 100
 * @param cogSpacingMm from cog to cog in mm, 0 or more
 * @param spanMm free length of chain between ring and cog in mm, above 0; close to the chainstay
 */
public record ChainLine(double frontMm, double ringSpacingMm, double cassetteMm, double cogSpacingMm, double spanMm) {

    /** Throws {@link IllegalArgumentException} if a number lies outside its range. */
    public ChainLine {
        Bounds.within("the front chain line", frontMm, 20, 100, "mm");
        Bounds.notNegative("the spacing of the rings", ringSpacingMm, "mm");
        Bounds.within("the middle of the cassette", cassetteMm, 10, 100, "mm");
        Bounds.notNegative("the spacing of the cogs", cogSpacingMm, "mm");
        Bounds.positive("the free span of the chain", spanMm, "mm");
    }

    /**
     * How far a gear bends the chain sideways.
     *
     * <p>Formula: atan(|line of the ring - line of the cog| / span) (common practice, no source). Neglected: that the
     * span changes by some millimetres with ring and cog, and sideways play of the chain.
     *
     * @param set the gears; excluded ones have an angle too
     * @param gear a gear of its rings and cogs
     * @return degrees, 0 or more
     * @throws IllegalArgumentException if the gear is not on this crankset and cassette
     */
    public double angleDeg(GearSet set, Gear gear) {
        int ring = set.crankset().rings().indexOf(gear.ring());
        int cog = set.cassette().cogs().indexOf(gear.cog());
        if (ring < 0 || cog < 0) {
            throw new IllegalArgumentException("gear %d x %d is not on this crankset and cassette"
                    .formatted(gear.ring().teeth(), gear.cog().teeth()));
        }
        double ringMm = frontMm + (ring - middle(set.crankset().rings().size())) * ringSpacingMm;
        double cogMm = cassetteMm + (middle(set.cassette().cogs().size()) - cog) * cogSpacingMm;
        return StrictMath.toDegrees(StrictMath.atan(StrictMath.abs(ringMm - cogMm) / spanMm));
    }

    /**
     * The same gears without those that bend the chain too far. Cost: O(n log n) in the number of gears.
     *
     * @param set the gears
     * @param mostDeg largest angle in degrees to be used
     * @return the gears left in use
     * @throws IllegalArgumentException if none is left
     */
    public GearSet within(GearSet set, double mostDeg) {
        Set<Gear> excluded = new HashSet<>(set.excluded());
        for (Gear gear : set.gears()) {
            if (angleDeg(set, gear) > mostDeg) {
                excluded.add(gear);
            }
        }
        return new GearSet(set.crankset(), set.cassette(), excluded);
    }

    private static double middle(int count) {
        return (count - 1) / 2.0;
    }
}
