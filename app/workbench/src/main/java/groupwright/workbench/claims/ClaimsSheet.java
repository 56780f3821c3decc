package groupwright.workbench.claims;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** All claims, those that ask most of the reader first. */
record ClaimsSheet(List<ClaimRow> rows) {
    static final ClaimsSheet NOTHING = new ClaimsSheet(List.of());

    ClaimsSheet {
        rows = List.copyOf(rows);
    }

    /** How many stand in each group. */
    Map<ClaimGroup, Integer> counts() {
        Map<ClaimGroup, Integer> counts = new EnumMap<>(ClaimGroup.class);
        for (ClaimGroup group : ClaimGroup.values()) {
            counts.put(group, 0);
        }
        rows.forEach(row -> counts.merge(row.group(), 1, Integer::sum));
        return counts;
    }

    /** The claims of a group. */
    List<ClaimRow> of(ClaimGroup group) {
        return rows.stream().filter(row -> row.group() == group).toList();
    }
}
