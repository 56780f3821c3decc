package groupwright.definition.session;

import groupwright.definition.history.Conflict;
import groupwright.definition.history.EditName;
import groupwright.definition.history.Ripple;
import groupwright.definition.record.Definition;
import java.util.List;

/**
 * One step of a session and what followed from it.
 *
 * @param kind what made it
 * @param name what was edited, undone, or changed by others
 * @param before the project before the step
 * @param ripple what the step changed, others' changes that were found while saving included
 * @param conflicts what of an undone edit was left because others changed it since, and places that wait for a decision
 *     from now on (those stand in {@link Standing#conflicts} too)
 * @param standing how the project stands after it
 * @param computations how many figures were computed again to answer all that is watched
 */
public record Step(
        Kind kind,
        EditName name,
        Definition before,
        Ripple ripple,
        List<Conflict> conflicts,
        Standing standing,
        long computations) {
    /** What makes a step. */
    public enum Kind {
        EDIT,
        UNDO,
        REDO,
        /** Others changed files. */
        OUTSIDE,
        /** A conflict was decided. */
        SETTLED,
        /** What had waited was saved, or the project was saved elsewhere. */
        SAVED
    }

    public Step {
        conflicts = List.copyOf(conflicts);
    }
}
