package groupwright.documents.charts;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * Places values so that equal shares are equal lengths.
 *
 * @param low value at {@code left}, above 0
 * @param high value at {@code right}, above {@code low}
 */
record LogScale(double low, double high, double left, double right) {
    private static final int FEWEST = 5;
    private static final int MOST = 7;
    /** Digits at which a decade is ticked, the fullest first. */
    private static final double[][] PER_DECADE = {
        {1, 2, 3, 4, 5, 6, 7, 8, 9},
        {1, 2, 3, 4, 5, 6, 8},
        {1, 1.5, 2, 3, 4, 6, 8},
        {1, 2, 3, 5},
        {1, 2, 5},
        {1, 3},
        {1}
    };

    LogScale {
        if (!(low > 0 && high > low && Double.isFinite(high))) {
            throw new IllegalArgumentException("a scale needs 0 < low < high, was " + low + " to " + high);
        }
    }

    /** Where a value stands: {@code left + (right - left) · ln(value / low) / ln(high / low)}. */
    double position(double value) {
        return left + (right - left) * Math.log(value / low) / Math.log(high / low);
    }

    /** Five to seven round values on the scale, rising; on a very short or long scale as near to that as can be. */
    List<Double> ticks() {
        for (double[] digits : PER_DECADE) {
            List<Double> ticks = decades(digits);
            if (ticks.size() >= FEWEST && ticks.size() <= MOST) {
                return ticks;
            }
        }
        return evenly();
    }

    private List<Double> decades(double... digits) {
        List<Double> ticks = new ArrayList<>();
        for (int power = (int) Math.floor(Math.log10(low)); power <= Math.log10(high); power++) {
            double decade = Math.pow(10, power);
            DoubleStream.of(digits)
                    .map(digit -> digit * decade)
                    .filter(this::holds)
                    .forEach(ticks::add);
        }
        return ticks;
    }

    /** Equal steps, for less than a decade. */
    private List<Double> evenly() {
        List<Double> best = List.of();
        double decade = Math.pow(10, Math.floor(Math.log10(high - low)) - 1);
        for (double step : new double[] {1, 2, 2.5, 5, 10, 20, 25, 50}) {
            List<Double> ticks = new ArrayList<>();
            for (double i = Math.ceil(low / (step * decade)); holds(i * step * decade); i++) {
                ticks.add(i * step * decade);
            }
            if (best.isEmpty() || away(ticks) < away(best)) {
                best = ticks;
            }
        }
        return best;
    }

    private static int away(List<Double> ticks) {
        return Math.abs(2 * ticks.size() - FEWEST - MOST);
    }

    private boolean holds(double value) {
        return value >= low && value <= high;
    }
}
