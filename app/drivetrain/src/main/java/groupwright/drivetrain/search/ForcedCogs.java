package groupwright.drivetrain.search;

import java.util.Collection;
import java.util.Collections;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Cogs that each cassette must have.
 *
 * @param teeth their tooth counts
 */
public record ForcedCogs(SortedSet<Integer> teeth) implements Limit {
    /** Copies the set. */
    public ForcedCogs {
        teeth = Collections.unmodifiableSortedSet(new TreeSet<>(teeth));
    }

    /** Forces cogs with these tooth counts. */
    public static ForcedCogs of(Collection<Integer> teeth) {
        return new ForcedCogs(new TreeSet<>(teeth));
    }

    @Override
    public String id() {
        return "forced-cogs";
    }

    @Override
    public String demand() {
        return "have cogs of %s teeth".formatted(list(teeth, "and"));
    }

    @Override
    public boolean admitsEnds(int smallest, int largest) {
        return teeth.isEmpty() || smallest <= teeth.first() && teeth.last() <= largest;
    }

    /** A step must not jump over a forced cog. */
    @Override
    public boolean admitsStep(int position, int smaller, int larger) {
        return teeth.subSet(smaller + 1, larger).isEmpty();
    }

    static String list(SortedSet<Integer> teeth, String lastWord) {
        String text = teeth.stream().map(String::valueOf).collect(Collectors.joining(", "));
        int comma = text.lastIndexOf(", ");
        return comma < 0 ? text : text.substring(0, comma) + " " + lastWord + text.substring(comma + 1);
    }
}
