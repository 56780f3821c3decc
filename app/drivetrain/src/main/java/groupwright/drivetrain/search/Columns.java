package groupwright.drivetrain.search;

import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.gearing.ShiftPositions;
import groupwright.drivetrain.gearing.SideTravel;
import groupwright.drivetrain.gearing.Steps;
import groupwright.drivetrain.quantity.Bounds;
import groupwright.drivetrain.quantity.Chainring;

/**
 * What one also wants to know of a cassette that was found, computed afterwards.
 *
 * @param longestWaitS the longest wait for a like position over all pairs, in s; 0 without a pair
 * @param sideTravelMm how far the guide pulley moves along the axle, in mm
 */
public record Columns(double longestWaitS, double sideTravelMm) {

    /** The columns of a cassette. Cost: O(n) in the number of cogs. */
    public static Columns of(Cassette cassette, Use use) {
        double wait = Steps.of(cassette).stream()
                .mapToDouble(step -> ShiftPositions.longestWaitS(step, use.ring(), use.cadenceRpm()))
                .max()
                .orElse(0);
        return new Columns(wait, SideTravel.mm(cassette, use.spacingMm(), use.extra()));
    }

    /**
     * How the cassette is used.
     *
     * @param ring the ring in use
     * @param cadenceRpm cadence in rpm, above 0
     * @param spacingMm distance from cog to cog in mm, above 0
     * @param extra side travel beyond the outermost cogs
     */
    public record Use(Chainring ring, double cadenceRpm, double spacingMm, SideTravel.Extra extra) {
        /** Throws {@link IllegalArgumentException} if a number lies outside its range. */
        public Use {
            Bounds.positive("the cadence", cadenceRpm, "rpm");
            Bounds.positive("the spacing of two cogs", spacingMm, "mm");
        }
    }
}
