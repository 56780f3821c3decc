package groupwright.drivetrain.search;

import groupwright.drivetrain.gearing.ShiftPositions;
import groupwright.drivetrain.gearing.Step;
import groupwright.drivetrain.quantity.Bounds;

/**
 * Each pair of neighbouring cogs has at least so many like positions a turn, from a tooth count on.
 *
 * @param least like positions, 1 to 80
 * @param fromTeeth pairs count whose smaller cog has at least so many teeth; 0 for all
 */
public record LikePositions(int least, int fromTeeth) implements Limit {
    /** Throws {@link IllegalArgumentException} if a number lies outside its range. */
    public LikePositions {
        Bounds.count("the like positions asked for", least, 1, 80);
        Bounds.count("the tooth count from which like positions count", fromTeeth, 0, 80);
    }

    @Override
    public String id() {
        return "like-positions";
    }

    @Override
    public String demand() {
        return "have at least %d like positions in each pair of cogs%s".formatted(least, Demands.from(fromTeeth));
    }

    @Override
    public boolean admitsStep(int position, int smaller, int larger) {
        return smaller < fromTeeth || ShiftPositions.likePositions(Step.of(smaller, larger)) >= least;
    }
}
