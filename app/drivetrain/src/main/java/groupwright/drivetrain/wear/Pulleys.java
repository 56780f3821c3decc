package groupwright.drivetrain.wear;

import groupwright.drivetrain.quantity.Bounds;

/**
 * The two pulleys of a derailleur's cage.
 *
 * @param guideTeeth teeth of the pulley under the cogs, 5 to 40
 * @param tensionTeeth teeth of the pulley at the end of the cage, 5 to 40
 */
public record Pulleys(int guideTeeth, int tensionTeeth) {
    private static final int FEWEST = 5;
    private static final int MOST = 40;

    /** Throws {@link IllegalArgumentException} if a tooth count lies outside its range (common practice, no source). */
    public Pulleys {
        Bounds.count("the number of teeth of a guide pulley", guideTeeth, FEWEST, MOST);
        Bounds.count("the number of teeth of a tension pulley", tensionTeeth, FEWEST, MOST);
    }
}
