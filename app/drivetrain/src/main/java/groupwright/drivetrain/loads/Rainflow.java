package groupwright.drivetrain.loads;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * Counts the cycles of a load history while it streams by: rainflow counting.
 *
 * <p>Rule: a range Y is closed by the range X after it as soon as X is at least as large. It counts as one cycle; if it
 * begins at the start of the history, as half a cycle, and the start moves on. What is left at the end counts as half
 * cycles. The first and the last sample are reversals. For n reversals the counts add up to (n - 1) / 2.
 *
 * <p>Source: ASTM E1049-85, section 5.4.4.
 *
 * <p>Memory: no sample is kept, only reversals whose range is still open. By the rule each open range is smaller than
 * the one before, so a history with L different values leaves at most L open reversals: 1,001 for a torque recorded in
 * steps of 0.1 between 0 and 100 N·m. Samples without steps have no such bound: an oscillation that dies down without
 * end leaves every reversal open (a threshold for small cycles would not help, ranges above it can still shrink in ever
 * smaller steps). {@link SteppedRainflow} rounds to steps and so needs constant memory for any history.
 *
 * <p>One history for each counter; a counter belongs to one thread. Each sample costs the same, averaged over the
 * history. A refused sample leaves the count as it was.
 *
 * <p>Design estimate, not proof of conformity: cycles shorter than the sampling resolves are not there to be counted, and
 * the order of the cycles is lost.
 */
public final class Rainflow {
    private static final int USUAL_DEPTH = 64;

    private final TurningPoints turning = new TurningPoints();
    private final CycleSink sink;
    private double[] open;
    private int depth;
    private int deepest;
    private long reversals;
    private long full;
    private long half;
    private double largest;

    /**
     * A counter at the start of a history.
     *
     * @param sink takes each cycle as it closes; it must not add samples to this counter
     */
    public Rainflow(CycleSink sink) {
        this(sink, USUAL_DEPTH);
    }

    /** With room for so many open reversals before memory grows. */
    Rainflow(CycleSink sink, int roomFor) {
        this.sink = Objects.requireNonNull(sink, "a rainflow counter needs a sink");
        open = new double[roomFor];
    }

    /** All cycles of a history, in the order in which they close, the half cycles that stay open last. */
    public static List<Cycle> cycles(double... history) {
        List<Cycle> cycles = new ArrayList<>();
        count((range, mean, count) -> cycles.add(new Cycle(range, mean, count)), history);
        return List.copyOf(cycles);
    }

    /** The spectrum of a history: how often each range occurs. */
    public static LoadSpectrum spectrum(double... history) {
        RangeCounts counts = new RangeCounts();
        count(counts, history);
        return counts.spectrum();
    }

    /**
     * Counts a whole history.
     *
     * @throws IllegalArgumentException if a sample is NaN, infinite or beyond half the largest number
     */
    public static RainflowSummary count(CycleSink sink, double... history) {
        Rainflow counter = new Rainflow(sink);
        for (double sample : history) {
            counter.add(sample);
        }
        return counter.finish();
    }

    /**
     * Takes the next sample.
     *
     * @throws IllegalArgumentException if it is NaN, infinite or beyond half the largest number
     * @throws IllegalStateException if the history is finished
     */
    public void add(double sample) {
        if (turning.add(sample)) {
            reversal(turning.point());
        }
    }

    /**
     * Ends the history: counts the ranges still open as half cycles, the oldest first.
     *
     * @return how much was counted
     * @throws IllegalStateException if the history is finished already
     */
    public RainflowSummary finish() {
        if (turning.end()) {
            reversal(turning.point());
        }
        for (int i = 1; i < depth; i++) {
            halfCycle(open[i - 1], open[i]);
        }
        depth = 0;
        return new RainflowSummary(turning.samples(), reversals, full, half, largest, deepest);
    }

    private void reversal(double load) {
        reversals++;
        if (depth == open.length) {
            open = Arrays.copyOf(open, 2 * depth);
        }
        open[depth++] = load;
        deepest = Math.max(deepest, depth);
        while (depth >= 3 && range(depth - 1) >= range(depth - 2)) {
            closeLastButOne();
        }
    }

    private double range(int index) {
        return Math.abs(open[index] - open[index - 1]);
    }

    private void closeLastButOne() {
        if (depth == 3) {
            halfCycle(open[0], open[1]);
            open[0] = open[1];
            open[1] = open[2];
            depth = 2;
        } else {
            full++;
            emit(open[depth - 3], open[depth - 2], 1);
            open[depth - 3] = open[depth - 1];
            depth -= 2;
        }
    }

    private void halfCycle(double from, double to) {
        half++;
        emit(from, to, 0.5);
    }

    private void emit(double from, double to, double count) {
        double range = Math.abs(to - from);
        largest = Math.max(largest, range);
        sink.accept(range, (from + to) / 2, count);
    }
}
