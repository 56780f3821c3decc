package groupwright.drivetrain.gearing;

import groupwright.drivetrain.quantity.Chainring;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What changing from one ring to the next larger one asks of the rider. Cost of each: O(n²) in the number of cogs. */
public final class FrontShifts {
    private FrontShifts() {}

    /**
     * The shifts that change to the next larger ring and make up for it at the rear.
     *
     * <p>For every gear in use whose ratio the next larger ring can give as well (lies between that ring's lowest and
     * highest gear in use) the gear there with the nearest ratio, by |ln|; of two equally near, the one with fewer cogs
     * to move. {@link Shift#cogsMoved()} is the number of rear shifts that make up for the front shift.
     *
     * @return smallest ring first, lowest gear first; empty with one ring or without overlap
     */
    public static List<Shift> madeUp(GearSet set) {
        List<Shift> shifts = new ArrayList<>();
        List<Chainring> rings = set.crankset().rings();
        for (int i = 1; i < rings.size(); i++) {
            List<Gear> larger = set.gearsOn(rings.get(i));
            for (Gear gear : set.gearsOn(rings.get(i - 1))) {
                if (covers(larger, gear)) {
                    nearest(set, gear, larger).ifPresent(shifts::add);
                }
            }
        }
        return List.copyOf(shifts);
    }

    /**
     * Overlap of two rings: how much higher the highest gear in use on the smaller ring is than the lowest on the
     * larger ring.
     *
     * @param set the gears
     * @param one a ring of the set
     * @param other another ring of the set
     * @return percent; negative if there is a gap; empty if one of the rings has no gear in use
     */
    public static OptionalDouble overlapPct(GearSet set, Chainring one, Chainring other) {
        List<Gear> smaller = set.gearsOn(one.compareTo(other) < 0 ? one : other);
        List<Gear> larger = set.gearsOn(one.compareTo(other) < 0 ? other : one);
        if (smaller.isEmpty() || larger.isEmpty()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(larger.get(0).stepToPct(smaller.get(smaller.size() - 1)));
    }

    private static boolean covers(List<Gear> ascending, Gear gear) {
        return !ascending.isEmpty()
                && gear.stepToPct(ascending.get(0)) <= 0
                && gear.stepToPct(ascending.get(ascending.size() - 1)) >= 0;
    }

    private static Optional<Shift> nearest(GearSet set, Gear from, List<Gear> candidates) {
        return candidates.stream()
                .map(to -> Shift.between(set, from, to))
                .min(Comparator.comparingDouble(FrontShifts::roundedDistance)
                        .thenComparingInt(shift -> Math.abs(shift.cogsMoved())));
    }

    private static double roundedDistance(Shift shift) {
        double ln =
                StrictMath.abs(StrictMath.log(shift.to().ratio() / shift.from().ratio()));
        return StrictMath.rint(ln * 1e12); // so that equally near gears compare equal
    }
}
