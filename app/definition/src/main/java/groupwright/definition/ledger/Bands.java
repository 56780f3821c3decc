package groupwright.definition.ledger;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Band;
import groupwright.definition.figure.BandRule;
import groupwright.definition.figure.MissingSignal;
import groupwright.definition.figure.Quantity;
import groupwright.definition.record.Address;
import groupwright.definition.record.Amount;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/**
 * How well an answer is known: the root of the sum of squares of central differences over the inputs that state a band,
 * taken as independent. A figure with a closed form gives its own.
 *
 * <p>Neglected: correlation between inputs, and curvature within their bands. Cost: two runs of the figures between an
 * input and the answer, for each banded input. Where neither end of an input's band gives a number the band is not stated.
 */
final class Bands {
    private Bands() {}

    /**
     * The band of a settled answer.
     *
     * @param in for the reads of a closed form
     * @param dependsOn told each read and result that the band depends on beside the answer
     */
    static Band of(Ledger ledger, AnswerNode of, Reading in, Consumer<Node> dependsOn) {
        if (!(of.answer() instanceof Quantity quantity)) {
            return Band.NOT_STATED;
        }
        Optional<BandRule> rule = of.ask.figure().bandRule();
        return rule.isPresent() ? closedForm(rule.get(), quantity, in) : differences(ledger, of, quantity, dependsOn);
    }

    private static Band closedForm(BandRule rule, Quantity quantity, Reading in) {
        try {
            return rule.band(quantity, in);
        } catch (MissingSignal | IllegalArgumentException | ArithmeticException unknown) {
            return Band.NOT_STATED; // the answer itself tells what is missing or refused
        }
    }

    private static Band differences(Ledger ledger, AnswerNode of, Quantity middle, Consumer<Node> dependsOn) {
        Parts parts = parts(ledger, of, middle, dependsOn);
        if (parts.unbounded) {
            return Band.NOT_STATED;
        } else if (parts.found.isEmpty()) {
            return parts.unbanded;
        }
        double squares = 0;
        for (BandPart part : parts.found) {
            squares += part.half() * part.half();
        }
        return Band.around(middle.value(), Math.sqrt(squares));
    }

    /**
     * What each banded input adds to the band of a settled answer, largest first; nothing where the band comes from a closed
     * form, is not stated, or there is none.
     */
    static List<BandPart> parts(Ledger ledger, AnswerNode of) {
        if (!(of.answer() instanceof Quantity quantity)
                || of.ask.figure().bandRule().isPresent()) {
            return List.of();
        }
        Parts parts = parts(ledger, of, quantity, node -> {});
        return parts.unbounded
                ? List.of()
                : parts.found.stream()
                        .sorted(Comparator.comparingDouble((BandPart part) -> -Math.abs(part.half()))
                                .thenComparing(BandPart::address))
                        .toList();
    }

    /** What the banded inputs add, and what the band is where none has one. */
    private static final class Parts {
        private final List<BandPart> found = new ArrayList<>();
        private Band unbanded = Band.EXACT;
        private boolean unbounded;
    }

    private static Parts parts(Ledger ledger, AnswerNode of, Quantity middle, Consumer<Node> dependsOn) {
        Set<Node> behind = Collections.newSetFromMap(new IdentityHashMap<>());
        Set<InputNode> reads = Trace.reads(of, behind);
        reads.forEach(dependsOn);
        Consumer<Node> alsoUsed = node -> {
            if (behind.add(node)) { // read only at an end of the band
                dependsOn.accept(node);
            }
        };
        Parts parts = new Parts();
        for (InputNode input : reads) {
            List<Amount> given = Trace.amounts(input.value);
            parts.unbanded = given.isEmpty() ? parts.unbanded : Band.NOT_STATED;
            for (int i = 0; i < given.size(); i++) {
                if (given.get(i).isBanded()) {
                    Optional<Double> half = halfDifference(ledger, of.ask, middle, input, i, alsoUsed);
                    if (half.isEmpty()) {
                        parts.unbounded = true;
                        return parts;
                    }
                    parts.found.add(new BandPart(address(input), given.get(i), half.get()));
                }
            }
        }
        return parts;
    }

    /** Amounts are read from fields only. */
    private static Address address(InputNode input) {
        return ((FieldNode) input).read().address();
    }

    /**
     * Half the difference of the answers at both ends of an input's band; one-sided where one end has no number, nothing
     * where neither has.
     */
    private static Optional<Double> halfDifference(
            Ledger ledger, Ask ask, Quantity middle, InputNode input, int position, Consumer<Node> used) {
        Optional<Double> low = number(new Trial(ledger, input, shifted(input.value, position, -1), used).answer(ask));
        Optional<Double> high = number(new Trial(ledger, input, shifted(input.value, position, 1), used).answer(ask));
        if (low.isPresent() && high.isPresent()) {
            return Optional.of((high.get() - low.get()) / 2);
        }
        return low.or(() -> high).map(one -> one - middle.value());
    }

    private static Optional<Double> number(Answer answer) {
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
