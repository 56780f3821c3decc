package groupwright.drivetrain.quantity;

/**
 * One toothed wheel of a cassette, at the rear wheel.
 *
 * @param teeth number of teeth, 5 to 80: fewer than 5 leave no polygon a chain could run on, more than 80 is a slip of
 *     the keyboard (common practice, no source)
 */
public record Cog(int teeth) implements Comparable<Cog> {
    private static final int LEAST = 5;
    private static final int MOST = 80;

    /** Checks the tooth count and throws {@link IllegalArgumentException} if it lies outside 5 to 80. */
    public Cog {
        Bounds.count("the number of teeth of a cog", teeth, LEAST, MOST);
    }

    /** Fewer teeth come first. */
    @Override
    public int compareTo(Cog other) {
        return Integer.compare(teeth, other.teeth);
    }
}
