package groupwright.drivetrain.terrain;

import groupwright.drivetrain.quantity.Bounds;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How much of a recorded ride lies on which grade.
 *
 * <p>Grade of the interval between two points: rise over distance across a window about its middle, cut at the ends of
 * the stretch; intervals with less than 10 m of window are left out. The window decides much: between 50 and 100 m the
 * shares of hilly rides differ by half a percentage point, of flat ones by up to seven. Cost: O(n log n).
 */
public final class GradeShares {
    private static final double MOVING_MPS = 0.5;

    private GradeShares() {}

    /**
     * Shares of the distance.
     *
     * @param stretches recorded ground; split it at pauses first
     * @param windowM the window in m, above 0
     * @param limits rising limits between the bands, as rise / distance; a band includes its lower limit
     * @return one share more than limits, from below the first limit upwards, sum 1; all 0 if no interval counts
     * @throws IllegalArgumentException if the window is not above 0
     */
    public static List<Double> ofDistance(List<Stretch> stretches, double windowM, List<Double> limits) {
        return shares(stretches, windowM, limits, (from, to) -> to.distanceM() - from.distanceM());
    }

    /** Shares of the time in which the distance grows by at least 0.5 m/s, by the same rules. */
    public static List<Double> ofMovingTime(List<Stretch> stretches, double windowM, List<Double> limits) {
        return shares(stretches, windowM, limits, GradeShares::movingS);
    }

    private static double movingS(TracePoint from, TracePoint to) {
        OptionalDouble seconds = from.secondsTo(to);
        double metres = to.distanceM() - from.distanceM();
        return seconds.isPresent() && metres >= MOVING_MPS * seconds.getAsDouble() ? seconds.getAsDouble() : 0;
    }

    private static List<Double> shares(List<Stretch> stretches, double windowM, List<Double> limits, Weight weight) {
        Bounds.positive("the window of the grade", windowM, "m");
        double[] sums = new double[limits.size() + 1];
        for (Stretch stretch : stretches) {
            ElevationLine line = new ElevationLine(stretch);
            List<TracePoint> points = stretch.points();
            for (int i = 1; i < points.size(); i++) {
                TracePoint from = points.get(i - 1);
                TracePoint to = points.get(i);
                OptionalDouble grade = line.gradeAbout((from.distanceM() + to.distanceM()) / 2, windowM);
                if (grade.isPresent()) {
                    sums[band(limits, grade.getAsDouble())] += weight.of(from, to);
                }
            }
        }
        return normalised(sums);
    }

    private static int band(List<Double> limits, double grade) {
        int band = 0;
        while (band < limits.size() && grade >= limits.get(band)) {
            band++;
        }
        return band;
    }

    private static List<Double> normalised(double[] sums) {
        double total = 0;
        for (double sum : sums) {
            total += sum;
        }
        List<Double> shares = new ArrayList<>();
        for (double sum : sums) {
            shares.add(total > 0 ? sum / total : 0);
        }
        return List.copyOf(shares);
    }

    private interface Weight {
        double of(TracePoint from, TracePoint to);
    }
}
