package groupwright.workbench.cassettes;

import java.util.ArrayList;
import java.util.List;

/**
 * From numbers to places along a line.
 *
 * @param low value at the beginning
 * @param high value at the end
 * @param step from one tick to the next
 */
record Axis(double low, double high, double step) {
    private static final double MOST_TICKS = 6;
    private static final double AIR = 0.04;

    /** An axis for some values, with five to seven round ticks. */
    static Axis of(List<Double> values, int decimals) {
        double least = values.stream().min(Double::compare).orElse(0.0);
        double most = values.stream().max(Double::compare).orElse(1.0);
        double width = Math.max(most - least, Math.pow(10, -decimals));
        double rough = width / MOST_TICKS;
        double ten = Math.pow(10, Math.floor(Math.log10(rough)));
        double share = rough / ten;
        double step = share <= 1 ? ten : share <= 2 ? 2 * ten : share <= 5 ? 5 * ten : 10 * ten;
        return new Axis(least - AIR * width, most + 2 * AIR * width, step);
    }

    /** From 0 at the beginning to 1 at the end. */
    double share(double value) {
        return (value - low) / (high - low);
    }

    List<Double> ticks() {
        List<Double> ticks = new ArrayList<>();
        for (double k = Math.ceil(low / step); k * step <= high; k++) {
            ticks.add(k * step);
        }
        return ticks;
    }

    /** As many decimals as ticks need. */
    int decimals() {
        return (int) Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
    }
}
