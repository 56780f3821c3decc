package groupwright.drivetrain.quantity;

/**
 * One toothed wheel at the crank.
 *
 * @param teeth number of teeth, 5 to 120: fewer than 5 leave no polygon a chain could run on, more than 120 is a slip
 *     of the keyboard (common practice, no source)
 */
public record Chainring(int teeth) implements Comparable<Chainring> {
    private static final int LEAST = 5;
    private static final int MOST = 120;

    /** Checks the tooth count and throws {@link IllegalArgumentException} if it lies outside 5 to 120. */
    public Chainring {
        Bounds.count("the number of teeth of a chainring", teeth, LEAST, MOST);
    }

    /** Fewer teeth come first. */
    @Override
    public int compareTo(Chainring other) {
        return Integer.compare(teeth, other.teeth);
    }
}
