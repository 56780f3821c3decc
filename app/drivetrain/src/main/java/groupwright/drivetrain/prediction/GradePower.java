package groupwright.drivetrain.prediction;

import groupwright.drivetrain.quantity.Bounds;

/**
 * Power ridden on a grade.
 *
 * @param grade rise / horizontal run, -1 to 1
 * @param crankPowerW power at the crank in W, 0 or more
 */
public record GradePower(double grade, double crankPowerW) {

    /** Throws {@link IllegalArgumentException} if a number lies outside its range. */
    public GradePower {
        Bounds.within("the grade (rise / run)", grade, -1, 1, "");
        Bounds.notNegative("the power", crankPowerW, "W");
    }
}
