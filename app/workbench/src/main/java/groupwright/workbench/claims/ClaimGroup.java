package groupwright.workbench.claims;

import groupwright.definition.assessment.ClaimState;
import groupwright.definition.record.Claim;
import groupwright.workbench.components.Mark;
import java.util.Optional;

/** Claims by what they ask of the reader, most urgent first. */
enum ClaimGroup {
    /** A number moved after somebody signed; one under a newer formula too. */
    CHANGED(Optional.of(Mark.CHANGED)),
    UNSUPPORTED(Optional.of(Mark.MISSES)),
    PROPOSED(Optional.empty()),
    HOLDING(Optional.of(Mark.MEETS)),
    WITHDRAWN(Optional.empty()),
    /** No longer used; only behind its own facet. */
    RETIRED(Optional.empty());

    private final Optional<Mark> mark;

    ClaimGroup(Optional<Mark> mark) {
        this.mark = mark;
    }

    Optional<Mark> mark() {
        return mark;
    }

    /** Whether somebody has something to do. */
    boolean isOpen() {
        return this == CHANGED || this == UNSUPPORTED;
    }

    static ClaimGroup of(Claim claim, ClaimState state) {
        if (!claim.isCurrent()) {
            return RETIRED;
        }
        return switch (state) {
            case CHANGED_SINCE_APPROVAL, RECALCULATED -> CHANGED;
            case UNSUPPORTED -> claim.state() == Claim.State.WITHDRAWN ? WITHDRAWN : UNSUPPORTED;
            case PROPOSED -> PROPOSED;
            case HOLDS -> HOLDING;
            case WITHDRAWN -> WITHDRAWN;
        };
    }
}
