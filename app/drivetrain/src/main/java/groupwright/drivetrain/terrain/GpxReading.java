package groupwright.drivetrain.terrain;

import java.util.List;

/**
 * What a GPX file gave.
 *
 * @param segments segments of its tracks, or its routes if it has no tracks; none if the file could not be used
 * @param problems what was wrong, in the order met; points left out leave the rest usable
 */
public record GpxReading(List<GpxSegment> segments, List<GpxProblem> problems) {

    /** Copies both lists. */
    public GpxReading {
        segments = List.copyOf(segments);
        problems = List.copyOf(problems);
    }

    static GpxReading refused(GpxProblem problem) {
        return new GpxReading(List.of(), List.of(problem));
    }
}
