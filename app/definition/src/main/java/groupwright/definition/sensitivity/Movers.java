package groupwright.definition.sensitivity;

import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Quantity;
import groupwright.definition.ledger.View;
import groupwright.definition.ledger.Workings;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * What moves a number: every numeric field behind an answer is changed alone, by a stated change, and the answers ranked by
 * how far they move. One at a time is the plainest sensitivity analysis (Saltelli et al., Global Sensitivity Analysis, 2008,
 * chapter 1, from memory); it neglects what inputs do together, and how likely a change is: for that see the bands.
 *
 * @param change how much each input was changed
 * @param moving inputs that move the answer at all, most first
 * @param unmoved how many inputs leave the answer as it is
 * @param fixed how many numeric inputs could not be changed, since the record would refuse it
 */
public record Movers(StatedChange change, List<Effect> moving, int unmoved, int fixed) {
    public Movers {
        moving = List.copyOf(moving);
    }

    /**
     * What moves an answer; nothing for an answer that is no number. Cost: one fork, and in it one run of the figures between
     * input and answer, for each numeric input.
     */
    public static Movers of(View view, Ask ask, StatedChange change) {
        if (!(view.ask(ask) instanceof Quantity before)) {
            return new Movers(change, List.of(), 0, 0);
        }
        List<Effect> effects = new ArrayList<>();
        int unmoved = 0;
        int fixed = 0;
        for (Workings.FieldInput input : view.trace(ask)) {
            for (Trial trial : Trial.of(view.definition(), input, change)) {
                if (trial.changed().isEmpty()) {
                    fixed++;
                    continue;
                }
                Effect effect = new Effect(
                        input.address(),
                        trial.from(),
                        trial.to(),
                        before,
                        view.fork(trial.changed().get()).ask(ask));
                if (effect.weight() > 0) {
                    effects.add(effect);
                } else {
                    unmoved++;
                }
            }
        }
        Comparator<Effect> mostFirst =
                Comparator.comparingDouble(Effect::weight).reversed();
        List<Effect> ranked = effects.stream()
                .sorted(mostFirst.thenComparing(Effect::address).thenComparingDouble(Effect::from))
                .toList();
        return new Movers(change, ranked, unmoved, fixed);
    }

    /** The inputs that move it most. */
    public Stream<Effect> first(int most) {
        return moving.stream().limit(most);
    }
}
