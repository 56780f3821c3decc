package groupwright.drivetrain.gearing;

import java.util.List;
import java.util.OptionalDouble;

/** How far the lowest and the highest gear lie apart. */
public final class GearRange {
    private GearRange() {}

    /**
     * Range over the gears in use, in percent; 100 for a single gear.
     *
     * <p>Formula: 100 · highest ratio / lowest ratio (common practice, no source).
     */
    public static double pct(GearSet set) {
        return pct(set.gears());
    }

    /**
     * The same without the gears on the smallest cog, which is the one that wears and grinds first.
     *
     * @return percent; empty if no other cog is in use
     */
    public static OptionalDouble withoutSmallestCogPct(GearSet set) {
        List<Gear> others = set.gears().stream()
                .filter(gear -> !gear.cog().equals(set.cassette().smallest()))
                .toList();
        return others.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(pct(others));
    }

    private static double pct(List<Gear> ascending) {
        Gear low = ascending.get(0);
        Gear high = ascending.get(ascending.size() - 1);
        // whole numbers as long as possible: 10 to 51 teeth is 510, not 509.99999999999994
        return 100.0
                * (high.ring().teeth() * low.cog().teeth())
                / (high.cog().teeth() * low.ring().teeth());
    }
}
