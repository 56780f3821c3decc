package groupwright.drivetrain.loads;

import groupwright.drivetrain.quantity.Bounds;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Collects counted cycles in classes of equal width, the first from 0; a range on an edge belongs to the class above.
 *
 * <p>Memory: two numbers for each class up to the largest range, at most 100,000 classes. Each cycle costs the same.
 */
public final class RangeClasses implements CycleSink {
    private static final int MOST = 100_000;
    private static final int USUAL = 64;

    private final double width;
    private double[] cycles = new double[USUAL];
    private double[] largest = new double[USUAL];

    /**
     * Empty classes.
     *
     * @param width width of a class in the unit of the ranges
     * @throws IllegalArgumentException if the width is not finite and above 0
     */
    public RangeClasses(double width) {
        this.width = Bounds.positive("the width of a range class", width, "");
    }

    /**
     * Takes one cycle.
     *
     * @throws IllegalArgumentException if the range is more than 100,000 times as wide as a class
     */
    @Override
    public void accept(double range, double mean, double count) {
        int index = index(range);
        if (index >= cycles.length) {
            int length = Math.min(MOST, Math.max(index + 1, 2 * cycles.length));
            cycles = Arrays.copyOf(cycles, length);
            largest = Arrays.copyOf(largest, length);
        }
        cycles[index] += count;
        largest[index] = Math.max(largest[index], range);
    }

    private int index(double range) {
        double quotient = range / width;
        if (!(quotient < MOST - 1)) { // one less, because of the rounding below; written so that NaN fails too
            throw new IllegalArgumentException(
                    "a range of %s is too large for classes of %s; take wider classes".formatted(range, width));
        }
        int index = (int) quotient;
        if ((index + 1) * width <= range) { // the quotient is rounded, the edges as printed decide
            return index + 1;
        }
        return index * width > range ? index - 1 : index;
    }

    /** The classes that hold cycles, the smallest ranges first. */
    public List<RangeClass> classes() {
        List<RangeClass> filled = new ArrayList<>();
        for (int i = 0; i < cycles.length; i++) {
            if (cycles[i] > 0) {
                filled.add(new RangeClass(i * width, (i + 1) * width, cycles[i], largest[i]));
            }
        }
        return List.copyOf(filled);
    }

    /**
     * The spectrum in which the largest range met in a class stands for all of it: what is computed from it is never
     * milder than from the exact ranges, and no range grows by more than the width.
     */
    public LoadSpectrum spectrum() {
        return new LoadSpectrum(classes().stream()
                .map(of -> new LoadBlock(of.largestRange(), of.cycles()))
                .toList());
    }
}
