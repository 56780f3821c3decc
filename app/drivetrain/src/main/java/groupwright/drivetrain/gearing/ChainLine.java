package groupwright.drivetrain.gearing;

import groupwright.drivetrain.chain.PitchCircle;
import groupwright.drivetrain.quantity.Bounds;
import groupwright.drivetrain.quantity.ChainPitch;
import groupwright.drivetrain.quantity.Chainring;
import groupwright.drivetrain.quantity.Cog;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Where rings and cogs stand beside each other, measured outwards from the middle plane of the frame. Larger rings and
 * smaller cogs stand further out.
 *
 * @param frontMm middle of the rings in mm, 20 to 100
 * @param ringSpacingMm from ring to ring in mm, 0 or more; without meaning for one ring
 * @param cassetteMm middle of the cassette, half way between its outermost cogs, in mm, 10 to 100
 * @param cogSpacingsMm from each cog to the next larger one in mm, each 0 or more; one fewer than cogs
 * @param chainstayMm distance from the rear axle to the bottom bracket in mm, above 0
 */
public record ChainLine(
        double frontMm, double ringSpacingMm, double cassetteMm, List<Double> cogSpacingsMm, double chainstayMm) {

    /** Throws {@link IllegalArgumentException} if a number lies outside its range. */
    public ChainLine {
        Bounds.within("the front chain line", frontMm, 20, 100, "mm");
        Bounds.notNegative("the spacing of the rings", ringSpacingMm, "mm");
        Bounds.within("the middle of the cassette", cassetteMm, 10, 100, "mm");
        cogSpacingsMm = List.copyOf(cogSpacingsMm);
        cogSpacingsMm.forEach(spacing -> Bounds.notNegative("the spacing of two cogs", spacing, "mm"));
        Bounds.positive("the chainstay", chainstayMm, "mm");
    }

    /**
     * A cassette with one spacing for all its cogs; the rest as in the record.
     *
     * @param cogSpacingMm from cog to cog in mm, 0 or more; without meaning for one cog
     * @param cogs number of cogs, 1 to 100
     * @throws IllegalArgumentException if a number lies outside its range
     */
    public static ChainLine even(
            double frontMm,
            double ringSpacingMm,
            double cassetteMm,
            double cogSpacingMm,
            int cogs,
            double chainstayMm) {
        Bounds.count("the number of cogs", cogs, 1, 100);
        List<Double> spacings = Collections.nCopies(cogs - 1, cogSpacingMm);
        return new ChainLine(frontMm, ringSpacingMm, cassetteMm, spacings, chainstayMm);
    }

    /**
     * How far a gear bends the chain sideways.
     *
     * <p>Formula: atan(|line of the ring - line of the cog| / free span), free span = sqrt(chainstay² - (R_ring -
     * R_cog)²), the upper tangent between the pitch circles (geometry; that the angle is what matters is common practice,
     * no source). Neglected: sideways play of the chain, and that it bends at single links. Cost: O(number of cogs).
     *
     * @param set the gears; excluded ones have an angle too
     * @param gear a gear of its rings and cogs
     * @return degrees, 0 or more
     * @throws IllegalArgumentException if the gear is not on this crankset and cassette, the cassette has another number
     *     of cogs, or ring and cog would touch
     */
    public double angleDeg(GearSet set, Gear gear) {
        if (!set.crankset().rings().contains(gear.ring())
                || !set.cassette().cogs().contains(gear.cog())) {
            throw new IllegalArgumentException("gear %d x %d is not on this crankset and cassette"
                    .formatted(gear.ring().teeth(), gear.cog().teeth()));
        }
        double aside = StrictMath.abs(ringMm(set.crankset(), gear.ring()) - cogMm(set.cassette(), gear.cog()));
        return StrictMath.toDegrees(StrictMath.atan(aside / spanMm(gear)));
    }

    /**
     * Where a ring stands, in mm from the middle plane of the frame: rings lie evenly about the front chain line.
     *
     * @throws IllegalArgumentException if the ring is not on this crankset
     */
    public double ringMm(Crankset crankset, Chainring ring) {
        double middle = (crankset.rings().size() - 1) / 2.0;
        return frontMm + (place(crankset.rings(), ring) - middle) * ringSpacingMm;
    }

    /**
     * Where a cog stands, in mm from the middle plane of the frame. Cost: O(number of cogs).
     *
     * @throws IllegalArgumentException if the cog is not on this cassette, or the cassette has another number of cogs
     */
    public double cogMm(Cassette cassette, Cog cog) {
        if (cassette.cogs().size() != cogSpacingsMm.size() + 1) {
            throw new IllegalArgumentException("%d spacings belong to %d cogs, the cassette has %d"
                    .formatted(
                            cogSpacingsMm.size(),
                            cogSpacingsMm.size() + 1,
                            cassette.cogs().size()));
        }
        return cassetteMm + sum(cogSpacingsMm) / 2 - sum(cogSpacingsMm.subList(0, place(cassette.cogs(), cog)));
    }

    private static int place(List<?> wheels, Object wheel) {
        int place = wheels.indexOf(wheel);
        if (place < 0) {
            throw new IllegalArgumentException(wheel + " is not among " + wheels);
        }
        return place;
    }

    private double spanMm(Gear gear) {
        double ringMm = radiusMm(gear.ring().teeth());
        double cogMm = radiusMm(gear.cog().teeth());
        if (chainstayMm <= ringMm + cogMm) {
            throw new IllegalArgumentException(
                    "a ring of %d and a cog of %d teeth touch on a chainstay of %s mm, it must be above %.1f mm"
                            .formatted(gear.ring().teeth(), gear.cog().teeth(), chainstayMm, ringMm + cogMm));
        }
        return StrictMath.sqrt(chainstayMm * chainstayMm - (ringMm - cogMm) * (ringMm - cogMm));
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

    private static double radiusMm(int teeth) {
        return PitchCircle.diameterMm(ChainPitch.BICYCLE_MM, teeth) / 2;
    }

    private static double sum(List<Double> spacings) {
        return spacings.stream().mapToDouble(Double::doubleValue).sum();
    }
}
