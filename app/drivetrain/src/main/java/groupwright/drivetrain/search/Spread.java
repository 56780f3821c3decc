package groupwright.drivetrain.search;

import groupwright.drivetrain.quantity.Bounds;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/**
 * A few cassettes out of a large set, fit to be shown.
 *
 * <p>Rule: all, if there is room. Else the best in each chosen objective, the first of equal ones in the set's order;
 * the rest evenly along the set sorted by the first chosen objective, its two ends included. Deterministic.
 *
 * @param shown the cassettes chosen, in the order of the set
 * @param outOf how many the set has
 */
public record Spread(List<Found> shown, long outOf) {
    /** How many are shown unless stated otherwise. */
    public static final int USUAL = 500;

    /** Copies the list. */
    public Spread {
        shown = List.copyOf(shown);
    }

    /**
     * Chooses. Cost: O(v log v + most) with v different values in the set.
     *
     * @param most how many to show at most, 10 to 100,000
     * @throws IllegalArgumentException outside these
     */
    public static Spread of(BestSet set, int most) {
        Bounds.count("the number of cassettes to show", most, 10, 100_000);
        LongStream chosen = set.count() <= most
                ? LongStream.range(0, set.count())
                : choose(set, most).stream().mapToLong(Long::longValue);
        return new Spread(chosen.mapToObj(set::get).toList(), set.count());
    }

    private static SortedSet<Long> choose(BestSet set, int most) {
        SortedSet<Long> chosen = new TreeSet<>();
        List<Integer> byFirst = new ArrayList<>();
        for (int objective = set.question().objectives().size() - 1; objective >= 0; objective--) {
            byFirst = sorted(set, objective);
            chosen.add(set.firstOf(byFirst.get(0)));
        }
        long[] before = new long[byFirst.size() + 1];
        for (int i = 0; i < byFirst.size(); i++) {
            before[i + 1] = before[i] + set.ties().get(byFirst.get(i)).count();
        }
        // the bests may or may not fall on even places, so even places are made fewer until all fit
        for (int places = most; ; places--) {
            SortedSet<Long> all = new TreeSet<>(chosen);
            all.addAll(even(set, byFirst, before, places));
            if (all.size() <= most) {
                return all;
            }
        }
    }

    private static List<Integer> sorted(BestSet set, int objective) {
        return IntStream.range(0, set.ties().size())
                .boxed()
                .sorted(Comparator.comparingLong(tie -> set.ties().get(tie).vector()[objective]))
                .toList();
    }

    private static List<Long> even(BestSet set, List<Integer> byFirst, long[] before, int places) {
        List<Long> even = new ArrayList<>();
        int at = 0;
        for (int i = 0; i < places; i++) {
            // in floating point: the product may exceed a long, and evenness needs no last digit
            long place = Math.min(set.count() - 1, (long) ((double) i * (set.count() - 1) / (places - 1)));
            while (before[at + 1] <= place) {
                at++;
            }
            even.add(set.firstOf(byFirst.get(at)) + place - before[at]);
        }
        return even;
    }
}
