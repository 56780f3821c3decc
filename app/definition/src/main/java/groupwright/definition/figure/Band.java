package groupwright.definition.figure;

/** How well an answer is known. */
public sealed interface Band {
    /** Nothing but whole counts went in: there is no band. */
    record Exact() implements Band {}

    /** Numbers went in of which none states how well it is known. */
    record NotStated() implements Band {}

    /** The answer lies between these two, as far as the bands of its inputs tell. */
    record Between(double low, double high) implements Band {
        public Between {
            if (!(low <= high)) {
                throw new IllegalArgumentException("a band runs from low to high, was " + low + " to " + high);
            }
        }
    }

    Band EXACT = new Exact();
    Band NOT_STATED = new NotStated();

    /** A band of this half width around a value. */
    static Band around(double value, double halfWidth) {
        return new Between(value - halfWidth, value + halfWidth);
    }
}
