package groupwright.drivetrain.gearing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * The gears in the order in which they get harder, each once.
 *
 * @param gears every gear in use, by rising ratio; of equal ratios the one on the ring just used comes first
 * @param shifts what the rider moves from each gear to the next
 */
public record ShiftSequence(List<Gear> gears, List<Shift> shifts) {

    /** Copies both lists. */
    public ShiftSequence {
        gears = List.copyOf(gears);
        shifts = List.copyOf(shifts);
    }

    /** The sequence through all gears in use. Cost: O(n log n) in the number of gears. */
    public static ShiftSequence of(GearSet set) {
        List<Gear> waiting = new ArrayList<>(set.gears());
        List<Gear> order = new ArrayList<>();
        while (!waiting.isEmpty()) {
            order.add(waiting.remove(nextPlace(waiting, order)));
        }
        List<Shift> shifts = IntStream.range(1, order.size())
                .mapToObj(i -> Shift.between(set, order.get(i - 1), order.get(i)))
                .toList();
        return new ShiftSequence(order, shifts);
    }

    private static int nextPlace(List<Gear> waiting, List<Gear> order) {
        Gear first = waiting.get(0);
        for (int i = 0; i < waiting.size() && first.stepToPct(waiting.get(i)) == 0; i++) {
            if (!order.isEmpty()
                    && order.get(order.size() - 1).ring().equals(waiting.get(i).ring())) {
                return i;
            }
        }
        return 0;
    }

    /** The largest step from a gear to the next, in percent; empty for a single gear. */
    public OptionalDouble largestStepPct() {
        return shifts.stream().mapToDouble(Shift::stepPct).max();
    }

    /**
     * Cadence in rpm just after each shift of the sequence, each from the same cadence before it, at the same speed.
     *
     * @param cadenceRpm cadence before each shift in rpm
     * @return one cadence for each shift, never above the one before it
     * @throws IllegalArgumentException if the cadence is negative or not finite
     */
    public List<Double> cadencesAfterRpm(double cadenceRpm) {
        return shifts.stream()
                .map(shift -> shift.from().cadenceAfterShiftRpm(shift.to(), cadenceRpm))
                .toList();
    }

    /** How many of the shifts move the chain to another ring. */
    public long frontShifts() {
        return shifts.stream().filter(shift -> shift.ringsMoved() != 0).count();
    }

    /** Cogs moved over the whole sequence, either way. */
    public int cogsShifted() {
        return shifts.stream().mapToInt(shift -> Math.abs(shift.cogsMoved())).sum();
    }
}
