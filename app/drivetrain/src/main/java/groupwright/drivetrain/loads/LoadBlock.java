package groupwright.drivetrain.loads;

import groupwright.drivetrain.quantity.Bounds;

/**
 * Cycles of one size.
 *
 * @param load range of the cycles, or their amplitude; the same measure throughout a spectrum and the line it is held
 *     against. Above 0
 * @param cycles how many, above 0; halves and shares are allowed
 */
public record LoadBlock(double load, double cycles) {

    /** Throws {@link IllegalArgumentException} if a number is not finite and above 0. */
    public LoadBlock {
        Bounds.positive("the load of a block", load, "");
        Bounds.positive("the number of cycles of a block", cycles, "");
    }
}
