package groupwright.definition.session;

import groupwright.definition.history.Conflict;
import groupwright.definition.history.Merge;
import groupwright.definition.record.Definition;
import java.util.ArrayList;
import java.util.List;

/**
 * What the session says and what it wants the folder to say. Both are the same but where a conflict is open: there the
 * folder keeps what others wrote until somebody decides, so that nobody's work is overwritten unseen.
 *
 * @param present what the session says
 * @param wanted what the folder is to say
 * @param open the conflicts, with both values as they are now
 */
record Sides(Definition present, Definition wanted, List<Conflict> open) {
    Sides {
        open = List.copyOf(open);
    }

    static Sides same(Definition definition) {
        return new Sides(definition, definition, List.of());
    }

    /** Conflicts where both sides have come to say the same are over. */
    private static Sides of(Definition present, Definition wanted, List<Conflict> conflicts) {
        List<Conflict> open = conflicts.stream()
                .map(c -> new Conflict(c.address(), c.base(), present.value(c.address()), wanted.value(c.address())))
                .filter(c -> !c.ours().equals(c.theirs()))
                .toList();
        return new Sides(present, open.isEmpty() ? present : wanted, open);
    }

    /** After an edit of what the session says; where a conflict is open the folder's side does not follow. */
    Sides moved(Definition next) {
        return of(next, open.isEmpty() ? next : Merge.of(present, wanted, next).merged(), open);
    }

    /**
     * After others changed the folder.
     *
     * @param base what the folder said when it was last read or saved
     * @param theirs what it says now
     */
    Sides joined(Definition base, Definition theirs) {
        Merge ours = Merge.of(base, present, theirs);
        List<Conflict> all = new ArrayList<>(open);
        ours.conflicts().stream()
                .filter(found -> open.stream().noneMatch(c -> c.address().equals(found.address())))
                .forEach(all::add);
        return of(ours.merged(), Merge.of(base, theirs, wanted).merged(), all);
    }

    /** With the folder to say at the conflict's place what the session says. */
    Sides oursKept(Conflict conflict) {
        return of(present, Merge.taking(wanted, present, conflict.address()), without(conflict));
    }

    /** With the session to say at the conflict's place what the folder says. */
    Sides theirsTaken(Conflict conflict) {
        return of(Merge.taking(present, wanted, conflict.address()), wanted, without(conflict));
    }

    private List<Conflict> without(Conflict settled) {
        return open.stream().filter(conflict -> !conflict.equals(settled)).toList();
    }
}
