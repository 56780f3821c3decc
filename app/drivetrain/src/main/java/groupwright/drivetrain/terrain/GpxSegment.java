package groupwright.drivetrain.terrain;

import java.util.ArrayList;
import java.util.List;

/**
 * Points of a GPX file that follow each other: a track segment or a route.
 *
 * @param points at least one, in the order of the file; times never fall
 */
public record GpxSegment(List<GeoPoint> points) {

    /** Copies the points; throws {@link IllegalArgumentException} if there are none. */
    public GpxSegment {
        points = List.copyOf(points);
        if (points.isEmpty()) {
            throw new IllegalArgumentException("a segment of a track needs at least one point");
        }
    }

    /**
     * The ground under the points.
     *
     * <p>Distances are those on the map. As distances along the road they are short by 0.5 % at 10 % grade. Cost: O(n).
     *
     * @param rule how far apart two places are, usually {@code Geodesic::metres}
     * @return distance from the first point, elevation and time of each point
     */
    public Stretch stretch(DistanceRule rule) {
        List<TracePoint> trace = new ArrayList<>();
        double distance = 0;
        for (int i = 0; i < points.size(); i++) {
            GeoPoint point = points.get(i);
            distance += i == 0 ? 0 : rule.metres(points.get(i - 1).place(), point.place());
            trace.add(new TracePoint(distance, point.elevationM(), point.timeS()));
        }
        return new Stretch(trace);
    }
}
