package groupwright.drivetrain.derailleur;

import groupwright.drivetrain.quantity.Bounds;

/**
 * What a frame offers to bolt a derailleur to.
 *
 * @param boltMm centre of the bolt, at most 2000 mm from the rear axle
 * @param angleDeg angle of the hanger's stop face in degrees, -180 to 180, counted like all angles here: 0 forward, 90
 *     up; only differences between hangers count, so any face will do as long as it is the same on all of them
 */
public record Hanger(Point boltMm, double angleDeg) {
    /** Throws {@link IllegalArgumentException} if bolt or angle lie outside their range. */
    public Hanger {
        Bounds.within(
                "the distance of the hanger's bolt from the rear axle", boltMm.distanceMm(Point.AXLE), 0, 2000, "mm");
        Bounds.within("the angle of the hanger", angleDeg, -180, 180, "°");
    }
}
