package groupwright.drivetrain.derailleur;

/**
 * A straight tangent between two wheels, and how it changes while both move. Holds the last one asked for, so that a
 * march over many angles makes no garbage.
 *
 * <p>Formula: with d from centre to centre, d² = |d|² and q = the radius at the start, counted positive for a wheel that
 * runs counterclockwise, less the one at the end: length s = sqrt(d² - q²), direction u = (s d + q Jd) / d² with J a
 * quarter turn counterclockwise. For a relative speed v of the centres: s' = d·v / s and, as the normal distance q stays,
 * heading' = Ju·v / s.
 */
final class Strand {
    private static final double TINY_MM2 = 1e-18; // keeps slopes finite where circles that cross over just touch

    double lengthMm;
    double alongX;
    double alongY;
    double heading;
    double lengthSlope;
    double headingSlope;
    private double acrossX;
    private double acrossY;

    void between(double fromX, double fromY, double toX, double toY, double offset) {
        acrossX = toX - fromX;
        acrossY = toY - fromY;
        double squared = acrossX * acrossX + acrossY * acrossY;
        lengthMm = StrictMath.sqrt(StrictMath.max(TINY_MM2, squared - offset * offset));
        alongX = (acrossX * lengthMm - acrossY * offset) / squared;
        alongY = (acrossY * lengthMm + acrossX * offset) / squared;
        heading = StrictMath.atan2(alongY, alongX);
    }

    void moving(double speedX, double speedY) {
        lengthSlope = (acrossX * speedX + acrossY * speedY) / lengthMm;
        headingSlope = (alongX * speedY - alongY * speedX) / lengthMm;
    }

    /** The straight piece itself; radii are positive for wheels that run counterclockwise. */
    Span span(double fromX, double fromY, double fromRadius, double toRadius) {
        Point from = new Point(fromX + fromRadius * alongY, fromY - fromRadius * alongX);
        Point to = new Point(fromX + acrossX + toRadius * alongY, fromY + acrossY - toRadius * alongX);
        return new Span(from, to);
    }
}
