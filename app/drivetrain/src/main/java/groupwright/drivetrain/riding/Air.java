package groupwright.drivetrain.riding;

import groupwright.drivetrain.quantity.Bounds;

/**
 * The air one rides through.
 *
 * @param densityKgPerM3 density in kg/m³, 0 or more; about 1.2 near sea level
 * @param headwindMps wind along the road in m/s, positive against the rider
 */
public record Air(double densityKgPerM3, double headwindMps) {

    /** Throws {@link IllegalArgumentException} if the density is negative or a number is not finite. */
    public Air {
        Bounds.notNegative("the density of air", densityKgPerM3, "kg/m³");
        Bounds.finite("the headwind", headwindMps, "m/s");
    }

    /** Air without wind. */
    public static Air still(double densityKgPerM3) {
        return new Air(densityKgPerM3, 0);
    }
}
