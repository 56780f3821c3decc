package groupwright.drivetrain.search;

import groupwright.drivetrain.gearing.Step;
import groupwright.drivetrain.quantity.Bounds;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The largest step at each position, counted from the smallest cog.
 *
 * @param pct largest steps in percent, each above 0; empty where a position is free, as are those past the end
 */
public record StepsByPosition(List<OptionalDouble> pct) implements Limit {
    /** Throws {@link IllegalArgumentException} if a limit is not above 0. */
    public StepsByPosition {
        pct = List.copyOf(pct);
        for (OptionalDouble limit : pct) {
            limit.ifPresent(value -> Bounds.positive("a step limit", value, "%"));
        }
    }

    /** Limits for the first positions, none left free. */
    public static StepsByPosition of(double... pct) {
        return new StepsByPosition(
                Arrays.stream(pct).mapToObj(OptionalDouble::of).toList());
    }

    @Override
    public String id() {
        return "steps-by-position";
    }

    @Override
    public String demand() {
        return "keep each step within the limit of its position";
    }

    @Override
    public boolean admitsStep(int position, int smaller, int larger) {
        return position > pct.size()
                || pct.get(position - 1).isEmpty()
                || Step.of(smaller, larger).pct() <= pct.get(position - 1).getAsDouble() + SLACK;
    }
}
