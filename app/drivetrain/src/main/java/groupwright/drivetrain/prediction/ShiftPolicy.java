package groupwright.drivetrain.prediction;

import groupwright.drivetrain.quantity.Bounds;

/**
 * When and where a rider shifts.
 *
 * <p>While pedalling, and not sooner than the hold after the last action, he compares the cadence with the one aimed at
 * on this grade, both as logarithms. Within the tolerance he leaves it. Else he takes, in one action and over as many
 * cogs as it needs, the gear in use nearest to the aim, where each ring moved counts as so much further away; he stays
 * if that gains less than the benefit. He does not look ahead, and does not shift while coasting or walking.
 *
 * @param holdS seconds a gear is held at least, 0 or more
 * @param tolerance share by which the cadence may miss the aim, 0 to 1
 * @param frontReluctance how much nearer a gear must be, as a share of the cadence, to be worth moving one ring, 0 to 1
 * @param benefit how much nearer a gear must be to be worth a shift, 0 to 1
 */
public record ShiftPolicy(double holdS, double tolerance, double frontReluctance, double benefit) {
    /** 2 s, 8 %, 10 % for each ring, 2 % (own assumptions). */
    public static final ShiftPolicy USUAL = new ShiftPolicy(2, 0.08, 0.1, 0.02);

    /** Throws {@link IllegalArgumentException} if a number lies outside its range. */
    public ShiftPolicy {
        Bounds.notNegative("the time a gear is held", holdS, "s");
        Bounds.within("the tolerance of the cadence", tolerance, 0, 1, "");
        Bounds.within("the reluctance to shift in front", frontReluctance, 0, 1, "");
        Bounds.within("the benefit a shift must have", benefit, 0, 1, "");
    }
}
