package groupwright.drivetrain.loads;

import java.util.TreeMap;

/**
 * Collects counted cycles by exact range. Memory grows with the number of different ranges, each cycle costs
 * O(log of them); for long histories without steps use {@link RangeClasses}.
 */
public final class RangeCounts implements CycleSink {
    private final TreeMap<Double, Double> cycles = new TreeMap<>();

    @Override
    public void accept(double range, double mean, double count) {
        cycles.merge(range, count, Double::sum);
    }

    /** What was counted so far. */
    public LoadSpectrum spectrum() {
        return LoadSpectrum.of(cycles);
    }
}
