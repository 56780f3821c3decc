package groupwright.drivetrain.wear;

import groupwright.drivetrain.quantity.Bounds;
import groupwright.drivetrain.quantity.ChainPitch;

/**
 * What friction in the joints of a chain depends on.
 *
 * @param friction coefficient of friction between pin and link, above 0 and up to 1
 * @param pinRadiusMm radius in mm at which it acts, above 0 and up to the pitch
 * @param pitchMm pitch of the chain in mm, above 0
 * @param slackTensionN tension in N that the cage keeps in the slack run, 0 or more
 */
public record ChainFriction(double friction, double pinRadiusMm, double pitchMm, double slackTensionN) {
    /**
     * An assumption, no source: friction 0.1, pin radius 1.8 mm, slack tension 10 N, bicycle pitch. Meant for differences
     * between concepts that run the same chain; see {@link #UNCERTAINTY_PCT}.
     */
    public static final ChainFriction ASSUMED = new ChainFriction(0.1, 1.8, ChainPitch.BICYCLE_MM, 10);

    /** How far losses and energies from {@link #ASSUMED} may be off, in percent either way (an assumption, no source). */
    public static final double UNCERTAINTY_PCT = 50;

    /** Throws {@link IllegalArgumentException} if a number lies outside its range. */
    public ChainFriction {
        Bounds.positive("the coefficient of friction", friction, "");
        Bounds.within("the coefficient of friction", friction, 0, 1, "");
        Bounds.positive("the pitch of a chain", pitchMm, "mm");
        Bounds.positive("the radius of a pin", pinRadiusMm, "mm");
        Bounds.within("the radius of a pin", pinRadiusMm, 0, pitchMm, "mm");
        Bounds.notNegative("the tension of the slack run", slackTensionN, "N");
    }

    /**
     * Friction work over the work a run of chain carries, when each of its links turns by an angle: mu · r / p · angle.
     *
     * <p>On its way s under tension F the chain carries F · s, and s / p joints rub mu · F · r · angle each.
     */
    double shareOfWork(double angleRad) {
        return friction * pinRadiusMm / pitchMm * angleRad;
    }
}
