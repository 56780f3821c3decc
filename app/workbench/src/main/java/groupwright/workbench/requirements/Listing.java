package groupwright.workbench.requirements;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * The rows in sight.
 *
 * @param counts how many requirements belong to each facet, whatever the filter
 * @param shown how many requirements are in sight
 * @param lines their rows
 */
record Listing(Map<Facet, Integer> counts, int shown, List<Line> lines) {
    /** One row in sight. */
    record Line(Listed listed, Row row, Place place) {}

    /** Whether a row carries the name of its requirement. */
    enum Place {
        FIRST,
        FURTHER
    }

    Listing {
        counts = Map.copyOf(counts);
        lines = List.copyOf(lines);
    }

    /**
     * What a filter leaves of a sheet. O(n log n) in the requirements.
     *
     * @param changed whether the last step changed a requirement
     */
    static Listing of(RequirementsSheet sheet, Filter filter, Predicate<Listed> changed) {
        Map<Facet, Integer> counts = new EnumMap<>(Facet.class);
        for (Facet facet : Facet.values()) {
            counts.put(facet, 0);
        }
        List<Listed> left = new ArrayList<>();
        for (Listed listed : sheet.listed()) {
            boolean isChanged = changed.test(listed);
            listed.facets().forEach(facet -> counts.merge(facet, 1, Integer::sum));
            if (isChanged) {
                counts.merge(Facet.CHANGED, 1, Integer::sum);
            }
            boolean belongs = filter.facet() == Facet.CHANGED
                    ? isChanged
                    : listed.facets().contains(filter.facet());
            if (belongs && filter.passes(listed)) {
                left.add(listed);
            }
        }
        left.sort(filter.sorting().order());
        return new Listing(counts, left.size(), lines(left));
    }

    private static List<Line> lines(List<Listed> left) {
        List<Line> lines = new ArrayList<>();
        for (Listed listed : left) {
            for (int i = 0; i < listed.rows().size(); i++) {
                lines.add(new Line(listed, listed.rows().get(i), i == 0 ? Place.FIRST : Place.FURTHER));
            }
        }
        return lines;
    }
}
