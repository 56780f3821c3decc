package groupwright.drivetrain.loads;

import groupwright.drivetrain.quantity.Bounds;

/**
 * Evenly spaced loads to which samples are rounded.
 *
 * @param lowest the lowest load
 * @param step distance between neighbours, above 0
 * @param count how many there are, 2 to 65,536
 */
public record LoadLevels(double lowest, double step, int count) {
    private static final int MOST = 1 << 16;

    /** Throws {@link IllegalArgumentException} if a number lies outside its range or the highest level is infinite. */
    public LoadLevels {
        Bounds.finite("the lowest load level", lowest, "");
        Bounds.positive("the step between load levels", step, "");
        Bounds.count("the number of load levels", count, 2, MOST);
        Bounds.finite("the highest load level", lowest + step * (count - 1), "");
    }

    /** So many levels from the lowest to the highest load, both included. */
    public static LoadLevels between(double lowest, double highest, int count) {
        Bounds.count("the number of load levels", count, 2, MOST);
        return new LoadLevels(lowest, (highest - lowest) / (count - 1), count);
    }

    /** The highest load. */
    public double highest() {
        return lowest + step * (count - 1);
    }

    /**
     * Number of the nearest level, from 0; a load half way between two goes to the upper.
     *
     * @throws IllegalArgumentException if the load is not finite or lies more than half a step outside the levels
     */
    public int nearest(double load) {
        double number = Math.floor((load - lowest) / step + 0.5);
        if (!(number >= 0 && number < count)) { // written so that NaN fails too
            throw new IllegalArgumentException(
                    "the load %s lies outside the levels from %s to %s; take levels that reach so far"
                            .formatted(load, lowest, highest()));
        }
        return (int) number;
    }
}
