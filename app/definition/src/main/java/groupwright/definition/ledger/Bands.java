package groupwright.definition.ledger;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Band;
import groupwright.definition.figure.BandRule;
import groupwright.definition.figure.Quantity;
import groupwright.definition.record.Amount;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * How well an answer is known: the root of the sum of squares of central differences over the inputs that state a band,
 * taken as independent. A figure with a closed form gives its own.
 *
 * <p>Neglected: correlation between inputs, and curvature within their bands. Cost: two runs of the figures between an
 * input and the answer, for each banded input.
 */
final class Bands {
    private Bands() {}

    /**
     * The band of a settled answer.
     *
     * @param in for the reads of a closed form
     * @param behind collects the reads the band depends on
     */
    static Band of(Ledger ledger, AnswerNode of, Reading in, Set<InputNode> behind) {
        if (!(of.answer() instanceof Quantity quantity)) {
            return Band.NOT_STATED;
        }
        Optional<BandRule> rule = of.ask.figure().bandRule();
        if (rule.isPresent()) {
            return rule.get().band(quantity, in);
        }
        behind.addAll(Trace.reads(of));
        double squares = 0;
        boolean amounts = false;
        boolean banded = false;
        for (InputNode input : behind) {
            List<Amount> given = Trace.amounts(input.value);
            amounts |= !given.isEmpty();
            for (int i = 0; i < given.size(); i++) {
                if (given.get(i).isBanded()) {
                    double half = halfDifference(ledger, of, quantity, input, i);
                    squares += half * half;
                    banded = true;
                }
            }
        }
        if (!banded) {
            return amounts ? Band.NOT_STATED : Band.EXACT;
        }
        return Band.around(quantity.value(), Math.sqrt(squares));
    }

    /** Half the difference of the answers at both ends of an input's band; one-sided where one end is refused. */
    private static double halfDifference(Ledger ledger, AnswerNode of, Quantity middle, InputNode input, int position) {
        Optional<Double> low = at(ledger, of, input, position, -1);
        Optional<Double> high = at(ledger, of, input, position, 1);
        if (low.isPresent() && high.isPresent()) {
            return (high.get() - low.get()) / 2;
        }
        return low.or(() -> high).map(one -> one - middle.value()).orElse(0.0);
    }

    private static Optional<Double> at(Ledger ledger, AnswerNode of, InputNode input, int position, int side) {
        Object shifted = shifted(input.value, position, side);
        Answer answer = Fork.trial(ledger, Map.of(input, shifted)).ask(of.ask);
        return answer instanceof Quantity quantity ? Optional.of(quantity.value()) : Optional.empty();
    }

    private static Object shifted(Object value, int position, int side) {
        if (value instanceof Optional<?> optional) {
            return optional.map(inner -> shifted(inner, position, side));
        } else if (value instanceof List<?> list) {
            List<Object> copy = new ArrayList<>(list);
            copy.set(position, shifted(copy.get(position), 0, side));
            return List.copyOf(copy);
        }
        Amount amount = (Amount) value;
        return amount.withValue(amount.value() + side * amount.plusMinus());
    }
}
