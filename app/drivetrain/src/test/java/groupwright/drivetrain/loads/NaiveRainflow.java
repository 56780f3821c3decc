package groupwright.drivetrain.loads;

import java.util.ArrayList;
import java.util.List;

/** ASTM E1049-85, section 5.4.4, word by word on lists: slow, and sharing nothing with what it checks. */
final class NaiveRainflow {
    private NaiveRainflow() {}

    static List<Double> reversals(double[] history) {
        List<Double> distinct = new ArrayList<>();
        for (double value : history) {
            if (distinct.isEmpty() || distinct.get(distinct.size() - 1) != value) {
                distinct.add(value);
            }
        }
        List<Double> reversals = new ArrayList<>();
        for (int i = 0; i < distinct.size(); i++) {
            boolean end = i == 0 || i == distinct.size() - 1;
            if (end || (distinct.get(i) > distinct.get(i - 1)) == (distinct.get(i) > distinct.get(i + 1))) {
                reversals.add(distinct.get(i));
            }
        }
        return reversals;
    }

    static List<Cycle> cycles(double[] history) {
        List<Double> left = reversals(history);
        List<Cycle> cycles = new ArrayList<>();
        int at = 2;
        while (at < left.size()) {
            double x = Math.abs(left.get(at) - left.get(at - 1));
            double y = Math.abs(left.get(at - 1) - left.get(at - 2));
            if (x < y) {
                at++;
            } else if (at == 2) {
                cycles.add(cycle(left.remove(0), left.get(0), 0.5));
            } else {
                double first = left.remove(at - 2);
                cycles.add(cycle(first, left.remove(at - 2), 1));
                at = 2; // start over: the standard needs no such thrift, but no index can be wrong this way
            }
        }
        for (int i = 1; i < left.size(); i++) {
            cycles.add(cycle(left.get(i - 1), left.get(i), 0.5));
        }
        return cycles;
    }

    private static Cycle cycle(double from, double to, double count) {
        return new Cycle(Math.abs(to - from), (from + to) / 2, count);
    }
}
