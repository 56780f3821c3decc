package groupwright.drivetrain.search;

import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.gearing.ShiftPositions;
import groupwright.drivetrain.gearing.Step;
import groupwright.drivetrain.gearing.Steps;
import groupwright.drivetrain.mass.SprocketMass;
import java.util.List;

/**
 * A cassette's value in each objective.
 *
 * @param largestStepPct largest step in percent; 0 without a step
 * @param unevennessPct unevenness of the steps in percent ({@link Steps#unevennessPct}); 0 without a step
 * @param mismatchMm sum over all pairs of the phase mismatch in mm ({@link ShiftPositions#phaseMismatchMm})
 * @param massG estimated mass of the sprockets in g
 * @param gearRangePct 100 · largest cog / smallest cog
 */
public record Measures(
        double largestStepPct, double unevennessPct, double mismatchMm, double massG, double gearRangePct) {

    /** Measures a cassette. Cost: O(n) in the number of cogs. */
    public static Measures of(Cassette cassette, SprocketMass mass) {
        List<Step> steps = Steps.of(cassette);
        return new Measures(
                Steps.largest(steps).map(Step::pct).orElse(0.0),
                Steps.unevennessPct(steps).orElse(0),
                steps.stream().mapToDouble(ShiftPositions::phaseMismatchMm).sum(),
                mass.cassetteG(cassette),
                100.0 * cassette.largest().teeth() / cassette.smallest().teeth());
    }

    /** The value in one objective, in its unit. */
    public double in(Objective objective) {
        return switch (objective) {
            case LARGEST_STEP -> largestStepPct;
            case UNEVENNESS -> unevennessPct;
            case MISMATCH -> mismatchMm;
            case MASS -> massG;
            case GEAR_RANGE -> gearRangePct;
        };
    }
}
