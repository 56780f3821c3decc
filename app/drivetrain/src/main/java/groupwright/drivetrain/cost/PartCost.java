package groupwright.drivetrain.cost;

import groupwright.drivetrain.quantity.Bounds;

/**
 * The cost of one part of a set; any currency, the same for all.
 *
 * @param pieceCost price of one piece, 0 or more
 * @param pieces pieces in a set, 0 or more
 * @param tooling money spent once before the first piece, 0 or more
 */
public record PartCost(double pieceCost, int pieces, double tooling) {

    /** Throws {@link IllegalArgumentException} if a number lies outside its range. */
    public PartCost {
        Bounds.notNegative("the cost of a piece", pieceCost, "");
        Bounds.count("the pieces of a part in a set", pieces, 0, 10_000);
        Bounds.notNegative("the tooling of a part", tooling, "");
    }
}
