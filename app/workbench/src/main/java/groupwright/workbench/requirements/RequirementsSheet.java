package groupwright.workbench.requirements;

import groupwright.definition.record.RecordId;
import java.util.List;
import java.util.Optional;

/**
 * All requirements of the project as they stand for the lead concept.
 *
 * @param summary for example {@code 49 for Tarnbeck, measured on the lead concept C-002}
 * @param lead the lead concept
 * @param listed in the order of ids, retired ones too
 * @param riders the rider groups one may look at
 */
record RequirementsSheet(String summary, Optional<RecordId> lead, List<Listed> listed, List<Group> riders) {
    /** A rider group by id and name. */
    record Group(RecordId id, String text) {}

    RequirementsSheet {
        listed = List.copyOf(listed);
        riders = List.copyOf(riders);
    }

    /** Nothing read yet. */
    static final RequirementsSheet NOTHING = new RequirementsSheet("", Optional.empty(), List.of(), List.of());
}
