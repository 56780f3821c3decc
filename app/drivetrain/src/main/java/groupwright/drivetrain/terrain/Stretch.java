package groupwright.drivetrain.terrain;

import java.util.ArrayList;
import java.util.List;

/**
 * Recorded ground without an interruption.
 *
 * @param points at least one; neither distance nor time ever falls
 */
public record Stretch(List<TracePoint> points) {
    /** A longer gap between two points is a pause (common practice, no source). */
    public static final double PAUSE_S = 10;

    /** Throws {@link IllegalArgumentException} if there is no point, or naming the first that lies before the one before. */
    public Stretch {
        points = List.copyOf(points);
        if (points.isEmpty()) {
            throw new IllegalArgumentException("a stretch of a track needs at least one point");
        }
        for (int i = 1; i < points.size(); i++) {
            TracePoint before = points.get(i - 1);
            TracePoint point = points.get(i);
            if (point.distanceM() < before.distanceM()
                    || before.secondsTo(point).orElse(0) < 0) {
                throw new IllegalArgumentException(
                        "point %d of a stretch lies before the one before it, distance and time must not fall"
                                .formatted(i + 1));
            }
        }
    }

    /**
     * The same ground cut wherever nothing was recorded for a while, so that what an altimeter does in a pause is no
     * ground. Points without time make no pause. Cost: O(n).
     *
     * @param longestGapS longest gap in s that is none, usually {@link #PAUSE_S}
     * @return the stretches, one at least
     */
    public List<Stretch> splitAtPauses(double longestGapS) {
        List<Stretch> stretches = new ArrayList<>();
        int start = 0;
        for (int i = 1; i <= points.size(); i++) {
            if (i == points.size() || isPause(i, longestGapS)) {
                stretches.add(new Stretch(points.subList(start, i)));
                start = i;
            }
        }
        return List.copyOf(stretches);
    }

    private boolean isPause(int i, double longestGapS) {
        return points.get(i - 1).secondsTo(points.get(i)).orElse(0) > longestGapS;
    }

    /**
     * Each elevation replaced by the mean of all that were recorded at most so many seconds before or after. Points
     * without time keep theirs. Cost: O(n).
     *
     * @param halfWindowS seconds to either side, 0 or more
     * @return the smoothed stretch
     */
    public Stretch meanOverTime(double halfWindowS) {
        List<TracePoint> timed =
                points.stream().filter(point -> point.timeS().isPresent()).toList();
        List<TracePoint> smoothed = new ArrayList<>();
        int first = 0;
        int end = 0;
        double sum = 0;
        for (TracePoint point : points) {
            if (point.timeS().isEmpty()) {
                smoothed.add(point);
                continue;
            }
            double time = point.timeS().getAsDouble();
            while (end < timed.size() && timed.get(end).timeS().getAsDouble() <= time + halfWindowS) {
                sum += timed.get(end++).elevationM();
            }
            while (timed.get(first).timeS().getAsDouble() < time - halfWindowS) {
                sum -= timed.get(first++).elevationM();
            }
            smoothed.add(new TracePoint(point.distanceM(), sum / (end - first), point.timeS()));
        }
        return new Stretch(smoothed);
    }

    /** Metres from the first to the last point. */
    public double lengthM() {
        return points.get(points.size() - 1).distanceM() - points.get(0).distanceM();
    }
}
