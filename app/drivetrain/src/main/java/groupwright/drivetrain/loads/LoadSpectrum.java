package groupwright.drivetrain.loads;

import groupwright.drivetrain.quantity.Bounds;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * How often each size of load cycle occurs, the smallest first, each size once. May be empty: a load that never changes.
 *
 * <p>Means are left out: what is computed from a spectrum neglects mean loads. Design estimate, not proof of conformity.
 *
 * @param blocks the sizes with their counts, loads strictly ascending
 */
public record LoadSpectrum(List<LoadBlock> blocks) {

    /** Throws {@link IllegalArgumentException} if the loads do not ascend; {@link #of} sorts and joins. */
    public LoadSpectrum {
        blocks = List.copyOf(blocks);
        for (int i = 1; i < blocks.size(); i++) {
            if (blocks.get(i).load() <= blocks.get(i - 1).load()) {
                throw new IllegalArgumentException("the loads of a spectrum must ascend, but %s follows %s"
                        .formatted(blocks.get(i).load(), blocks.get(i - 1).load()));
            }
        }
    }

    /** The spectrum of blocks in any order; blocks of the same load are joined. O(n log n). */
    public static LoadSpectrum of(List<LoadBlock> blocks) {
        TreeMap<Double, Double> joined = new TreeMap<>();
        blocks.forEach(block -> joined.merge(block.load(), block.cycles(), Double::sum));
        return of(joined);
    }

    /** The spectrum of blocks in any order. */
    public static LoadSpectrum of(LoadBlock... blocks) {
        return of(List.of(blocks));
    }

    static LoadSpectrum of(SortedMap<Double, Double> cyclesByLoad) {
        List<LoadBlock> blocks = new ArrayList<>(cyclesByLoad.size());
        cyclesByLoad.forEach((load, cycles) -> blocks.add(new LoadBlock(load, cycles)));
        return new LoadSpectrum(blocks);
    }

    /** Number of cycles of all sizes. */
    public double cycles() {
        return blocks.stream().mapToDouble(LoadBlock::cycles).sum();
    }

    /** The largest load, 0 if there is none. */
    public double largestLoad() {
        return blocks.isEmpty() ? 0 : blocks.get(blocks.size() - 1).load();
    }

    /**
     * Sum of cycles · load^slope: compares spectra without classes.
     *
     * @throws IllegalArgumentException if the slope lies outside its range or the sum is too large for a number
     */
    public double powerSum(double slope) {
        SnLine.checkSlope(slope);
        double sum = 0;
        for (LoadBlock block : blocks) {
            sum += block.cycles() * StrictMath.pow(block.load(), slope);
        }
        return Bounds.finite("the sum of cycles times load to the power of the slope", sum, "");
    }

    /**
     * Sum of cycles · (load / reference)^slope: how many cycles of the reference load do the same damage on a line of
     * that slope (Palmgren and Miner). Neglects endurance limit, order and means of the cycles.
     *
     * @throws IllegalArgumentException if a number lies outside its range or the sum is too large for a number
     */
    public double cyclesEqualAt(double referenceLoad, double slope) {
        Bounds.positive("the reference load", referenceLoad, "");
        SnLine.checkSlope(slope);
        double sum = 0;
        for (LoadBlock block : blocks) {
            sum += block.cycles() * StrictMath.pow(block.load() / referenceLoad, slope);
        }
        return Bounds.finite("the number of equal cycles", sum, "");
    }

    /** Both spectra together. O(n log n). */
    public LoadSpectrum plus(LoadSpectrum other) {
        List<LoadBlock> all = new ArrayList<>(blocks);
        all.addAll(other.blocks);
        return of(all);
    }

    /**
     * The same loads so many times as often.
     *
     * @throws IllegalArgumentException if the factor is not finite and above 0
     */
    public LoadSpectrum times(double factor) {
        Bounds.positive("the factor of a spectrum", factor, "");
        return new LoadSpectrum(blocks.stream()
                .map(block -> new LoadBlock(block.load(), block.cycles() * factor))
                .toList());
    }
}
