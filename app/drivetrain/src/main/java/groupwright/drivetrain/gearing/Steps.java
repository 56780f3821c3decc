package groupwright.drivetrain.gearing;

import groupwright.drivetrain.quantity.Cog;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/** The steps of a cassette and how even they are. Cost of each: O(n) in the number of cogs. */
public final class Steps {
    private Steps() {}

    /** The steps between neighbouring cogs, smallest first; none for a single cog. Their product is the range. */
    public static List<Step> of(Cassette cassette) {
        return of(cassette, 0);
    }

    /**
     * The steps that matter above a tooth count: between the smallest cogs a step of two teeth cannot be small.
     *
     * @param cassette the cogs
     * @param fromTeeth a pair counts when its smaller cog has at least so many teeth
     * @return the steps, smallest cogs first
     */
    public static List<Step> of(Cassette cassette, int fromTeeth) {
        List<Cog> cogs = cassette.cogs();
        return IntStream.range(1, cogs.size())
                .filter(i -> cogs.get(i - 1).teeth() >= fromTeeth)
                .mapToObj(i -> new Step(cogs.get(i - 1), cogs.get(i)))
                .toList();
    }

    /** The largest step in percent, the first of equal ones; empty if there is no step. */
    public static Optional<Step> largest(List<Step> steps) {
        return steps.stream().reduce((a, b) -> b.compareSize(a) > 0 ? b : a);
    }

    /** Arithmetic mean of the steps in percent; empty if there is no step. */
    public static OptionalDouble meanPct(List<Step> steps) {
        return steps.stream().mapToDouble(Step::pct).average();
    }

    /**
     * The step which, repeated as often, would cover the same range: 100 · (product of (larger / smaller))^(1/n) - 100.
     *
     * <p>Never above {@link #meanPct}, and equal to it only if all steps are.
     *
     * @return percent; empty if there is no step
     */
    public static OptionalDouble evenStepPct(List<Step> steps) {
        OptionalDouble mean = steps.stream().mapToDouble(Step::ln).average();
        return mean.isPresent() ? OptionalDouble.of(100 * StrictMath.expm1(mean.getAsDouble())) : mean;
    }

    /**
     * Unevenness: root mean square deviation of ln(larger / smaller) from its mean, times 100.
     *
     * <p>About the spread of the steps in percent; 0 for a geometric ladder. Own definition: equal ratios feel equal.
     *
     * @return percent; empty if there is no step
     */
    public static OptionalDouble unevennessPct(List<Step> steps) {
        OptionalDouble mean = steps.stream().mapToDouble(Step::ln).average();
        if (mean.isEmpty()) {
            return mean;
        }
        double variance = steps.stream()
                .mapToDouble(step -> square(step.ln() - mean.getAsDouble()))
                .average()
                .orElseThrow();
        return OptionalDouble.of(100 * StrictMath.sqrt(variance));
    }

    /**
     * Step change: the largest difference in size between a step and the next one in the list.
     *
     * @return percentage points, 0 or more; empty with fewer than two steps
     */
    public static OptionalDouble changePct(List<Step> steps) {
        return IntStream.range(1, steps.size())
                .mapToDouble(i ->
                        StrictMath.abs(steps.get(i).pct() - steps.get(i - 1).pct()))
                .max();
    }

    private static double square(double x) {
        return x * x;
    }
}
