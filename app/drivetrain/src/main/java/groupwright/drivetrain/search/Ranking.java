package groupwright.drivetrain.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** Leaves those complete cassettes that no other beats, in order. */
final class Ranking {
    /** Stands for all ends and counts. */
    private static final Ends ALL = new Ends(0, 0, 0);

    private Ranking() {}

    private record Entry(long[] vector, Sweep.End end) {}

    /** Ordinary dominance among cassettes of equal ends and count, and then, if all are compared, among all. */
    static List<Tie> of(Question question, Scale scale, List<Sweep.End> ends, Ticker ticker) {
        SortedMap<Ends, List<Entry>> groups = new TreeMap<>();
        for (Sweep.End end : ends) {
            Labels labels = end.labels();
            int label = end.label();
            long[] vector =
                    scale.vector(end.ends(), labels.rank(label), labels.ln2(label), labels.nm(label), labels.mg(label));
            groups.computeIfAbsent(question.comparesAll() ? ALL : end.ends(), any -> new ArrayList<>())
                    .add(new Entry(vector, end));
        }
        List<Tie> best = new ArrayList<>();
        for (List<Entry> group : groups.values()) {
            best.addAll(unbeaten(ties(group), ticker));
        }
        return best;
    }

    private static List<Tie> ties(List<Entry> entries) {
        entries.sort(Comparator.comparing(Entry::vector, Arrays::compare));
        List<Tie> ties = new ArrayList<>();
        for (int from = 0, to = 0; from < entries.size(); from = to) {
            long[] vector = entries.get(from).vector();
            List<Sweep.End> equal = new ArrayList<>(1);
            while (to < entries.size() && Arrays.equals(vector, entries.get(to).vector())) {
                equal.add(entries.get(to++).end());
            }
            ties.add(Tie.of(vector, equal));
        }
        return ties;
    }

    /** Sorted and all different, so that whatever beats one stands before it. */
    private static List<Tie> unbeaten(List<Tie> sorted, Ticker ticker) {
        List<Tie> kept = new ArrayList<>();
        List<long[]> asked = new ArrayList<>();
        for (Tie tie : sorted) {
            if (!beaten(tie.vector(), asked)) {
                ticker.check();
                kept.add(tie);
                asked.add(tie.vector());
            }
        }
        return kept;
    }

    /** What has beaten one will beat the next: it is asked earlier from now on. */
    private static boolean beaten(long[] vector, List<long[]> asked) {
        for (int k = 0; k < asked.size(); k++) {
            if (notAbove(asked.get(k), vector)) {
                Collections.swap(asked, k, k / 2);
                return true;
            }
        }
        return false;
    }

    private static boolean notAbove(long[] one, long[] other) {
        for (int i = one.length - 1; i > 0; i--) { // the first is known by the order
            if (one[i] > other[i]) {
                return false;
            }
        }
        return true;
    }
}
