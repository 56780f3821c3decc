package groupwright.drivetrain.derailleur;

import groupwright.drivetrain.quantity.Bounds;

/** How the body of a derailleur stands on its hanger while it moves along the cassette. */
public sealed interface UpperPivot {
    /** The body keeps its angle to the hanger. */
    record Fixed() implements UpperPivot {}

    /**
     * The body turns about the hanger's bolt (a sprung upper pivot). Its rotation is measured at the two outermost cogs
     * and taken as linear in side travel between them; in truth it follows the balance of two springs, which is
     * neglected.
     *
     * @param smallestDeg rotation at the smallest cog in degrees, counterclockwise seen from the drive side, -90 to 90
     * @param largestDeg rotation at the largest cog in degrees, -90 to 90
     */
    record Turning(double smallestDeg, double largestDeg) implements UpperPivot {
        /** Throws {@link IllegalArgumentException} if a rotation lies outside its range. */
        public Turning {
            Bounds.within("the rotation of the upper pivot at the smallest cog", smallestDeg, -90, 90, "°");
            Bounds.within("the rotation of the upper pivot at the largest cog", largestDeg, -90, 90, "°");
        }
    }
}
