package groupwright.definition.storage;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.IntUnaryOperator;

/**
 * What becomes of things not forced.
 *
 * @param name for messages
 * @param states which of so many states of a name is left, 0 the oldest
 * @param lengths how much of so many bytes is left
 */
record Chance(String name, IntUnaryOperator states, IntUnaryOperator lengths) {
    /** Names all old or all new, contents all empty, half or whole, and some mixtures. */
    static List<Chance> several(int mixtures) {
        List<Chance> chances = new ArrayList<>();
        chances.addAll(extremes("old names", count -> 0));
        chances.addAll(extremes("new names", count -> count - 1));
        for (int seed = 1; seed <= mixtures; seed++) {
            Random random = new Random(seed);
            chances.add(new Chance("mixture of seed " + seed, random::nextInt, length -> random.nextInt(length + 1)));
        }
        return chances;
    }

    private static List<Chance> extremes(String name, IntUnaryOperator states) {
        return List.of(
                new Chance(name + ", empty", states, length -> 0),
                new Chance(name + ", cut off", states, length -> length / 2),
                new Chance(name + ", whole", states, length -> length));
    }

    int state(int count) {
        return states.applyAsInt(count);
    }

    int length(int length) {
        return lengths.applyAsInt(length);
    }
}
