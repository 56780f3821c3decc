package groupwright.drivetrain.prediction;

/**
 * Where the work of a ride came from and went, in J.
 *
 * @param crankJ done at the crank
 * @param chainLossJ of it lost in the drivetrain
 * @param pushedJ done on foot
 * @param airJ against the air; negative if the wind did more than the rider
 * @param rollingJ into tyres and ground
 * @param bearingsJ into the wheel bearings
 * @param slopeJ against gravity, negative if the ride ends lower
 * @param kineticJ into speed, negative if the ride ends slower
 * @param brakingJ into the brakes
 */
public record Energy(
        double crankJ,
        double chainLossJ,
        double pushedJ,
        double airJ,
        double rollingJ,
        double bearingsJ,
        double slopeJ,
        double kineticJ,
        double brakingJ) {

    /** Work that moved rider and bicycle: at the wheel, and on foot. */
    public double suppliedJ() {
        return crankJ - chainLossJ + pushedJ;
    }

    /** The sum of all it went into; equal to {@link #suppliedJ} but for rounding. */
    public double spentJ() {
        return airJ + rollingJ + bearingsJ + slopeJ + kineticJ + brakingJ;
    }
}
