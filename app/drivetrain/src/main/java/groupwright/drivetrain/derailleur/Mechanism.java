package groupwright.drivetrain.derailleur;

import groupwright.drivetrain.chain.PitchCircle;
import groupwright.drivetrain.quantity.Bounds;
import groupwright.drivetrain.quantity.ChainPitch;

/**
 * A rear derailleur as the chain sees it: a cage with two pulleys on a pivot that moves with the shift.
 *
 * <p>All angles in degrees, 0 forward, 90 up, -90 down. The body carries pivot, path and stops; the cage turns on the
 * pivot between the stops. With {@linkplain UpperPivot.Turning a turning upper pivot} the whole body turns about the
 * hanger's bolt, so pivot, path and both stops turn with it (a parallelogram keeps the housing of the cage pivot, which
 * has the stops, parallel to the upper housing); the guide angle does not, as it is an angle within the cage.
 *
 * @param hanger the hanger on which it was measured
 * @param pivotMm pivot of the cage at the smallest cog, at most 4000 mm from the rear axle
 * @param pathDirectionDeg direction in the plane of the chain in which the pivot moves towards larger cogs
 * @param pathSlopeDeg slope of the path against the axle, 0 to 80: tan(slope) mm in the plane for each mm of side
 *     travel; 0 moves along the axle only
 * @param guideOffsetMm distance from the pivot to the centre of the guide pulley, 0 to 200
 * @param guideAngleDeg direction from the pivot to the guide pulley, counted from the cage's angle, -360 to 360
 * @param pulleyDistanceMm distance between the centres of the pulleys; the cage's angle is the direction from guide to
 *     tension pulley; up to 300, their pitch circles must not overlap
 * @param guideTeeth teeth of the guide pulley, 6 to 40
 * @param tensionTeeth teeth of the tension pulley, 6 to 40
 * @param stopForwardDeg angle of the cage at its forward stop, the larger one
 * @param stopRearwardDeg angle of the cage at its rearward stop, at most a turn less
 * @param upperPivot fixed or turning
 */
public record Mechanism(
        Hanger hanger,
        Point pivotMm,
        double pathDirectionDeg,
        double pathSlopeDeg,
        double guideOffsetMm,
        double guideAngleDeg,
        double pulleyDistanceMm,
        int guideTeeth,
        int tensionTeeth,
        double stopForwardDeg,
        double stopRearwardDeg,
        UpperPivot upperPivot) {
    private static final double TURN_DEG = 360;
    private static final double ROUNDING_MM = 1e-6; // side travels are sums of spacings, added in any order

    /** Throws {@link IllegalArgumentException} if a number lies outside its range. */
    public Mechanism {
        Bounds.within(
                "the distance of the cage pivot from the rear axle", pivotMm.distanceMm(Point.AXLE), 0, 4000, "mm");
        Bounds.within("the direction of the pivot's path", pathDirectionDeg, -2 * TURN_DEG, 2 * TURN_DEG, "°");
        Bounds.within("the slope of the pivot's path", pathSlopeDeg, 0, 80, "°");
        Bounds.within("the offset of the guide pulley", guideOffsetMm, 0, 200, "mm");
        Bounds.within("the angle of the guide pulley", guideAngleDeg, -TURN_DEG, TURN_DEG, "°");
        Bounds.count("the number of teeth of the guide pulley", guideTeeth, 6, 40);
        Bounds.count("the number of teeth of the tension pulley", tensionTeeth, 6, 40);
        Bounds.within("the distance between the pulleys", pulleyDistanceMm, 0, 300, "mm");
        double least = radiusMm(guideTeeth) + radiusMm(tensionTeeth);
        if (pulleyDistanceMm <= least) {
            throw new IllegalArgumentException(
                    "pulleys of %d and %d teeth overlap at a distance of %s mm, it must be above %.1f mm"
                            .formatted(guideTeeth, tensionTeeth, pulleyDistanceMm, least));
        }
        Bounds.within("the forward stop of the cage", stopForwardDeg, -2 * TURN_DEG, 2 * TURN_DEG, "°");
        Bounds.within("the rearward stop of the cage", stopRearwardDeg, -2 * TURN_DEG, 2 * TURN_DEG, "°");
        if (!(stopRearwardDeg < stopForwardDeg && stopForwardDeg - stopRearwardDeg <= TURN_DEG)) {
            throw new IllegalArgumentException(
                    "the rearward stop of the cage must lie below the forward stop of %s° by at most %s°, was %s°"
                            .formatted(stopForwardDeg, TURN_DEG, stopRearwardDeg));
        }
    }

    /**
     * The same mechanism on another hanger: a rigid motion about the bolt.
     *
     * <p>Formula: with d = other angle - own angle, pivot' = bolt' + R(d) (pivot - bolt); path direction and both stops
     * gain d. A derailleur is held by bolt and stop face alone, so nothing else moves.
     *
     * @param other the hanger of a bike
     * @return the mechanism there
     * @throws IllegalArgumentException if it would lie outside the ranges of this record
     */
    public Mechanism mountedOn(Hanger other) {
        double deg = other.angleDeg() - hanger.angleDeg();
        Point moved = pivotMm.turnedAbout(hanger.boltMm(), deg)
                .plus(
                        other.boltMm().xMm() - hanger.boltMm().xMm(),
                        other.boltMm().yMm() - hanger.boltMm().yMm());
        return new Mechanism(
                other,
                moved,
                pathDirectionDeg + deg,
                pathSlopeDeg,
                guideOffsetMm,
                guideAngleDeg,
                pulleyDistanceMm,
                guideTeeth,
                tensionTeeth,
                stopForwardDeg + deg,
                stopRearwardDeg + deg,
                upperPivot);
    }

    /**
     * Where the cage pivot stands in a gear.
     *
     * <p>Formula: pivot + side travel · tan(slope) along the path, then turned about the bolt by {@link #turnDeg}.
     *
     * @param sideTravelMm distance along the axle from the smallest cog, 0 to the full travel
     * @param fullTravelMm distance along the axle from the smallest to the largest cog, 0 to 200
     * @return the pivot
     * @throws IllegalArgumentException if a travel lies outside its range
     */
    public Point pivotAt(double sideTravelMm, double fullTravelMm) {
        double turn = turnDeg(sideTravelMm, fullTravelMm);
        double along = sideTravelMm * StrictMath.tan(StrictMath.toRadians(pathSlopeDeg));
        double direction = StrictMath.toRadians(pathDirectionDeg);
        Point onPath = pivotMm.plus(along * StrictMath.cos(direction), along * StrictMath.sin(direction));
        return turn == 0 ? onPath : onPath.turnedAbout(hanger.boltMm(), turn);
    }

    /**
     * How far the body, and the stops with it, has turned about the bolt since the smallest cog.
     *
     * <p>Formula: (rotation at the largest cog - rotation at the smallest) · side travel / full travel; 0 for a fixed
     * upper pivot and for a full travel of 0.
     *
     * @param sideTravelMm distance along the axle from the smallest cog, 0 to the full travel
     * @param fullTravelMm distance along the axle from the smallest to the largest cog, 0 to 200
     * @return degrees, counterclockwise seen from the drive side
     * @throws IllegalArgumentException if a travel lies outside its range
     */
    public double turnDeg(double sideTravelMm, double fullTravelMm) {
        checkTravel(sideTravelMm, fullTravelMm);
        if (upperPivot instanceof UpperPivot.Turning turning && fullTravelMm > 0) {
            return (turning.largestDeg() - turning.smallestDeg()) * sideTravelMm / fullTravelMm;
        }
        return 0;
    }

    static void checkTravel(double sideTravelMm, double fullTravelMm) {
        Bounds.within("the full side travel", fullTravelMm, 0, 200, "mm");
        Bounds.within("the side travel", sideTravelMm, 0, fullTravelMm + ROUNDING_MM, "mm");
    }

    static double radiusMm(int teeth) {
        return PitchCircle.diameterMm(ChainPitch.BICYCLE_MM, teeth) / 2;
    }
}
