package groupwright.drivetrain.search;

import java.util.Collection;
import java.util.Collections;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Cogs that no cassette may have.
 *
 * @param teeth their tooth counts
 */
public record ForbiddenCogs(SortedSet<Integer> teeth) implements Limit {
    /** Copies the set. */
    public ForbiddenCogs {
        teeth = Collections.unmodifiableSortedSet(new TreeSet<>(teeth));
    }

    /** Forbids cogs with these tooth counts. */
    public static ForbiddenCogs of(Collection<Integer> teeth) {
        return new ForbiddenCogs(new TreeSet<>(teeth));
    }

    @Override
    public String id() {
        return "forbidden-cogs";
    }

    @Override
    public String demand() {
        return "not have a cog of %s teeth".formatted(ForcedCogs.list(teeth, "or"));
    }

    @Override
    public boolean admitsEnds(int smallest, int largest) {
        return !teeth.contains(smallest);
    }

    @Override
    public boolean admitsStep(int position, int smaller, int larger) {
        return !teeth.contains(larger);
    }
}
