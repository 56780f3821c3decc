package groupwright.drivetrain.gearing;

import groupwright.drivetrain.quantity.Cog;

/**
 * A step between two cogs.
 *
 * @param smaller the cog with fewer teeth
 * @param larger the cog with more teeth
 */
public record Step(Cog smaller, Cog larger) {

    /** Throws {@link IllegalArgumentException} unless the second cog has more teeth than the first. */
    public Step {
        if (smaller.compareTo(larger) >= 0) {
            throw new IllegalArgumentException("a step goes from a smaller to a larger cog, not from %d to %d teeth"
                    .formatted(smaller.teeth(), larger.teeth()));
        }
    }

    /** The step between cogs with these tooth counts. */
    public static Step of(int smallerTeeth, int largerTeeth) {
        return new Step(new Cog(smallerTeeth), new Cog(largerTeeth));
    }

    /** The difference in teeth, at least 1. */
    public int teeth() {
        return larger.teeth() - smaller.teeth();
    }

    /** Size in percent: 100 · (larger / smaller - 1) (common practice, no source). */
    public double pct() {
        return 100.0 * teeth() / smaller.teeth();
    }

    /** Natural logarithm of larger / smaller: steps that follow one another add up. */
    public double ln() {
        return StrictMath.log((double) larger.teeth() / smaller.teeth());
    }

    /** Which of two steps is the larger in percent, decided in whole numbers. */
    public int compareSize(Step other) {
        return Integer.compare(teeth() * other.smaller.teeth(), other.teeth() * smaller.teeth());
    }
}
