package groupwright.drivetrain.loads;

import groupwright.drivetrain.quantity.Bounds;

/**
 * One counted cycle of a load, or half a one.
 *
 * @param range largest less smallest load, above 0
 * @param mean middle between them
 * @param count 1, or 0.5 for half a cycle
 */
public record Cycle(double range, double mean, double count) {

    /** Throws {@link IllegalArgumentException} if a number lies outside its range. */
    public Cycle {
        Bounds.positive("the range of a cycle", range, "");
        Bounds.finite("the mean of a cycle", mean, "");
        if (count != 1 && count != 0.5) {
            throw new IllegalArgumentException("a cycle counts 1 or 0.5, was " + count);
        }
    }
}
