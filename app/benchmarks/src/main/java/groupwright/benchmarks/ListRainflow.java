package groupwright.benchmarks;

import java.util.ArrayList;
import java.util.List;

/**
 * Rainflow counting as one would write it first: the history in a list, its reversals in a second, counted cycles in a
 * third. Same rule as {@link groupwright.drivetrain.loads.Rainflow}, and as many steps for each sample.
 */
final class ListRainflow {
    /** A counted cycle. */
    record Counted(double range, double mean, double count) {}

    private ListRainflow() {}

    static List<Counted> count(List<Double> history) {
        List<Counted> cycles = new ArrayList<>();
        List<Double> open = new ArrayList<>();
        for (Double reversal : reversals(history)) {
            open.add(reversal);
            while (open.size() >= 3 && range(open, 1) >= range(open, 2)) {
                int end = open.size();
                if (end == 3) {
                    cycles.add(counted(open.get(0), open.get(1), 0.5));
                    open.remove(0);
                } else {
                    cycles.add(counted(open.get(end - 3), open.get(end - 2), 1));
                    open.remove(end - 2);
                    open.remove(end - 3);
                }
            }
        }
        for (int i = 1; i < open.size(); i++) {
            cycles.add(counted(open.get(i - 1), open.get(i), 0.5));
        }
        return cycles;
    }

    private static List<Double> reversals(List<Double> history) {
        List<Double> reversals = new ArrayList<>();
        reversals.add(history.get(0));
        double direction = 0;
        for (int i = 1; i < history.size(); i++) {
            double step = history.get(i) - history.get(i - 1);
            if (step * direction < 0) {
                reversals.add(history.get(i - 1));
            }
            direction = step == 0 ? direction : Math.signum(step);
        }
        reversals.add(history.get(history.size() - 1));
        return reversals;
    }

    private static double range(List<Double> open, int fromEnd) {
        int last = open.size() - fromEnd;
        return Math.abs(open.get(last) - open.get(last - 1));
    }

    private static Counted counted(double from, double to, double count) {
        return new Counted(Math.abs(to - from), (from + to) / 2, count);
    }
}
