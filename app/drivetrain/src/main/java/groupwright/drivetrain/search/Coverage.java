package groupwright.drivetrain.search;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/**
 * How many cassettes an answer speaks for. Always {@code candidates = admitted + sum of removed}.
 *
 * @param candidates cassettes within ends and count, limits not looked at
 * @param removed for each limit, in the order of {@link Limits}, what it removes
 * @param admitted cassettes that keep all limits; the best are searched among all of these
 */
public record Coverage(BigInteger candidates, List<Removed> removed, BigInteger admitted) {
    /** Copies the list. */
    public Coverage {
        removed = List.copyOf(removed);
    }

    /**
     * What one limit removes.
     *
     * @param limit the limit
     * @param cassettes how many cassettes keep all limits before this one in the list but not this one
     */
    public record Removed(Limit limit, BigInteger cassettes) {}

    /**
     * Counts, by dynamic programming and without listing a cassette.
     *
     * <p>Cost: O(cogs · teeth²) for each limit and smallest cog; times teeth with a limit that looks at two steps; times
     * ends and counts with a constant shape.
     */
    public static Coverage of(Question question) {
        Admission admission = Admission.ofAll(question);
        BigInteger candidates = Counting.admitted(question, admission);
        BigInteger left = candidates;
        List<Removed> removed = new ArrayList<>();
        for (Limit limit : question.limits().all()) {
            admission = admission.and(limit);
            BigInteger kept = Counting.admitted(question, admission);
            removed.add(new Removed(limit, left.subtract(kept)));
            left = kept;
        }
        return new Coverage(candidates, removed, left);
    }
}
