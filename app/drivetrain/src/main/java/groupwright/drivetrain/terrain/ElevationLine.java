package groupwright.drivetrain.terrain;

import java.util.Arrays;
import java.util.OptionalDouble;

/** Elevation as a function of distance: straight between points, level beyond the ends. */
final class ElevationLine {
    private static final double SHORTEST_WINDOW_M = 10;

    private final double[] distances;
    private final double[] elevations;
    private final double[] areas; // integral of the elevation from the first point

    /** Elevations of points at the same distance, to 1 cm, are averaged: an altimeter drifts while one stands. */
    ElevationLine(Stretch stretch) {
        int count = stretch.points().size();
        double[] s = new double[count];
        double[] h = new double[count];
        int kept = -1;
        int alike = 0;
        for (TracePoint point : stretch.points()) {
            double distance = StrictMath.rint(point.distanceM() * 100) / 100;
            if (kept < 0 || distance > s[kept]) {
                kept++;
                s[kept] = distance;
                h[kept] = point.elevationM();
                alike = 1;
            } else {
                alike++;
                h[kept] += (point.elevationM() - h[kept]) / alike;
            }
        }
        distances = Arrays.copyOf(s, kept + 1);
        elevations = Arrays.copyOf(h, kept + 1);
        areas = new double[kept + 1];
        for (int i = 1; i <= kept; i++) {
            areas[i] = areas[i - 1] + (s[i] - s[i - 1]) * (h[i] + h[i - 1]) / 2;
        }
    }

    double start() {
        return distances[0];
    }

    double end() {
        return distances[distances.length - 1];
    }

    double at(double s) {
        int i = before(s);
        return i < 0 ? elevations[0] : elevations[i] + slopeAfter(i) * (inside(s) - distances[i]);
    }

    /** Mean elevation over a window about a place; towards the ends the window shrinks on both sides alike. */
    double meanAbout(double s, double windowM) {
        double half = Math.min(windowM / 2, Math.min(s - start(), end() - s));
        return half <= 0 ? at(s) : (area(s + half) - area(s - half)) / (2 * half);
    }

    /** Rise over distance across a window about a place, cut at the ends; empty if less than 10 m of it is left. */
    OptionalDouble gradeAbout(double s, double windowM) {
        double from = inside(s - windowM / 2);
        double to = inside(s + windowM / 2);
        return to - from < SHORTEST_WINDOW_M
                ? OptionalDouble.empty()
                : OptionalDouble.of((at(to) - at(from)) / (to - from));
    }

    private double area(double at) {
        double s = inside(at); // rounding may put it just outside
        int i = before(s);
        double past = s - distances[i];
        return areas[i] + past * (elevations[i] + slopeAfter(i) * past / 2);
    }

    private double slopeAfter(int i) {
        return i + 1 == distances.length ? 0 : (elevations[i + 1] - elevations[i]) / (distances[i + 1] - distances[i]);
    }

    private double inside(double s) {
        return Math.max(start(), Math.min(end(), s));
    }

    /** The last point at or before a place; -1 before the first. */
    private int before(double s) {
        int found = Arrays.binarySearch(distances, s);
        return found >= 0 ? found : -found - 2;
    }
}
