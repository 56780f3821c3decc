package groupwright.drivetrain.chain;

import groupwright.drivetrain.quantity.Bounds;

/** The circle through the chain's pins where the chain lies on a toothed wheel. */
public final class PitchCircle {
    private static final int FEWEST_TEETH = 3;
    private static final int MOST_TEETH = 1000;

    private PitchCircle() {}

    /**
     * Pitch diameter.
     *
     * <p>Formula: D = p / sin(pi / z); the pins are the corners of a regular polygon of side p. Neglects wear.
     *
     * <p>Source: Bhandari, Design of Machine Elements, Example 14.4.
     *
     * @param pitchMm distance between neighbouring pins in mm, above 0
     * @param teeth number of teeth, 3 to 1000
     * @return millimetres
     * @throws IllegalArgumentException if a number lies outside its range
     */
    public static double diameterMm(double pitchMm, int teeth) {
        Bounds.positive("the pitch of a chain", pitchMm, "mm");
        return pitchMm / StrictMath.sin(halfStep(teeth));
    }

    /** Half the angle in radians between neighbouring pins on the circle: pi / z. */
    static double halfStep(int teeth) {
        return StrictMath.PI / Bounds.count("the number of teeth of a sprocket", teeth, FEWEST_TEETH, MOST_TEETH);
    }
}
