package groupwright.definition.figure;

import java.util.List;

/** Numbers of one unit, each at a named position, for example like positions at {@code 12-14}. */
public record Series(Unit unit, List<At> values) implements Answer {
    public Series {
        values = List.copyOf(values);
    }

    /** One number at its position. */
    public record At(String at, double value) {
        public At {
            if (!Double.isFinite(value)) {
                throw new ArithmeticException("an answer must be finite, was " + value + " at " + at);
            }
            value = value + 0.0; // minus zero and zero are one value
        }
    }
}
