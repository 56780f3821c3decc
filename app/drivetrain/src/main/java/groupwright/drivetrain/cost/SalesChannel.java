package groupwright.drivetrain.cost;

import groupwright.drivetrain.quantity.Bounds;
import java.util.List;

/**
 * One way to the customer.
 *
 * @param price what the customer pays, tax included, 0 or more
 * @param taxShare tax on the price before tax, 0 to 2; 0.19 is 19 %
 * @param marginShares margins of all who sell it on, in any order, and our own; each a share of the seller's own
 *     selling price, 0 to 1
 * @param volumeShare weight of this channel in a mix, above 0
 */
public record SalesChannel(double price, double taxShare, List<Double> marginShares, double volumeShare) {

    /** Throws {@link IllegalArgumentException} if a number lies outside its range. */
    public SalesChannel {
        Bounds.notNegative("the price", price, "");
        Bounds.within("the tax share", taxShare, 0, 2, "");
        marginShares = List.copyOf(marginShares);
        for (double margin : marginShares) {
            Bounds.within("a margin on the selling price", margin, 0, 1, "");
        }
        Bounds.positive("the volume share of a channel", volumeShare, "");
    }

    /**
     * Target cost: what a set sold this way may cost.
     *
     * <p>Formula: price / (1 + tax), then times (1 - margin) for each margin. Source of margins on the price: Horngren's
     * Financial and Managerial Accounting, 6th ed., 19-3.
     */
    public double targetCost() {
        double left = price / (1 + taxShare);
        for (double margin : marginShares) {
            left *= 1 - margin;
        }
        return left;
    }
}
