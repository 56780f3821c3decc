package groupwright.drivetrain.loads;

import groupwright.drivetrain.quantity.Bounds;
import java.util.OptionalDouble;

/**
 * How many cycles of a load a part bears: a straight line in logarithms of load and cycles (S-N or Woehler line).
 *
 * <p>Formula: N = N₀ · (S₀ / S)^m. Below the endurance limit no load does damage, however often it comes.
 *
 * <p>Design estimate, not proof of conformity: the line stands for one part, one failure share and one measure of load
 * (range or amplitude, the same as in the spectrum); means, notches and corrosion are only in it if they were in its test.
 *
 * @param slope m, above 0 and up to 50
 * @param load S₀, a load on the line, above 0
 * @param cycles N₀, the cycles it is borne, above 0
 * @param enduranceLimit load below which nothing is damaged; 0 if there is none
 */
public record SnLine(double slope, double load, double cycles, double enduranceLimit) {
    private static final double STEEPEST = 50;

    /** Throws {@link IllegalArgumentException} if a number lies outside its range. */
    public SnLine {
        checkSlope(slope);
        Bounds.positive("the load of a point on an S-N line", load, "");
        Bounds.positive("the cycles of a point on an S-N line", cycles, "");
        Bounds.notNegative("the endurance limit", enduranceLimit, "");
    }

    /** A line without endurance limit. */
    public SnLine(double slope, double load, double cycles) {
        this(slope, load, cycles, 0);
    }

    /**
     * The line through two points, without endurance limit: slope = ln(N₂ / N₁) / ln(S₁ / S₂).
     *
     * @throws IllegalArgumentException unless the larger load is borne fewer cycles
     */
    public static SnLine through(LoadBlock one, LoadBlock other) {
        LoadBlock large = one.load() > other.load() ? one : other;
        LoadBlock small = large == one ? other : one;
        if (large.load() == small.load() || large.cycles() >= small.cycles()) {
            throw new IllegalArgumentException(
                    "an S-N line needs two points, the larger load with fewer cycles, had %s and %s"
                            .formatted(one, other));
        }
        double slope = StrictMath.log(small.cycles() / large.cycles()) / StrictMath.log(large.load() / small.load());
        return new SnLine(slope, large.load(), large.cycles());
    }

    /** The same line with an endurance limit. */
    public SnLine withEnduranceLimit(double limit) {
        return new SnLine(slope, load, cycles, limit);
    }

    /**
     * Cycles until failure at a load of constant size; empty below the endurance limit, where there is no end.
     *
     * @throws IllegalArgumentException if the load is not finite and above 0
     */
    public OptionalDouble lifeCycles(double constantLoad) {
        Bounds.positive("the load", constantLoad, "");
        return constantLoad < enduranceLimit
                ? OptionalDouble.empty()
                : OptionalDouble.of(cycles * StrictMath.pow(load / constantLoad, slope));
    }

    /** Damage by one cycle of a load: 1 / N, 0 below the endurance limit. */
    double damageOfOne(double constantLoad) {
        return constantLoad < enduranceLimit ? 0 : StrictMath.pow(constantLoad / load, slope) / cycles;
    }

    static void checkSlope(double slope) {
        if (!(slope > 0 && slope <= STEEPEST)) { // written so that NaN fails too
            throw new IllegalArgumentException(
                    "the slope of an S-N line must be above 0 and at most %s, was %s".formatted(STEEPEST, slope));
        }
    }
}
