package groupwright.drivetrain.terrain;

import groupwright.drivetrain.quantity.Bounds;
import java.util.OptionalDouble;

/**
 * One recorded point of a track.
 *
 * @param place where it lies
 * @param elevationM elevation in m, -12 000 to 12 000
 * @param timeS seconds since 1970-01-01T00:00:00Z, empty if the file does not say
 * @param powerW power in W, empty if the file does not say
 * @param cadenceRpm cadence in rpm, empty if the file does not say
 */
public record GeoPoint(
        Place place, double elevationM, OptionalDouble timeS, OptionalDouble powerW, OptionalDouble cadenceRpm) {
    private static final double HIGHEST_M = 12_000;

    /** Throws {@link IllegalArgumentException} if a number lies outside its range or is not finite. */
    public GeoPoint {
        Bounds.within("the elevation", elevationM, -HIGHEST_M, HIGHEST_M, "m");
        timeS.ifPresent(value -> Bounds.finite("the time", value, "s"));
        powerW.ifPresent(value -> Bounds.finite("the power", value, "W"));
        cadenceRpm.ifPresent(value -> Bounds.finite("the cadence", value, "rpm"));
    }
}
