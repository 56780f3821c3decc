package groupwright.drivetrain.terrain;

import groupwright.drivetrain.quantity.Bounds;
import java.util.List;

/**
 * The ground of a ride, piece by piece.
 *
 * @param startElevationM elevation where it begins in m
 * @param pieces pieces of road in the order ridden, 1 to 2 000 000, together at most 5000 km
 */
public record Profile(double startElevationM, List<Piece> pieces) {
    /** Longest profile in m; it bounds the steps a prediction takes. */
    public static final double LONGEST_M = 5_000_000;

    private static final int MOST_PIECES = 2_000_000;

    /** Copies the pieces; throws {@link IllegalArgumentException} if there are none, too many or too long ones. */
    public Profile {
        pieces = List.copyOf(pieces);
        Bounds.finite("the elevation at the start", startElevationM, "m");
        if (pieces.isEmpty()) {
            throw new IllegalArgumentException("a profile needs at least one piece of road, enter terrain or climbs");
        }
        Bounds.count("the number of pieces of a profile", pieces.size(), 1, MOST_PIECES);
        Bounds.within("the length of a profile", lengthM(pieces), 0, LONGEST_M, "m");
    }

    /** A profile that begins at sea level. */
    public static Profile of(Piece... pieces) {
        return new Profile(0, List.of(pieces));
    }

    /** Length along the road in m. Cost: O(n). */
    public double lengthM() {
        return lengthM(pieces);
    }

    /** Sum of all rises in m. Cost: O(n). */
    public double ascentM() {
        return pieces.stream().mapToDouble(piece -> Math.max(0, piece.riseM())).sum();
    }

    /** Elevation at the end in m. Cost: O(n). */
    public double endElevationM() {
        return startElevationM + pieces.stream().mapToDouble(Piece::riseM).sum();
    }

    private static double lengthM(List<Piece> pieces) {
        return pieces.stream().mapToDouble(Piece::lengthM).sum();
    }
}
