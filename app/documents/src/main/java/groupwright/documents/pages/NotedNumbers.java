package groupwright.documents.pages;

import groupwright.documents.trace.Trace;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Numbers of a page that share a margin note.
 *
 * @param first entry number of the first
 * @param last entry number of the last
 * @param baseline of the first
 */
record NotedNumbers(int first, int last, double baseline) {
    /** From this many on, following numbers of one figure share a note. */
    private static final int SHARED_FROM = 3;

    int count() {
        return last - first + 1;
    }

    String label() {
        return count() == 1 ? Integer.toString(first) : first + "–" + last;
    }

    /** Each number once, in the order of the page; a table column of one figure makes one note. */
    static List<NotedNumbers> on(Page page, Trace trace) {
        List<NotedNumbers> runs = new ArrayList<>();
        for (Map.Entry<Integer, Double> next : firstBaselines(page).entrySet()) {
            int number = next.getKey();
            NotedNumbers before = runs.isEmpty() ? null : runs.get(runs.size() - 1);
            if (before != null && number == before.last() + 1 && sameFigure(trace, before.last(), number)) {
                runs.set(runs.size() - 1, new NotedNumbers(before.first(), number, before.baseline()));
            } else {
                runs.add(new NotedNumbers(number, number, next.getValue()));
            }
        }
        return apart(runs, firstBaselines(page));
    }

    private static List<NotedNumbers> apart(List<NotedNumbers> runs, Map<Integer, Double> baselines) {
        List<NotedNumbers> notes = new ArrayList<>();
        for (NotedNumbers run : runs) {
            if (run.count() >= SHARED_FROM) {
                notes.add(run);
            } else {
                for (int number = run.first(); number <= run.last(); number++) {
                    notes.add(new NotedNumbers(number, number, baselines.get(number)));
                }
            }
        }
        return notes;
    }

    private static boolean sameFigure(Trace trace, int one, int other) {
        return trace.entry(one)
                .entry()
                .figure()
                .equals(trace.entry(other).entry().figure());
    }

    private static Map<Integer, Double> firstBaselines(Page page) {
        Map<Integer, Double> baselines = new LinkedHashMap<>();
        for (Page.Placed placed : page.slabs()) {
            if (placed.slab().reach() == Slab.Reach.PAGE) {
                continue; // no room beside it
            }
            for (Slab.Sighting sighting : placed.slab().sightings()) {
                baselines.putIfAbsent(sighting.use().entry(), placed.top() + sighting.baseline());
            }
        }
        return baselines;
    }
}
