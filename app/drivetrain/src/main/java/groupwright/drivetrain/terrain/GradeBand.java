package groupwright.drivetrain.terrain;

import groupwright.drivetrain.quantity.Bounds;

/**
 * How much of the distance lies between two grades.
 *
 * @param fromGrade rise / run, -1 to 1
 * @param toGrade rise / run, from fromGrade to 1
 * @param share part of the distance, 0 or more, in any unit: only its relation to the other shares counts
 */
public record GradeBand(double fromGrade, double toGrade, double share) {

    /** Throws {@link IllegalArgumentException} if a number lies outside its range. */
    public GradeBand {
        Bounds.within("the lower grade of a band", fromGrade, -1, 1, "");
        Bounds.within("the upper grade of a band", toGrade, fromGrade, 1, "");
        Bounds.notNegative("the share of a band of grades", share, "");
    }

    /** The middle of the band. */
    double middle() {
        return (fromGrade + toGrade) / 2;
    }

    boolean descends() {
        return middle() < 0;
    }

    /** A grade of a descending band, from its gentle end at 0 to its steep end at 1. */
    double downTo(double steepness) {
        double gentle = Math.min(0, toGrade);
        return gentle + steepness * (fromGrade - gentle);
    }
}
