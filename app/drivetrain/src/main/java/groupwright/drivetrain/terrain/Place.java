package groupwright.drivetrain.terrain;

import groupwright.drivetrain.quantity.Bounds;

/**
 * A place on the Earth, on WGS 84.
 *
 * @param latitudeDeg latitude in degrees, -90 to 90, north positive
 * @param longitudeDeg longitude in degrees, -180 to 180, east positive
 */
public record Place(double latitudeDeg, double longitudeDeg) {

    /** Throws {@link IllegalArgumentException} if a number lies outside its range. */
    public Place {
        Bounds.within("the latitude", latitudeDeg, -90, 90, "degrees");
        Bounds.within("the longitude", longitudeDeg, -180, 180, "degrees");
    }
}
