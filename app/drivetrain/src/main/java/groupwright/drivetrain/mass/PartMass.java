package groupwright.drivetrain.mass;

import groupwright.drivetrain.quantity.Bounds;

/**
 * The mass of one part of a set.
 *
 * @param pieceG basic mass of one piece in g, 0 or more
 * @param pieces pieces in a set, 0 or more
 * @param allowanceShare expected growth until series, as a share of the basic mass, -1 to 10; 0 for weighed parts
 * @param pieceSpreadG standard deviation in g of what one piece may turn out to weigh, 0 or more
 */
public record PartMass(double pieceG, int pieces, double allowanceShare, double pieceSpreadG) {

    /** Throws {@link IllegalArgumentException} if a number lies outside its range. */
    public PartMass {
        Bounds.notNegative("the mass of a part", pieceG, "g");
        Bounds.count("the pieces of a part in a set", pieces, 0, 10_000);
        Bounds.within("the growth allowance of a part", allowanceShare, -1, 10, "");
        Bounds.notNegative("the spread of a part's mass", pieceSpreadG, "g");
    }

    /** Basic mass of all pieces in g. */
    public double basicG() {
        return pieceG * pieces;
    }

    /** Predicted mass of all pieces in g: basic · (1 + allowance). */
    public double predictedG() {
        return basicG() * (1 + allowanceShare);
    }

    /** Spread of all pieces together in g: pieces of one part are wrong together, so their spreads add up. */
    public double spreadG() {
        return pieceSpreadG * pieces;
    }
}
