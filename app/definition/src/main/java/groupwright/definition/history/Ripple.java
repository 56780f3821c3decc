package groupwright.definition.history;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.ledger.View;
import groupwright.definition.record.Definition;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
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
        return between(
                before.definition(), answers(before, watchedBefore), after.definition(), answers(after, watchedAfter));
    }

    /** What a view answers to these questions, in their order. */
    public static Map<Ask, Answer> answers(View view, Collection<Ask> asks) {
        Map<Ask, Answer> answers = new LinkedHashMap<>();
        asks.forEach(ask -> answers.computeIfAbsent(ask, view::ask));
        return answers;
    }

    /**
     * The same of answers that were asked already, as where one ledger moves from the first state to the second.
     *
     * @param answersBefore what is watched in the first state, with its answers
     * @param answersAfter what is watched in the second
     */
    public static Ripple between(
            Definition before, Map<Ask, Answer> answersBefore, Definition after, Map<Ask, Answer> answersAfter) {
        Set<Ask> either = new LinkedHashSet<>(answersAfter.keySet());
        either.addAll(answersBefore.keySet());
        List<Effect> effects = new ArrayList<>();
        for (Ask ask : either) {
            Optional<Answer> was = Optional.ofNullable(answersBefore.get(ask));
            Optional<Answer> is = Optional.ofNullable(answersAfter.get(ask));
            if (!was.equals(is)) {
                effects.add(new Effect(ask, was, is));
            }
        }
        return new Ripple(RecordDiff.between(before, after), effects);
    }

    /** Whether nothing that is watched differs. */
    public boolean isQuiet() {
        return effects.isEmpty();
    }
}
