package groupwright.drivetrain.loads;

import java.util.Objects;

/**
 * Rainflow counting in constant memory: each sample is first rounded to the nearest of fixed {@link LoadLevels}.
 *
 * <p>Memory: L levels allow L - 1 different ranges; each range still open is smaller than the one before, so never more
 * than L reversals are open (and one on its way in). Room for them is taken once; nothing grows, however long the
 * history. At most L - 1 different ranges come out, as exact multiples of the step.
 *
 * <p>Neglects what rounding loses: a range is off by at most one step, cycles within less than one step may vanish.
 * Otherwise as {@link Rainflow} and like it a design estimate, not proof of conformity.
 */
public final class SteppedRainflow {
    private final LoadLevels levels;
    private final Rainflow counter;

    /** A counter at the start of a history, which gives its cycles in the unit of the samples. */
    public SteppedRainflow(LoadLevels levels, CycleSink sink) {
        Objects.requireNonNull(sink, "a rainflow counter needs a sink");
        this.levels = levels;
        // Numbers of levels are counted, not loads: differences of whole numbers are exact, so equal ranges stay equal.
        this.counter = new Rainflow(
                (range, mean, count) ->
                        sink.accept(range * levels.step(), levels.lowest() + mean * levels.step(), count),
                levels.count() + 1);
    }

    /**
     * Takes the next sample.
     *
     * @throws IllegalArgumentException if it is not finite or lies more than half a step outside the levels
     * @throws IllegalStateException if the history is finished
     */
    public void add(double sample) {
        counter.add(levels.nearest(sample));
    }

    /**
     * Ends the history; see {@link Rainflow#finish()}.
     *
     * @throws IllegalStateException if the history is finished already
     */
    public RainflowSummary finish() {
        RainflowSummary steps = counter.finish();
        return new RainflowSummary(
                steps.samples(),
                steps.reversals(),
                steps.fullCycles(),
                steps.halfCycles(),
                steps.largestRange() * levels.step(),
                steps.deepest());
    }
}
