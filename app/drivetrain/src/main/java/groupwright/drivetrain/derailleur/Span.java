package groupwright.drivetrain.derailleur;

/**
 * A straight piece of chain between two wheels, in the sense in which a forward-driven chain runs.
 *
 * @param fromMm where it leaves a pitch circle
 * @param toMm where it meets the next one
 */
public record Span(Point fromMm, Point toMm) {
    /** Its length in mm. */
    public double lengthMm() {
        return fromMm.distanceMm(toMm);
    }
}
