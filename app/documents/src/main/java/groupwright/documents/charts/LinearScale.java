package groupwright.documents.charts;

import java.util.ArrayList;
import java.util.List;

/**
 * Values to places, evenly.
 *
 * @param least value at the start
 * @param most value at the end, above the least
 * @param start place of the least
 * @param end place of the most
 */
record LinearScale(double least, double most, double start, double end) {
    private static final double[] ROUND = {1, 2, 5, 10};

    /** A scale over some values with a little room at both ends; around a single value it is as wide as that value. */
    static LinearScale over(double[] values, double start, double end) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double value : values) {
            low = Math.min(low, value);
            high = Math.max(high, value);
        }
        double room = high > low ? 0.06 * (high - low) : Math.max(1, Math.abs(high)) / 2;
        return new LinearScale(low - room, high + room, start, end);
    }

    double place(double value) {
        return start + (value - least) / (most - least) * (end - start);
    }

    /** The distance of its ticks: 1, 2 or 5 of some power of ten, so that there are about so many. */
    double tick(int about) {
        double raw = (most - least) / about;
        double power = Math.pow(10, Math.floor(Math.log10(raw)));
        for (double round : ROUND) {
            if (round * power >= raw) {
                return round * power;
            }
        }
        return 10 * power;
    }

    /** Round values between the ends. */
    List<Double> ticks(int about) {
        double tick = tick(about);
        List<Double> ticks = new ArrayList<>();
        for (long i = (long) Math.ceil(least / tick); i * tick <= most; i++) {
            ticks.add(i * tick);
        }
        return ticks;
    }
}
