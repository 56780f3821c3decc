package groupwright.drivetrain.loads;

import groupwright.drivetrain.quantity.Bounds;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Counts how often a load history crosses levels while it streams by: levels at or above a reference load when the load
 * rises past them, levels below it when the load falls past them.
 *
 * <p>Rising past a level means to exceed it after a load that did not, falling past it the same downwards; who only comes up
 * to it has not crossed it. Each crossing counts; smallest movements are not left out.
 *
 * <p>Source: ASTM E1049-85, section 5.1.
 *
 * <p>Holds two numbers for each level. Each sample costs O(log of the levels + levels crossed). One history for each
 * counter. Design estimate, not proof of conformity.
 */
public final class LevelCrossings {
    private final double[] levels;
    private final long[] crossings;
    private final int firstRising;
    private double before;
    private long samples;

    /**
     * A counter at the start of a history.
     *
     * @param reference load from which on levels count when it rises
     * @param levels levels, strictly ascending
     * @throws IllegalArgumentException if a number is not finite or the levels do not ascend
     */
    public LevelCrossings(double reference, double... levels) {
        Bounds.finite("the reference load", reference, "");
        for (int i = 0; i < levels.length; i++) {
            Bounds.finite("a level", levels[i], "");
            if (i > 0 && levels[i] <= levels[i - 1]) {
                throw new IllegalArgumentException(
                        "levels must ascend, but %s follows %s".formatted(levels[i], levels[i - 1]));
            }
        }
        this.levels = plainZeros(levels);
        crossings = new long[levels.length];
        firstRising = below(reference);
    }

    /** A copy with 0 in place of -0, which binary search takes for something smaller. */
    private static double[] plainZeros(double[] values) {
        return Arrays.stream(values).map(value -> value + 0.0).toArray();
    }

    /**
     * Takes the next sample.
     *
     * @throws IllegalArgumentException if it is NaN, infinite or beyond half the largest number
     */
    public void add(double sample) {
        Samples.check(sample, samples);
        if (samples > 0 && sample > before) {
            count(Math.max(below(before), firstRising), below(sample));
        } else if (samples > 0 && sample < before) {
            count(upTo(sample), Math.min(upTo(before), firstRising));
        }
        before = sample;
        samples++;
    }

    private void count(int first, int end) {
        for (int i = first; i < end; i++) {
            crossings[i]++;
        }
    }

    /** What was counted so far, the lowest level first. */
    public List<LevelCount> counts() {
        List<LevelCount> counts = new ArrayList<>();
        for (int i = 0; i < levels.length; i++) {
            counts.add(new LevelCount(levels[i], crossings[i]));
        }
        return List.copyOf(counts);
    }

    /** How many levels lie below a load. */
    private int below(double load) {
        int found = Arrays.binarySearch(levels, load + 0.0);
        return found >= 0 ? found : -found - 1;
    }

    /** How many levels lie below a load or on it. */
    private int upTo(double load) {
        int found = Arrays.binarySearch(levels, load + 0.0);
        return found >= 0 ? found + 1 : -found - 1;
    }
}
