package groupwright.drivetrain.chain;

/**
 * How much the speed of the chain swings because it lies on a polygon and not on a circle.
 *
 * <p>Two definitions are in use; say which one a number follows. Both assume a steadily turning sprocket and a tight
 * span along the tangent, and neglect the sprocket at the other end.
 */
public final class ChordalSpeed {
    private ChordalSpeed() {}

    /**
     * Swing in percent of the mean speed.
     *
     * <p>Formula: 100 · (pi / z) · (1 / sin(pi / z) - 1 / tan(pi / z)). Source: Shigley, Mechanical Engineering Design,
     * ch. 17 (cited from memory): greatest less least speed, over pitch · teeth · turns.
     *
     * @param teeth number of teeth, 3 to 1000
     * @return percent
     * @throws IllegalArgumentException if the tooth count lies outside its range
     */
    public static double swingOfMeanPct(int teeth) {
        double half = PitchCircle.halfStep(teeth);
        return 100 * half * StrictMath.tan(half / 2); // the same, without a difference of large numbers
    }

    /**
     * Swing in percent of the greatest speed.
     *
     * <p>Formula: 100 · (1 - cos(pi / z)): the chain moves fastest with a pin on the top of the pitch circle, slowest
     * with a chord there (geometry of the polygon).
     *
     * @param teeth number of teeth, 3 to 1000
     * @return percent
     * @throws IllegalArgumentException if the tooth count lies outside its range
     */
    public static double swingOfGreatestPct(int teeth) {
        double sine = StrictMath.sin(PitchCircle.halfStep(teeth) / 2);
        return 200 * sine * sine; // the same, without a difference of nearly equal numbers
    }
}
