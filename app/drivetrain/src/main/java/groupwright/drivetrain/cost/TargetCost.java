package groupwright.drivetrain.cost;

import groupwright.drivetrain.quantity.Bounds;
import java.util.List;

/** What one set may cost. */
public final class TargetCost {
    private TargetCost() {}

    /**
     * Target cost of a price and a profit: price - profit; negative where the profit is not to be had at that price.
     *
     * <p>Source: Weygandt, Kimmel, Kieso, Managerial Accounting, Example 8-1.
     *
     * @throws IllegalArgumentException if price or profit is negative or not finite
     */
    public static double ofProfit(double price, double profit) {
        return Bounds.notNegative("the price", price, "") - Bounds.notNegative("the desired profit", profit, "");
    }

    /**
     * Profit each unit has to bring for a return on the money invested: invested · return / units.
     *
     * <p>Source: Weygandt, Kimmel, Kieso, Managerial Accounting, Example 8-2.
     *
     * @param invested money invested, 0 or more
     * @param returnShare return wanted, as a share of it, 0 or more
     * @param units units sold in the time the return is meant for, above 0
     * @return profit for each unit
     * @throws IllegalArgumentException if a number lies outside its range
     */
    public static double profitOfReturn(double invested, double returnShare, double units) {
        return Bounds.notNegative("the money invested", invested, "")
                * Bounds.notNegative("the return", returnShare, "")
                / Bounds.positive("the units", units, "");
    }

    /**
     * Target cost over several channels: their target costs weighted by volume. Cost: O(n) in the number of channels.
     *
     * @param channels at least one; their volume shares need not add up to 1
     * @return the mixed target cost
     * @throws IllegalArgumentException if there is no channel
     */
    public static double ofMix(List<SalesChannel> channels) {
        if (channels.isEmpty()) {
            throw new IllegalArgumentException("a target cost needs at least one sales channel");
        }
        double weighted = channels.stream()
                .mapToDouble(channel -> channel.targetCost() * channel.volumeShare())
                .sum();
        return weighted
                / channels.stream().mapToDouble(SalesChannel::volumeShare).sum();
    }
}
