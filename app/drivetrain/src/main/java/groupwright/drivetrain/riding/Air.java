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

    /**
     * Air in a wind, as one meets it on a road.
     *
     * @param densityKgPerM3 density in kg/m³, 0 or more
     * @param wind the wind over the land
     * @param headingDeg bearing one rides towards, in degrees clockwise from north
     * @return the air with the wind's part along the road; what blows across is neglected but for the yaw it makes, see
     *     {@link Wind#yawDeg}
     * @throws IllegalArgumentException if the density is negative or a number is not finite
     */
    public static Air in(double densityKgPerM3, Wind wind, double headingDeg) {
        return new Air(densityKgPerM3, wind.headwindMps(headingDeg));
    }

    /** Air without wind. */
    public static Air still(double densityKgPerM3) {
        return new Air(densityKgPerM3, 0);
    }
}
