package groupwright.drivetrain.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Leaves those complete cassettes that no other beats, in order. */
final class Ranking {
    private Ranking() {}

    private record Entry(long[] vector, Sweep.End end) {}

    /** Ordinary dominance among cassettes of equal ends and count, and then, if all are compared, among all. */
    static List<Tie> of(Question question, Scale scale, List<Sweep.End> ends, Ticker ticker) {
        Map<Ends, List<Entry>> groups = new LinkedHashMap<>();
        for (Sweep.End end : ends) {
            Labels labels = end.labels();
            int label = end.label();
            long[] vector =
                    scale.vector(end.ends(), labels.rank(label), labels.ln2(label), labels.nm(label), labels.mg(label));
            groups.computeIfAbsent(end.ends(), any -> new ArrayList<>()).add(new Entry(vector, end));
        }
        List<Tie> ties = new ArrayList<>();
        List<Entry> all = new ArrayList<>();
        for (List<Entry> group : groups.values()) {
            List<Entry> best = unbeaten(group, ticker);
            if (question.comparesAll()) {
                all.addAll(best);
            } else {
                ties.addAll(ties(best));
            }
        }
        ties.addAll(ties(unbeaten(all, ticker)));
        return ties;
    }

    /** Sorted, so that whatever beats an entry stands before it. */
    private static List<Entry> unbeaten(List<Entry> entries, Ticker ticker) {
        List<Entry> sorted = new ArrayList<>(entries);
        sorted.sort(Comparator.comparing(Entry::vector, Arrays::compare));
        List<Entry> kept = new ArrayList<>();
        for (Entry entry : sorted) {
            ticker.check();
            if (kept.stream().noneMatch(other -> Tie.beats(other.vector(), entry.vector()))) {
                kept.add(entry);
            }
        }
        return kept;
    }

    private static List<Tie> ties(List<Entry> sorted) {
        List<Tie> ties = new ArrayList<>();
        for (int from = 0, to = 0; from < sorted.size(); from = to) {
            List<Sweep.End> equal = new ArrayList<>();
            while (to < sorted.size()
                    && Arrays.equals(sorted.get(from).vector(), sorted.get(to).vector())) {
                equal.add(sorted.get(to++).end());
            }
            ties.add(Tie.of(sorted.get(from).vector(), equal));
        }
        return ties;
    }
}
