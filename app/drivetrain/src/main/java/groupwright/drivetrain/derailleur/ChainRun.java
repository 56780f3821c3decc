package groupwright.drivetrain.derailleur;

import groupwright.drivetrain.quantity.Bounds;
import groupwright.drivetrain.quantity.Chainring;
import groupwright.drivetrain.quantity.Cog;

/**
 * One gear on a bike: the wheels the chain runs on besides the pulleys.
 *
 * @param ringCentreMm centre of the chainring
 * @param ringTeeth teeth of the ring, 5 to 120
 * @param cogTeeth teeth of the cog at 0, 0, 5 to 80; the pitch circles of ring and cog must not touch
 * @param sideTravelMm distance along the axle from the smallest cog to this one, 0 to the full travel
 * @param fullTravelMm distance along the axle from the smallest to the largest cog, 0 to 200
 */
public record ChainRun(Point ringCentreMm, int ringTeeth, int cogTeeth, double sideTravelMm, double fullTravelMm) {
    /** Throws {@link IllegalArgumentException} if a number lies outside its range. */
    public ChainRun {
        Chainring ring = new Chainring(ringTeeth); // these know how many teeth there can be
        Cog cog = new Cog(cogTeeth);
        Mechanism.checkTravel(sideTravelMm, fullTravelMm);
        double distance = ringCentreMm.distanceMm(Point.AXLE);
        double least = Mechanism.radiusMm(ring.teeth()) + Mechanism.radiusMm(cog.teeth());
        if (distance <= least) {
            throw new IllegalArgumentException(
                    "a ring of %d and a cog of %d teeth touch at a distance of %.1f mm, it must be above %.1f mm"
                            .formatted(ringTeeth, cogTeeth, distance, least));
        }
    }

    /**
     * Centre of the rings of a bike.
     *
     * <p>Formula: (sqrt(stay² - drop²), -drop), a right triangle.
     *
     * @param chainstayMm straight distance from the rear axle to the bottom bracket, 100 to 2000
     * @param dropMm how far the bottom bracket lies below the rear axle, negative if above; shorter than the chainstay
     * @return the point
     * @throws IllegalArgumentException if a length lies outside its range
     */
    public static Point bottomBracket(double chainstayMm, double dropMm) {
        Bounds.within("the chainstay", chainstayMm, 100, 2000, "mm");
        Bounds.within("the drop of the bottom bracket", dropMm, -chainstayMm, chainstayMm, "mm");
        return new Point(StrictMath.sqrt(chainstayMm * chainstayMm - dropMm * dropMm), -dropMm);
    }
}
