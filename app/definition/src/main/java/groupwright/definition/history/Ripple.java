package groupwright.definition.history;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.ledger.View;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What differs between two states of a project and what follows from it. One comparison serves edit, undo, reload, import
 * preview, milestone and what-if.
 *
 * @param changes the fields that differ
 * @param effects the watched answers that differ
 */
public record Ripple(List<FieldChange> changes, List<Effect> effects) {
    public Ripple {
        changes = List.copyOf(changes);
        effects = List.copyOf(effects);
    }

    /** A watched answer that differs; nothing on the side where it is not watched. */
    public record Effect(Ask ask, Optional<Answer> before, Optional<Answer> after) {}

    /**
     * The ripple from one state to another. O(changed fields + watched answers + what must be asked again).
     *
     * @param watchedBefore what is watched in the first state
     * @param watchedAfter what is watched in the second
     */
    public static Ripple between(View before, View after, Collection<Ask> watchedBefore, Collection<Ask> watchedAfter) {
        Set<Ask> here = new LinkedHashSet<>(watchedBefore);
        Set<Ask> there = new LinkedHashSet<>(watchedAfter);
        Set<Ask> either = new LinkedHashSet<>(there);
        either.addAll(here);
        List<Effect> effects = new ArrayList<>();
        for (Ask ask : either) {
            Optional<Answer> was = here.contains(ask) ? Optional.of(before.ask(ask)) : Optional.empty();
            Optional<Answer> is = there.contains(ask) ? Optional.of(after.ask(ask)) : Optional.empty();
            if (!was.equals(is)) {
                effects.add(new Effect(ask, was, is));
            }
        }
        return new Ripple(RecordDiff.between(before.definition(), after.definition()), effects);
    }

    /** Whether nothing that is watched differs. */
    public boolean isQuiet() {
        return effects.isEmpty();
    }
}
