package groupwright.drivetrain.quantity;

/**
 * Bounds a number must keep; each check gives the number back, so that it can stand where the number is used.
 *
 * <p>NaN and the infinities keep no bound. A number outside its bound throws {@link IllegalArgumentException} with one
 * sentence that names the quantity, the bound and the number.
 */
public final class Bounds {
    private Bounds() {}

    /**
     * Passes on a finite number.
     *
     * @throws IllegalArgumentException if it is NaN or infinite
     */
    public static double finite(String what, double value, String unit) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("%s must be a finite number%s, was %s".formatted(what, in(unit), value));
        }
        return value;
    }

    /**
     * Passes on a finite number above 0.
     *
     * @throws IllegalArgumentException if it is not
     */
    public static double positive(String what, double value, String unit) {
        if (!(value > 0 && Double.isFinite(value))) { // written so that NaN fails too
            throw new IllegalArgumentException(
                    "%s must be a finite number above 0%s, was %s".formatted(what, spaced(unit), value));
        }
        return value;
    }

    /**
     * Passes on a finite number of 0 or more.
     *
     * @throws IllegalArgumentException if it is not
     */
    public static double notNegative(String what, double value, String unit) {
        if (!(value >= 0 && Double.isFinite(value))) {
            throw new IllegalArgumentException(
                    "%s must be a finite number of 0%s or more, was %s".formatted(what, spaced(unit), value));
        }
        return value;
    }

    /**
     * Passes on a number between two bounds, both included.
     *
     * @throws IllegalArgumentException if it lies outside
     */
    public static double within(String what, double value, double low, double high, String unit) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(
                    "%s must lie between %s and %s%s, was %s".formatted(what, low, high, spaced(unit), value));
        }
        return value;
    }

    /**
     * Passes on a count between two bounds, both included.
     *
     * @throws IllegalArgumentException if it lies outside
     */
    public static int count(String what, int value, int low, int high) {
        if (value < low || value > high) {
            throw new IllegalArgumentException(
                    "%s must lie between %d and %d, was %d".formatted(what, low, high, value));
        }
        return value;
    }

    private static String spaced(String unit) {
        return unit.isEmpty() ? "" : " " + unit;
    }

    private static String in(String unit) {
        return unit.isEmpty() ? "" : " in " + unit;
    }
}
