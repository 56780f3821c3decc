package groupwright.documents.project;

import groupwright.definition.record.Definition;
import groupwright.definition.record.RecordId;
import groupwright.documents.charts.ConceptSign;
import java.util.Optional;

/** The signs of a project's concepts. */
public final class ConceptSigns {
    private ConceptSigns() {}

    /** A concept keeps its sign for ever, so it comes from its number and not from what else is there. */
    public static ConceptSign of(Definition definition, RecordId concept) {
        boolean lead = definition.project().leadConcept().equals(Optional.of(concept));
        return new ConceptSign(
                Math.max(1, concept.number()), lead ? ConceptSign.Standing.LEAD : ConceptSign.Standing.OTHER);
    }
}
