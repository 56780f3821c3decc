package groupwright.drivetrain.loads;

import groupwright.drivetrain.quantity.Bounds;

/**
 * Load cycles counted over a way, and the cycles on a test bench that do the same damage.
 *
 * <p>Formula: n = (D / d) · Σ n_i · (S_i / S_bench)^m for a distance D, the spectrum n_i, S_i counted over d; it follows
 * from the rule of Palmgren and Miner on a line of slope m without endurance limit.
 *
 * <p>Neglects order and means of the cycles, corrosion, and wear; supposes that the way ridden stands for all ways. A slope
 * has to be stated: doubling the bench load changes the number by 2^m. Design estimate, not proof of conformity.
 *
 * @param spectrum the loads
 * @param km distance d over which they were counted, in km, above 0
 */
public record RiddenSpectrum(LoadSpectrum spectrum, double km) {

    /** Throws {@link IllegalArgumentException} if the distance is not finite and above 0. */
    public RiddenSpectrum {
        Bounds.positive("the distance a spectrum was counted over", km, "km");
    }

    /**
     * Cycles of a bench load equal to a distance.
     *
     * @param distanceKm distance D in km, 0 or more
     * @param benchLoad load of the bench in the measure of the spectrum (range or amplitude), above 0
     * @param slope slope m of the S-N line, above 0 and up to 50
     * @throws IllegalArgumentException if a number lies outside its range
     */
    public double benchCycles(double distanceKm, double benchLoad, double slope) {
        return Bounds.notNegative("the distance", distanceKm, "km") * benchCyclesPerKm(benchLoad, slope);
    }

    /**
     * Distance in km equal to a number of bench cycles.
     *
     * @param cycles bench cycles, 0 or more
     * @param benchLoad load of the bench in the measure of the spectrum, above 0
     * @param slope slope m of the S-N line, above 0 and up to 50
     * @throws IllegalArgumentException if a number lies outside its range or the spectrum does no damage
     */
    public double distanceKm(double cycles, double benchLoad, double slope) {
        Bounds.notNegative("the number of bench cycles", cycles, "");
        double perKm = benchCyclesPerKm(benchLoad, slope);
        if (!(perKm > 0)) {
            throw new IllegalArgumentException("no distance equals bench cycles: the ridden spectrum holds no load");
        }
        return cycles / perKm;
    }

    private double benchCyclesPerKm(double benchLoad, double slope) {
        return spectrum.cyclesEqualAt(benchLoad, slope) / km;
    }
}
