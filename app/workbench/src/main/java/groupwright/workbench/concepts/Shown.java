package groupwright.workbench.concepts;

import groupwright.definition.record.Concept;

/** Which concepts stand side by side. */
enum Shown {
    WORKED_ON,
    WITH_PARKED,
    WITH_RETIRED;

    boolean includes(Concept concept) {
        return Standing.of(concept).ordinal() <= ordinal();
    }

    /** How a concept stands; those worked on come first. */
    enum Standing {
        WORKED_ON,
        PARKED,
        RETIRED;

        static Standing of(Concept concept) {
            if (!concept.isCurrent()) {
                return RETIRED;
            }
            return concept.state() == Concept.State.PARKED ? PARKED : WORKED_ON;
        }
    }
}
