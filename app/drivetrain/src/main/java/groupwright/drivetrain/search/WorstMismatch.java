package groupwright.drivetrain.search;

import groupwright.drivetrain.gearing.ShiftPositions;
import groupwright.drivetrain.gearing.Step;
import groupwright.drivetrain.quantity.Bounds;

/**
 * No pair of neighbouring cogs has a larger phase mismatch than this, from a tooth count on.
 *
 * @param mm the largest phase mismatch in mm, 0 or more
 * @param fromTeeth pairs count whose smaller cog has at least so many teeth; 0 for all
 */
public record WorstMismatch(double mm, int fromTeeth) implements Limit {
    /** Throws {@link IllegalArgumentException} if a number lies outside its range. */
    public WorstMismatch {
        Bounds.notNegative("the worst phase mismatch", mm, "mm");
        Bounds.count("the tooth count from which phase mismatch counts", fromTeeth, 0, 80);
    }

    @Override
    public String id() {
        return "phase-mismatch";
    }

    @Override
    public String demand() {
        return "have no phase mismatch above %s mm%s".formatted(Demands.number(mm), Demands.from(fromTeeth));
    }

    @Override
    public boolean admitsStep(int position, int smaller, int larger) {
        return smaller < fromTeeth || ShiftPositions.phaseMismatchMm(Step.of(smaller, larger)) <= mm + SLACK;
    }
}
