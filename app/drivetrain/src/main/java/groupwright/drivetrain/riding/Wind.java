package groupwright.drivetrain.riding;

import groupwright.drivetrain.quantity.Bounds;

/**
 * Wind over the land, as a weather report gives it.
 *
 * @param speedMps speed in m/s, 0 or more
 * @param fromDeg bearing it blows from, in degrees clockwise from north
 */
public record Wind(double speedMps, double fromDeg) {

    /** Throws {@link IllegalArgumentException} if the speed is negative or a number is not finite. */
    public Wind {
        Bounds.notNegative("the speed of the wind", speedMps, "m/s");
        Bounds.finite("the bearing of the wind", fromDeg, "degrees");
    }

    /**
     * The part of the wind along the road in m/s, positive against the rider: speed · cos(heading - from).
     *
     * <p>Source: Martin et al., J. Applied Biomechanics 14(3), 1998.
     *
     * @throws IllegalArgumentException if the heading in degrees is not finite
     */
    public double headwindMps(double headingDeg) {
        return speedMps * StrictMath.cos(angle(headingDeg));
    }

    /**
     * Yaw in degrees: the angle between the road and the air flow that a rider meets, 0 straight ahead.
     *
     * <p>Formula: atan(speed · sin(heading - from) / (ground speed + headwind)). Source: Martin et al. 1998. Choose the
     * drag area for this angle.
     *
     * @throws IllegalArgumentException if the heading in degrees is not finite or the ground speed in m/s is negative
     */
    public double yawDeg(double headingDeg, double groundSpeedMps) {
        Bounds.notNegative("the ground speed", groundSpeedMps, "m/s");
        double across = speedMps * StrictMath.sin(angle(headingDeg));
        return StrictMath.toDegrees(StrictMath.atan2(across, groundSpeedMps + headwindMps(headingDeg)));
    }

    private double angle(double headingDeg) {
        return StrictMath.toRadians(Bounds.finite("the heading", headingDeg, "degrees") - fromDeg);
    }
}
