package groupwright.drivetrain.riding;

/**
 * Where the power goes, in W at the wheel; a negative term pushes.
 *
 * @param aerodynamicW against the air
 * @param rollingW into tyres and ground
 * @param bearingsW into the wheel bearings
 * @param slopeW against gravity
 * @param kineticW into speed
 */
public record PowerTerms(double aerodynamicW, double rollingW, double bearingsW, double slopeW, double kineticW) {

    /** Power at the wheel in W: the sum of the terms; negative where the bicycle must be braked to keep its speed. */
    public double wheelW() {
        return aerodynamicW + rollingW + bearingsW + slopeW + kineticW;
    }

    /** The same terms with the power that a change of speed takes. */
    public PowerTerms with(SpeedChange change, double massKg) {
        return new PowerTerms(aerodynamicW, rollingW, bearingsW, slopeW, change.powerW(massKg));
    }

    /**
     * Power at the crank in W: power at the wheel / efficiency. Where the wheel needs none or must be braked, 0: a rider
     * does not brake through the chain.
     */
    public double crankW(RidingSystem system) {
        return Math.max(0, wheelW() / system.efficiency());
    }
}
