package groupwright.drivetrain.gearing;

import groupwright.drivetrain.quantity.Chainring;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * All gears of a crankset with a cassette, less those that are excluded from use.
 *
 * @param crankset the rings
 * @param cassette the cogs
 * @param excluded gears not to be used, for example the largest ring with the largest cog; kept by rising ratio
 */
public record GearSet(Crankset crankset, Cassette cassette, Set<Gear> excluded) {

    /**
     * Throws {@link IllegalArgumentException} if an excluded gear is none of this crankset and cassette, or if no gear
     * would be left.
     */
    public GearSet {
        excluded = Collections.unmodifiableSortedSet(new TreeSet<>(excluded));
        for (Gear gear : excluded) {
            if (!crankset.rings().contains(gear.ring()) || !cassette.cogs().contains(gear.cog())) {
                throw new IllegalArgumentException("excluded gear %d x %d is not on this crankset and cassette"
                        .formatted(gear.ring().teeth(), gear.cog().teeth()));
            }
        }
        if (excluded.size() == crankset.rings().size() * cassette.cogs().size()) {
            throw new IllegalArgumentException("every gear is excluded, at least one must stay in use");
        }
    }

    /** All gears of the crankset with the cassette. */
    public static GearSet of(Crankset crankset, Cassette cassette) {
        return new GearSet(crankset, cassette, Set.of());
    }

    /** The gears in use, lowest ratio first. Cost: O(n log n) in the number of gears. */
    public List<Gear> gears() {
        return combinations().filter(gear -> !excluded.contains(gear)).sorted().toList();
    }

    /** The gears in use on one ring, lowest ratio first; none if the ring is not on the crankset. */
    public List<Gear> gearsOn(Chainring ring) {
        return gears().stream().filter(gear -> gear.ring().equals(ring)).toList();
    }

    /** The gear in use with the lowest ratio. */
    public Gear lowest() {
        return gears().get(0);
    }

    /** The gear in use with the highest ratio. */
    public Gear highest() {
        List<Gear> gears = gears();
        return gears.get(gears.size() - 1);
    }

    private Stream<Gear> combinations() {
        return crankset.rings().stream()
                .flatMap(ring -> cassette.cogs().stream().map(cog -> new Gear(ring, cog)));
    }
}
