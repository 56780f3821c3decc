package groupwright.drivetrain.gearing;

import groupwright.drivetrain.quantity.Bounds;
import java.util.ArrayList;
import java.util.List;

/** The gears a rider feels as different. */
public final class DistinctGears {
    /** Two gears closer than this share are felt as one (common practice, no source). */
    public static final double DEFAULT_THRESHOLD_SHARE = 0.04;

    private static final double ROUNDING = 1e-12; // 26/25 reaches a threshold of 0.04, whatever its last bit says

    private DistinctGears() {}

    /**
     * Walks up from the lowest gear and keeps each gear that lies at least the threshold above the last one kept.
     *
     * <p>Cost: O(n log n) in the number of gears.
     *
     * @param set the gears
     * @param thresholdShare least share between two gears kept, 0 to 1; 0 keeps all, also equal ratios
     * @return the gears kept, lowest first; never empty
     * @throws IllegalArgumentException if the threshold lies outside 0 to 1
     */
    public static List<Gear> of(GearSet set, double thresholdShare) {
        Bounds.within("the threshold between distinct gears", thresholdShare, 0, 1, "");
        List<Gear> kept = new ArrayList<>();
        for (Gear gear : set.gears()) {
            if (kept.isEmpty() || kept.get(kept.size() - 1).stepToPct(gear) / 100 >= thresholdShare - ROUNDING) {
                kept.add(gear);
            }
        }
        return List.copyOf(kept);
    }
}
