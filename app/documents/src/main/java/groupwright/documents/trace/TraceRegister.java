package groupwright.documents.trace;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Numbers the entries of one document while it is built. Not for several threads. */
public final class TraceRegister {
    private final Map<TraceEntry.Key, Integer> numbers = new HashMap<>(); // looked up only, never iterated
    private final List<TraceEntry> entries = new ArrayList<>();
    private final List<Integer> places = new ArrayList<>();

    /** Notes that the number stands at one more place. */
    public Use use(TraceEntry entry) {
        int number = numberOf(entry);
        int occurrence = places.get(number - 1) + 1;
        places.set(number - 1, occurrence);
        return new Use(number, occurrence);
    }

    /** All entries so far, joined by what they rest on, directly or through others. */
    public Trace trace() {
        List<List<Integer>> restsOn = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) { // grows while it runs: what an entry uses comes behind it
            restsOn.add(entries.get(i).uses().stream().map(this::numberOf).toList());
        }
        List<NumberedEntry> numbered = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            numbered.add(new NumberedEntry(i + 1, entries.get(i), places.get(i), restsOn.get(i)));
        }
        return new Trace(numbered);
    }

    /** The number of an entry, which joins the trace if it has not been used. */
    public int numberOf(TraceEntry entry) {
        return numbers.computeIfAbsent(entry.key(), key -> {
            entries.add(entry);
            places.add(0);
            return entries.size();
        });
    }
}
