package groupwright.drivetrain.terrain;

import groupwright.drivetrain.quantity.Bounds;
import java.util.List;

/** Metres climbed over a stretch. The rules differ by a third on flat rides, so say which one was used. Cost: O(n). */
public final class Ascent {
    private Ascent() {}

    /** Sum of all rises from point to point in m, noise of the altimeter included. */
    public static double rawM(Stretch stretch) {
        List<TracePoint> points = stretch.points();
        double sum = 0;
        for (int i = 1; i < points.size(); i++) {
            sum += Math.max(0, points.get(i).elevationM() - points.get(i - 1).elevationM());
        }
        return sum;
    }

    /** Sum of all falls from point to point in m, as a positive number. */
    public static double descentM(Stretch stretch) {
        List<TracePoint> points = stretch.points();
        return rawM(stretch)
                + points.get(0).elevationM()
                - points.get(points.size() - 1).elevationM();
    }

    /**
     * Sum of rises of at least a dead band: an anchor, first at the first point, moves once the ground lies that far
     * above or below it; moves upwards count.
     *
     * @param stretch the ground
     * @param bandM the dead band in m, 0 or more; 3 is common (common practice, no source)
     * @return metres
     * @throws IllegalArgumentException if the band is negative or not finite
     */
    public static double deadBandM(Stretch stretch, double bandM) {
        Bounds.notNegative("the dead band of the ascent", bandM, "m");
        double anchor = stretch.points().get(0).elevationM();
        double sum = 0;
        for (TracePoint point : stretch.points()) {
            double rise = point.elevationM() - anchor;
            if (StrictMath.abs(rise) >= bandM) {
                sum += Math.max(0, rise);
                anchor = point.elevationM();
            }
        }
        return sum;
    }
}
