package groupwright.drivetrain.derailleur;

import groupwright.drivetrain.quantity.Bounds;

/**
 * A point in the plane of the chain, seen from the drive side: x forward, y up, the rear axle at 0, 0.
 *
 * @param xMm forward in mm, -10000 to 10000
 * @param yMm up in mm, -10000 to 10000
 */
public record Point(double xMm, double yMm) {
    /** Where the rear axle is: 0, 0. */
    public static final Point AXLE = new Point(0, 0);

    private static final double FURTHEST_MM = 10_000;

    /** Throws {@link IllegalArgumentException} if a coordinate lies outside its range. */
    public Point {
        Bounds.within("a point's distance forward of the rear axle", xMm, -FURTHEST_MM, FURTHEST_MM, "mm");
        Bounds.within("a point's height above the rear axle", yMm, -FURTHEST_MM, FURTHEST_MM, "mm");
    }

    /** Distance to another point in mm. */
    public double distanceMm(Point other) {
        return StrictMath.hypot(xMm - other.xMm, yMm - other.yMm);
    }

    /** This point turned about a centre, counterclockwise as seen from the drive side. */
    Point turnedAbout(Point centre, double deg) {
        double cos = StrictMath.cos(StrictMath.toRadians(deg));
        double sin = StrictMath.sin(StrictMath.toRadians(deg));
        double x = xMm - centre.xMm;
        double y = yMm - centre.yMm;
        return new Point(centre.xMm + x * cos - y * sin, centre.yMm + x * sin + y * cos);
    }

    Point plus(double x, double y) {
        return new Point(xMm + x, yMm + y);
    }
}
