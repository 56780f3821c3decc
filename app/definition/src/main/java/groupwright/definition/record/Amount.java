package groupwright.definition.record;

/**
 * A number that somebody entered, with how well it is known.
 *
 * <p>In JSON a plain number, or {@code {"value": 0.016, "plusMinus": 0.0016}}.
 *
 * @param value finite, in the unit that ends the field's name
 * @param plusMinus half width of the band around the value, in the same unit; 0 where no band was stated
 */
public record Amount(double value, double plusMinus) {
    public Amount {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a number must be finite, was " + value);
        }
        if (!(plusMinus >= 0 && Double.isFinite(plusMinus))) {
            throw new IllegalArgumentException("plusMinus must be finite and not below 0, was " + plusMinus);
        }
        plusMinus = plusMinus + 0.0;
        value = value + 0.0; // minus zero and zero are one value
    }

    /** A number without a stated band. */
    public static Amount of(double value) {
        return new Amount(value, 0);
    }

    /** Whether a band was stated. */
    public boolean isBanded() {
        return plusMinus > 0;
    }

    /** The same band around another value. */
    public Amount withValue(double other) {
        return new Amount(other, plusMinus);
    }
}
