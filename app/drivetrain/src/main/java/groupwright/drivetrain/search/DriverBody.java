package groupwright.drivetrain.search;

import groupwright.drivetrain.quantity.Bounds;

/**
 * The driver body at the wheel takes no smaller cog than this.
 *
 * @param smallestCog teeth of the smallest cog that fits, 5 to 80
 */
public record DriverBody(int smallestCog) implements Limit {
    /** Throws {@link IllegalArgumentException} outside 5 to 80 teeth. */
    public DriverBody {
        Bounds.count("the smallest cog of a driver body", smallestCog, 5, 80);
    }

    @Override
    public String id() {
        return "driver-body";
    }

    @Override
    public String demand() {
        return "have no cog below %d teeth, which its driver body does not take".formatted(smallestCog);
    }

    @Override
    public boolean admitsEnds(int smallest, int largest) {
        return smallest >= smallestCog;
    }
}
