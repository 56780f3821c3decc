package groupwright.drivetrain.terrain;

import groupwright.drivetrain.terrain.GpxProblem.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.stream.XMLStreamReader;

/** Collects points while a GPX file is read. */
final class GpxContent {
    private static final int MOST_POINTS = 2_000_000;

    private final List<GpxSegment> tracks = new ArrayList<>();
    private final List<GpxSegment> routes = new ArrayList<>();
    private final List<GeoPoint> points = new ArrayList<>();
    private final List<GpxProblem> problems = new ArrayList<>();
    private final GpxPoint point = new GpxPoint();
    private int read;
    private int lastLine;

    void start(XMLStreamReader xml, int line) {
        lastLine = line;
        switch (xml.getLocalName()) {
            case "trkpt", "rtept" ->
                point.start(line, xml.getAttributeValue(null, "lat"), xml.getAttributeValue(null, "lon"));
            case "trkseg", "rte" -> points.clear();
            default -> point.startChild(xml.getLocalName());
        }
    }

    void text(XMLStreamReader xml) {
        point.text(xml);
    }

    void end(String name) {
        switch (name) {
            case "trkpt", "rtept" -> endPoint();
            case "trkseg" -> endSegment(tracks);
            case "rte" -> endSegment(routes);
            default -> point.endChild(name);
        }
    }

    boolean isFull() {
        return read > MOST_POINTS;
    }

    private void endPoint() {
        read++;
        Optional<GeoPoint> complete = Optional.empty();
        try {
            complete = point.finish();
            if (complete.isEmpty()) {
                report(Kind.NO_ELEVATION, "");
            }
        } catch (IllegalArgumentException unreadable) {
            report(Kind.UNREADABLE_POINT, String.valueOf(unreadable.getMessage()));
        }
        complete.ifPresent(this::append);
    }

    private void append(GeoPoint next) {
        boolean falls = !points.isEmpty()
                && next.timeS().isPresent()
                && next.timeS().getAsDouble()
                        < points.get(points.size() - 1).timeS().orElse(Double.NEGATIVE_INFINITY);
        if (falls) {
            report(Kind.TIME_FALLS, "");
        } else {
            points.add(next);
        }
    }

    private void endSegment(List<GpxSegment> target) {
        if (!points.isEmpty()) {
            target.add(new GpxSegment(points));
            points.clear();
        }
    }

    /** One entry for each kind, with the first place and the count: a file may have the same wrong a million times. */
    private void report(Kind kind, String detail) {
        for (int i = 0; i < problems.size(); i++) {
            if (problems.get(i).kind() == kind) {
                problems.set(i, problems.get(i).again());
                return;
            }
        }
        problems.add(new GpxProblem(kind, point.line(), 1, detail));
    }

    GpxReading reading() {
        List<GpxSegment> segments = tracks.isEmpty() ? routes : tracks;
        if (segments.isEmpty()) {
            problems.add(new GpxProblem(Kind.NO_POINTS, lastLine, 1, ""));
        }
        return new GpxReading(segments, problems);
    }
}
