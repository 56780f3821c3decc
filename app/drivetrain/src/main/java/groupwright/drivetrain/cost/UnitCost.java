package groupwright.drivetrain.cost;

import groupwright.drivetrain.quantity.Bounds;
import java.util.List;

/**
 * What one set costs to make.
 *
 * @param pieces price of all pieces in the set
 * @param scrap price of the further pieces that are bought and thrown away for it
 * @param tooling its share of the tooling
 */
public record UnitCost(double pieces, double scrap, double tooling) {

    /** Throws {@link IllegalArgumentException} if a number is negative or not finite. */
    public UnitCost {
        Bounds.notNegative("the cost of the pieces", pieces, "");
        Bounds.notNegative("the cost of scrap", scrap, "");
        Bounds.notNegative("the cost of tooling", tooling, "");
    }

    /**
     * Adds up the parts of a set.
     *
     * <p>Formula: sum of piece cost · pieces · (1 + scrap share) + sum of tooling / life volume. Scrap falls on pieces
     * only: tooling is paid once, however many pieces it makes. Neglected: freight, duty, warranty, interest on tooling.
     * Cost: O(n) in the number of parts.
     *
     * @param parts the parts of one set
     * @param scrapShare pieces scrapped for each good one, 0 to 10; see {@link #scrapShareOfRejects}
     * @param lifeVolume sets made over the life of the tooling, above 0
     * @return the cost of one set
     * @throws IllegalArgumentException if a number lies outside its range
     */
    public static UnitCost of(List<PartCost> parts, double scrapShare, double lifeVolume) {
        Bounds.within("the scrap share", scrapShare, 0, 10, "");
        Bounds.positive("the life volume", lifeVolume, "sets");
        double pieces = parts.stream()
                .mapToDouble(part -> part.pieceCost() * part.pieces())
                .sum();
        double tooling = parts.stream().mapToDouble(PartCost::tooling).sum();
        return new UnitCost(pieces, pieces * scrapShare, tooling / lifeVolume);
    }

    /**
     * Pieces scrapped for each good one, when a share of all pieces made is rejected: q / (1 - q).
     *
     * @param rejectShare rejects / all pieces made, 0 to 0.9
     * @return scrap share for {@link #of}
     * @throws IllegalArgumentException if the share lies outside 0 to 0.9
     */
    public static double scrapShareOfRejects(double rejectShare) {
        return Bounds.within("the share of rejects", rejectShare, 0, 0.9, "") / (1 - rejectShare);
    }

    /** The cost of one set: pieces + scrap + tooling. */
    public double total() {
        return pieces + scrap + tooling;
    }
}
