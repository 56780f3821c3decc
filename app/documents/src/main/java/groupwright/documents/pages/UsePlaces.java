package groupwright.documents.pages;

import groupwright.documents.trace.Trace;
import groupwright.documents.trace.Use;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** On which pages numbers stand, as far as pages are laid out. */
final class UsePlaces {
    private final Trace trace;
    private final Map<Use, Integer> pageOf; // looked up only

    private UsePlaces(Trace trace, Map<Use, Integer> pageOf) {
        this.trace = trace;
        this.pageOf = pageOf;
    }

    /** Nothing is laid out yet. */
    static UsePlaces none(Trace trace) {
        return new UsePlaces(trace, Map.of());
    }

    /** What stands on some pages, the first of which is page 1. Cost grows with the numbers on them. */
    static UsePlaces on(List<Page> pages, Trace trace) {
        Map<Use, Integer> pageOf = new HashMap<>();
        for (int i = 0; i < pages.size(); i++) {
            for (Page.Placed placed : pages.get(i).slabs()) {
                for (Slab.Sighting sighting : placed.slab().sightings()) {
                    pageOf.putIfAbsent(sighting.use(), i + 1);
                }
            }
        }
        return new UsePlaces(trace, pageOf);
    }

    /** The pages where some numbers stand, in order, each with the first place on it. */
    Map<Integer, Use> firstOnPages(List<Integer> entries) {
        Map<Integer, Use> first = new TreeMap<>();
        for (int entry : entries) {
            for (Use use : trace.entry(entry).uses()) {
                Optional.ofNullable(pageOf.get(use)).ifPresent(page -> first.putIfAbsent(page, use));
            }
        }
        return first;
    }

    boolean sameAs(UsePlaces other) {
        return pageOf.equals(other.pageOf);
    }
}
