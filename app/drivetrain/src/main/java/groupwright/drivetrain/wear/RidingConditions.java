package groupwright.drivetrain.wear;

import groupwright.drivetrain.quantity.Bounds;

/**
 * Shares of riding in different conditions.
 *
 * @param dry share in dry and clean conditions, 0 to 1
 * @param dust share in dust, 0 to 1
 * @param mud share in mud, 0 to 1
 * @param cold share in the cold, 0 to 1
 */
public record RidingConditions(double dry, double dust, double mud, double cold) {
    /** Four shares, each rounded to a tenth of a percent. */
    private static final double ROUNDING = 4 * 0.0005 + 1e-9;

    /** Throws {@link IllegalArgumentException} if a share lies outside its range or they do not add up to 1. */
    public RidingConditions {
        Bounds.within("the share of dry riding", dry, 0, 1, "");
        Bounds.within("the share of riding in dust", dust, 0, 1, "");
        Bounds.within("the share of riding in mud", mud, 0, 1, "");
        Bounds.within("the share of riding in the cold", cold, 0, 1, "");
        if (Math.abs(dry + dust + mud + cold - 1) > ROUNDING) {
            throw new IllegalArgumentException(
                    "shares of riding conditions must add up to 1, but %s, %s, %s and %s make %s"
                            .formatted(dry, dust, mud, cold, dry + dust + mud + cold));
        }
    }

    /**
     * Dust, mud and cold in percent; all the rest is dry.
     *
     * @throws IllegalArgumentException if a share is negative or they add up to more than 100 %
     */
    public static RidingConditions ofPct(double dustPct, double mudPct, double coldPct) {
        Bounds.within("the share of riding in dust", dustPct, 0, 100, "%");
        Bounds.within("the share of riding in mud", mudPct, 0, 100, "%");
        Bounds.within("the share of riding in the cold", coldPct, 0, 100, "%");
        double others = (dustPct + mudPct + coldPct) / 100;
        return new RidingConditions(Math.max(0, 1 - others), dustPct / 100, mudPct / 100, coldPct / 100);
    }
}
