package groupwright.workbench.cassettes;

import groupwright.definition.record.Concept;
import groupwright.definition.record.RecordId;
import groupwright.documents.charts.ConceptSign;
import groupwright.documents.charts.StepBars;
import java.util.List;
import java.util.Optional;

/**
 * What the place has to know of the project.
 *
 * @param lead the concept in whose place cassettes are looked for
 * @param next what a new concept would be
 * @param limit what steps must not exceed
 * @param concepts how many concepts there are
 */
record CassettesSheet(
        Optional<Lead> lead,
        Next next,
        List<Riders> riders,
        Optional<StepBars.Limit> limit,
        int concepts,
        int requirements) {
    /** The concept in whose place cassettes are looked for. */
    record Lead(Concept concept, ConceptSign sign) {
        RecordId id() {
            return concept.id();
        }
    }

    /** The next free id of concepts. */
    record Next(RecordId id, ConceptSign sign) {}

    /** A rider group. */
    record Riders(RecordId id, String title) {}

    CassettesSheet {
        riders = List.copyOf(riders);
    }
}
