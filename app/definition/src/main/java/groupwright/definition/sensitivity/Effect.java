package groupwright.definition.sensitivity;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Quantity;
import groupwright.definition.record.Address;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What one input does to an answer.
 *
 * @param address the field; of a list of counts the list
 * @param from the input as it is
 * @param to the input as it was tried
 * @param before the answer as it is
 * @param after the answer with the input changed
 */
public record Effect(Address address, double from, double to, Quantity before, Answer after) {
    public Effect {
        Objects.requireNonNull(address, "address");
        Objects.requireNonNull(before, "before");
        Objects.requireNonNull(after, "after");
    }

    /** By how much the answer moves, in its unit; nothing where it is a number no longer. */
    public OptionalDouble difference() {
        return after instanceof Quantity quantity
                ? OptionalDouble.of(quantity.value() - before.value())
                : OptionalDouble.empty();
    }

    /** How much it matters: an input without which there is no answer matters most. */
    double weight() {
        return difference().isPresent() ? Math.abs(difference().getAsDouble()) : Double.POSITIVE_INFINITY;
    }
}
