package groupwright.drivetrain.terrain;

import groupwright.drivetrain.quantity.Bounds;

/**
 * How recorded ground becomes pieces of road.
 *
 * @param windowM each elevation is the mean over a window of so many metres along the way; 0 takes it as recorded
 * @param pieceM length of a piece in m, 1 to 1000
 */
public record Smoothing(double windowM, double pieceM) {
    /** Means over 50 m, pieces of 10 m (own choice: shorter windows show noise of the altimeter as walls). */
    public static final Smoothing USUAL = new Smoothing(50, 10);

    /** Throws {@link IllegalArgumentException} if a number lies outside its range. */
    public Smoothing {
        Bounds.notNegative("the window of the smoothing", windowM, "m");
        Bounds.within("the length of a piece", pieceM, 1, 1000, "m");
    }
}
