package groupwright.drivetrain.loads;

import groupwright.drivetrain.quantity.Bounds;
import java.util.OptionalDouble;

/**
 * The load of constant size that does the damage of a spectrum.
 *
 * <p>Formula: S_eq = (Σ n_i · S_i^m / n)^(1/m); it follows from the rule of Palmgren and Miner on a line of slope m
 * without endurance limit. Neglects order and means of the cycles. Design estimate, not proof of conformity.
 */
public final class EquivalentLoad {
    private EquivalentLoad() {}

    /**
     * The equivalent load over as many cycles as the spectrum has.
     *
     * @param slope slope m of the S-N line, above 0 and up to 50
     * @return the load in the measure of the spectrum; empty if that has no cycles
     * @throws IllegalArgumentException if the slope lies outside its range
     */
    public static OptionalDouble of(LoadSpectrum spectrum, double slope) {
        SnLine.checkSlope(slope);
        return spectrum.blocks().isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(over(spectrum, slope, spectrum.cycles()));
    }

    /**
     * The equivalent load over a chosen number of cycles; 0 if the spectrum has none.
     *
     * @param slope slope m of the S-N line, above 0 and up to 50
     * @param cycles number of cycles n, above 0
     * @throws IllegalArgumentException if a number lies outside its range
     */
    public static double over(LoadSpectrum spectrum, double slope, double cycles) {
        SnLine.checkSlope(slope);
        Bounds.positive("the number of cycles", cycles, "");
        double largest = spectrum.largestLoad();
        if (largest == 0) {
            return 0;
        }
        // Loads as shares of the largest: their powers cannot overflow.
        return largest * StrictMath.pow(spectrum.cyclesEqualAt(largest, slope) / cycles, 1 / slope);
    }
}
