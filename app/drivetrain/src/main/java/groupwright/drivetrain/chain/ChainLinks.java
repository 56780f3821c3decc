package groupwright.drivetrain.chain;

import groupwright.drivetrain.quantity.Bounds;

/** Lengths a chain can be made in. */
public final class ChainLinks {
    private static final double ROUNDING = 1e-9; // a length computed as 112.0000000001 is 112

    private ChainLinks() {}

    /**
     * The shortest chain of an even count of links that reaches, as inner and outer links alternate.
     *
     * <p>Neglected: offset links, which allow odd counts and are not used with derailleurs.
     *
     * @param lengthPitches length needed in pitches, above 0 and at most a million
     * @return links, even
     * @throws IllegalArgumentException if the length lies outside its range
     */
    public static int even(double lengthPitches) {
        Bounds.positive("the length of a chain", lengthPitches, "pitches");
        Bounds.within("the length of a chain", lengthPitches, 0, 1e6, "pitches");
        return 2 * (int) StrictMath.ceil((lengthPitches - ROUNDING) / 2);
    }
}
