package groupwright.benchmarks;

import java.util.ArrayList;
import java.util.List;

/** Values that none so far beats, each once. */
final class UnbeatenValues {
    private final List<double[]> kept = new ArrayList<>();

    void offer(double[] values) {
        for (double[] other : kept) {
            if (notAbove(other, values)) {
                return;
            }
        }
        kept.removeIf(other -> notAbove(values, other));
        kept.add(values);
    }

    private static boolean notAbove(double[] one, double[] other) {
        for (int i = 0; i < one.length; i++) {
            if (one[i] > other[i]) {
                return false;
            }
        }
        return true;
    }

    int size() {
        return kept.size();
    }
}
