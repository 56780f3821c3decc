package groupwright.drivetrain.riding;

/**
 * How a rider goes up a slope.
 *
 * @param speedKmh speed in km/h
 * @param cadenceRpm cadence in rpm in the gear asked for
 */
public record Climb(double speedKmh, double cadenceRpm) {
    /** Below this speed in km/h a rider walks (common practice, no source). */
    public static final double WALKING_PACE_KMH = 4.5;

    /** Whether the rider would be off and walking, with this walking pace in km/h. */
    public boolean walks(double walkingPaceKmh) {
        return speedKmh < walkingPaceKmh;
    }
}
