package groupwright.drivetrain.loads;

import groupwright.drivetrain.quantity.Bounds;

/**
 * How much of one kind of load is put on a part, and how much of it alone the part would bear.
 *
 * @param used amount put on, 0 or more, in any unit: cycles, minutes, kilometres
 * @param life amount until failure, above 0, in the same unit
 */
public record Usage(double used, double life) {

    /** Throws {@link IllegalArgumentException} if a number lies outside its range. */
    public Usage {
        Bounds.notNegative("the amount of a load used", used, "");
        Bounds.positive("the life under a load", life, "");
    }
}
