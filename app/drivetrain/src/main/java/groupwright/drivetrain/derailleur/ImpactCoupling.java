package groupwright.drivetrain.derailleur;

import groupwright.drivetrain.quantity.Bounds;

/** How far a vertical impact works on a derailleur's shift mechanism. */
public final class ImpactCoupling {
    private ImpactCoupling() {}

    /**
     * Share of a vertical impact that acts along the mechanism's path.
     *
     * <p>Formula: 100 · sin(slope); 0 for a path along the axle, 100 for one upright. Source: the component of a vertical
     * force along a line sloped that much against the axle (geometry; that it is a measure is common practice, no
     * source). Neglected: that the path may lean forward as well, which makes the share smaller.
     *
     * @param slopeDeg slope of the path against the axle in degrees, 0 to 90
     * @return %
     * @throws IllegalArgumentException if the slope lies outside its range
     */
    public static double pct(double slopeDeg) {
        return 100 * StrictMath.sin(StrictMath.toRadians(Bounds.within("the slope of the path", slopeDeg, 0, 90, "°")));
    }
}
