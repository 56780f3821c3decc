package groupwright.definition.figure;

/**
 * A number with its unit.
 *
 * @param value finite
 * @param unit its unit
 * @param remark what a reader must know beside the number, for example that the rider walks; empty mostly
 */
public record Quantity(double value, Unit unit, String remark) implements Answer {
    public Quantity {
        if (!Double.isFinite(value)) {
            throw new ArithmeticException("an answer must be finite, was " + value);
        }
        value = value + 0.0; // minus zero and zero are one value
    }

    /** A number without a remark. */
    public static Quantity of(double value, Unit unit) {
        return new Quantity(value, unit, "");
    }
}
