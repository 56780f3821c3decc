package groupwright.drivetrain.riding;

import groupwright.drivetrain.quantity.Bounds;

/**
 * A change of speed over some time.
 *
 * @param fromMps speed at the start in m/s, 0 or more
 * @param toMps speed at the end in m/s, 0 or more
 * @param seconds time it takes in s, above 0
 * @param wheelInertiaKgM2 moment of inertia of both wheels together in kg·m², 0 or more; 0.14 in Martin et al. 1998
 * @param wheelRadiusM rolling radius of the wheels in m, above 0; 0.311 there
 */
public record SpeedChange(double fromMps, double toMps, double seconds, double wheelInertiaKgM2, double wheelRadiusM) {

    /** Throws {@link IllegalArgumentException} if a number lies outside its range. */
    public SpeedChange {
        Bounds.notNegative("the speed at the start", fromMps, "m/s");
        Bounds.notNegative("the speed at the end", toMps, "m/s");
        Bounds.positive("the time", seconds, "s");
        Bounds.notNegative("the moment of inertia of the wheels", wheelInertiaKgM2, "kg·m²");
        Bounds.positive("the radius of the wheels", wheelRadiusM, "m");
    }

    /**
     * Mean power into kinetic energy in W, negative while slowing down.
     *
     * <p>Formula: ½ · (m + I/r²) · (v_to² - v_from²) / time. Source: Martin et al., J. Applied Biomechanics 14(3), 1998.
     *
     * @throws IllegalArgumentException if the mass in kg is not finite and above 0
     */
    public double powerW(double massKg) {
        Bounds.positive("the total mass of rider and bicycle", massKg, "kg");
        double effectiveKg = massKg + wheelInertiaKgM2 / (wheelRadiusM * wheelRadiusM);
        return effectiveKg / 2 * (toMps * toMps - fromMps * fromMps) / seconds;
    }
}
