package groupwright.workbench.requirements;

import groupwright.definition.figure.Ask;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Requirement;
import groupwright.workbench.components.Ladder;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * One requirement as it stands for the lead concept.
 *
 * @param facets what it belongs to, whatever the last step changed
 * @param margin the worst margin of its criteria in percent of the target
 * @param verdict the question for its worst verdict; nothing without a lead concept
 * @param words everything one may look for, in lower case
 * @param rows at least one
 */
record Listed(
        RecordId id,
        String title,
        Requirement.Kind kind,
        int weight,
        List<RecordId> riders,
        Ladder ladder,
        Set<Facet> facets,
        OptionalDouble margin,
        Optional<Ask> verdict,
        String words,
        List<Row> rows) {
    Listed {
        riders = List.copyOf(riders);
        facets = Set.copyOf(facets);
        rows = List.copyOf(rows);
        if (rows.isEmpty()) {
            throw new IllegalArgumentException(id + " needs a row");
        }
    }

    /** Whether it is about a rider group; one that names none is about all. */
    boolean isAbout(RecordId group) {
        return riders.isEmpty() || riders.contains(group);
    }
}
