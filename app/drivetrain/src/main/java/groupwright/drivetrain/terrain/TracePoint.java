package groupwright.drivetrain.terrain;

import groupwright.drivetrain.quantity.Bounds;
import java.util.OptionalDouble;

/**
 * How high the ground is after some distance.
 *
 * @param distanceM distance along the way in m
 * @param elevationM elevation in m
 * @param timeS time in s from any beginning, empty if not known
 */
public record TracePoint(double distanceM, double elevationM, OptionalDouble timeS) {

    /** Throws {@link IllegalArgumentException} if a number is not finite. */
    public TracePoint {
        Bounds.finite("the distance", distanceM, "m");
        Bounds.finite("the elevation", elevationM, "m");
        timeS.ifPresent(value -> Bounds.finite("the time", value, "s"));
    }

    /** A point without time. */
    public static TracePoint of(double distanceM, double elevationM) {
        return new TracePoint(distanceM, elevationM, OptionalDouble.empty());
    }

    /** A point with its time. */
    public static TracePoint of(double distanceM, double elevationM, double timeS) {
        return new TracePoint(distanceM, elevationM, OptionalDouble.of(timeS));
    }

    /** Seconds until the next point; empty unless both have a time. */
    OptionalDouble secondsTo(TracePoint next) {
        return timeS.isPresent() && next.timeS.isPresent()
                ? OptionalDouble.of(next.timeS.getAsDouble() - timeS.getAsDouble())
                : OptionalDouble.empty();
    }
}
