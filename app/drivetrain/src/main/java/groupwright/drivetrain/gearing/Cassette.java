package groupwright.drivetrain.gearing;

import groupwright.drivetrain.quantity.Bounds;
import groupwright.drivetrain.quantity.Cog;
import java.util.Arrays;
import java.util.List;

/**
 * The cogs at the rear wheel.
 *
 * @param cogs 1 to 20 cogs, smallest first, each with more teeth than the one before
 */
public record Cassette(List<Cog> cogs) {
    private static final int MOST_COGS = 20;

    /** Checks count and order and throws {@link IllegalArgumentException} naming the first pair out of order. */
    public Cassette {
        cogs = List.copyOf(cogs);
        Bounds.count("the number of cogs of a cassette", cogs.size(), 1, MOST_COGS);
        for (int i = 1; i < cogs.size(); i++) {
            int before = cogs.get(i - 1).teeth();
            int teeth = cogs.get(i).teeth();
            if (teeth <= before) {
                throw new IllegalArgumentException(
                        "the cogs of a cassette must ascend from the smallest, but %d is followed by %d"
                                .formatted(before, teeth));
            }
        }
    }

    /** The cassette with these tooth counts, smallest first. */
    public static Cassette of(int... teeth) {
        return new Cassette(Arrays.stream(teeth).mapToObj(Cog::new).toList());
    }

    /** The cog with the fewest teeth. */
    public Cog smallest() {
        return cogs.get(0);
    }

    /** The cog with the most teeth. */
    public Cog largest() {
        return cogs.get(cogs.size() - 1);
    }
}
