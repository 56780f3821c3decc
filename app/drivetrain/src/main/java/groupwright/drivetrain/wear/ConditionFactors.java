package groupwright.drivetrain.wear;

import groupwright.drivetrain.quantity.Bounds;

/**
 * How much faster parts wear in some condition than under reference conditions, at the same friction energy.
 *
 * @param dry factor in dry and clean conditions, above 0
 * @param dust factor in dust, above 0
 * @param mud factor in mud, above 0
 * @param cold factor in the cold, above 0
 */
public record ConditionFactors(double dry, double dust, double mud, double cold) {
    /** Throws {@link IllegalArgumentException} if a factor is not finite and above 0. */
    public ConditionFactors {
        Bounds.positive("the wear factor of dry riding", dry, "");
        Bounds.positive("the wear factor of dust", dust, "");
        Bounds.positive("the wear factor of mud", mud, "");
        Bounds.positive("the wear factor of the cold", cold, "");
    }

    /**
     * The factor of mixed conditions: the mean of the factors, weighted by the shares of riding (common practice, no
     * source). Supposes that wear adds up whatever the order; what mud leaves behind for the next dry ride is neglected.
     * Design estimate, not proof of conformity.
     */
    public double mean(RidingConditions shares) {
        double weighted = dry * shares.dry() + dust * shares.dust() + mud * shares.mud() + cold * shares.cold();
        return weighted / (shares.dry() + shares.dust() + shares.mud() + shares.cold());
    }
}
