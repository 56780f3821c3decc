package groupwright.drivetrain.search;

import groupwright.drivetrain.quantity.Bounds;

/**
 * No step has more teeth than this.
 *
 * @param teeth the largest difference of two neighbouring cogs, 1 to 75
 */
public record LargestJump(int teeth) implements Limit {
    /** Throws {@link IllegalArgumentException} outside 1 to 75 teeth. */
    public LargestJump {
        Bounds.count("the largest jump", teeth, 1, 75);
    }

    @Override
    public String id() {
        return "largest-jump";
    }

    @Override
    public String demand() {
        return "have no jump above %d teeth".formatted(teeth);
    }

    @Override
    public boolean admitsStep(int position, int smaller, int larger) {
        return larger - smaller <= teeth;
    }
}
