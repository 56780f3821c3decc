package groupwright.drivetrain.gearing;

import groupwright.drivetrain.quantity.Bounds;
import groupwright.drivetrain.quantity.Chainring;
import java.util.Arrays;
import java.util.List;

/**
 * The rings at the crank.
 *
 * @param rings 1 to 3 different rings; given in any order, kept smallest first
 */
public record Crankset(List<Chainring> rings) {
    private static final int MOST_RINGS = 3;

    /** Orders the rings and throws {@link IllegalArgumentException} if there are none, more than 3, or two alike. */
    public Crankset {
        rings = rings.stream().sorted().toList();
        Bounds.count("the number of rings of a crankset", rings.size(), 1, MOST_RINGS);
        for (int i = 1; i < rings.size(); i++) {
            if (rings.get(i).equals(rings.get(i - 1))) {
                throw new IllegalArgumentException("the rings of a crankset must differ, but two have %d teeth"
                        .formatted(rings.get(i).teeth()));
            }
        }
    }

    /** The crankset with these tooth counts, in any order. */
    public static Crankset of(int... teeth) {
        return new Crankset(Arrays.stream(teeth).mapToObj(Chainring::new).toList());
    }

    /** The ring with the fewest teeth. */
    public Chainring smallest() {
        return rings.get(0);
    }

    /** The ring with the most teeth. */
    public Chainring largest() {
        return rings.get(rings.size() - 1);
    }
}
