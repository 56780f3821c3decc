package groupwright.drivetrain.search;

import groupwright.drivetrain.gearing.Step;
import groupwright.drivetrain.quantity.Bounds;

/**
 * No step is larger than this, from a tooth count on.
 *
 * @param pct the largest step in percent, above 0
 * @param fromTeeth steps count whose smaller cog has at least so many teeth; 0 for all
 */
public record LargestStep(double pct, int fromTeeth) implements Limit {
    /** Throws {@link IllegalArgumentException} if a number lies outside its range. */
    public LargestStep {
        Bounds.positive("the largest step", pct, "%");
        Bounds.count("the tooth count from which the largest step counts", fromTeeth, 0, 80);
    }

    @Override
    public String id() {
        return "largest-step";
    }

    @Override
    public String demand() {
        return "have no step above %s %%%s".formatted(Demands.number(pct), Demands.from(fromTeeth));
    }

    @Override
    public boolean admitsStep(int position, int smaller, int larger) {
        return smaller < fromTeeth || Step.of(smaller, larger).pct() <= pct + SLACK;
    }
}
