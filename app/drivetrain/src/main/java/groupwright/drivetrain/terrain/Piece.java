package groupwright.drivetrain.terrain;

import groupwright.drivetrain.quantity.Bounds;

/**
 * A piece of road of one grade.
 *
 * @param lengthM length along the road in m, above 0
 * @param grade rise / horizontal run, -1 to 1; 0.08 is 8 %
 */
public record Piece(double lengthM, double grade) {

    /** Throws {@link IllegalArgumentException} if a number lies outside its range. */
    public Piece {
        Bounds.positive("the length of a piece of road", lengthM, "m");
        Bounds.within("the grade (rise / run)", grade, -1, 1, "");
    }

    /** Rise in m, negative downhill: length · sin(atan(grade)). */
    public double riseM() {
        return lengthM * grade / StrictMath.sqrt(1 + grade * grade);
    }
}
