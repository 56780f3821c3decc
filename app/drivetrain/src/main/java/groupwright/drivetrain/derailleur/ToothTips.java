package groupwright.drivetrain.derailleur;

import groupwright.drivetrain.quantity.Bounds;
import groupwright.drivetrain.quantity.ChainPitch;

/**
 * How far teeth stand out of the pitch circle.
 *
 * <p>Formula: outside diameter = p · (allowance + cot(pi / z)). Source: usual for roller-chain sprockets with an
 * allowance of 0.6, from memory; profiles of bicycle cogs differ, so the allowance can be edited.
 *
 * @param allowance the constant in the formula, 0 to 2
 */
public record ToothTips(double allowance) {
    /** The usual allowance of 0.6 (from memory). */
    public static final ToothTips USUAL = new ToothTips(0.6);

    /** Throws {@link IllegalArgumentException} if the allowance lies outside its range. */
    public ToothTips {
        Bounds.within("the allowance for the tips of teeth", allowance, 0, 2, "");
    }

    /**
     * Radius of the circle through the tips.
     *
     * @param teeth number of teeth, 3 to 1000
     * @return millimetres
     * @throws IllegalArgumentException if the number of teeth lies outside its range
     */
    public double radiusMm(int teeth) {
        Bounds.count("the number of teeth", teeth, 3, 1000);
        return ChainPitch.BICYCLE_MM / 2 * (allowance + 1 / StrictMath.tan(StrictMath.PI / teeth));
    }

    /** Length of a tangent from the pitch circle to the circle of the tips in mm; 0 where the tips do not stand out. */
    double reachMm(int teeth) {
        double outer = radiusMm(teeth);
        double inner = Mechanism.radiusMm(teeth);
        return StrictMath.sqrt(StrictMath.max(0, outer * outer - inner * inner));
    }
}
