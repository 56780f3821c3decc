package groupwright.drivetrain.terrain;

/** How far apart two places are; {@link Geodesic#metres} unless there is a reason for another. */
@FunctionalInterface
public interface DistanceRule {

    /** Metres between two places along the ground at sea level, 0 or more. */
    double metres(Place one, Place other);
}
