package groupwright.drivetrain.terrain;

/** Distances on the Earth. */
public final class Geodesic {
    private static final double EQUATOR_RADIUS_M = 6_378_137; // WGS 84, defining constant
    private static final double FLATTENING = 1 / 298.257223563; // WGS 84, defining constant
    private static final double POLE_RADIUS_M = EQUATOR_RADIUS_M * (1 - FLATTENING);
    private static final double MEAN_RADIUS_M = 6_371_008.8; // (2a + b) / 3 on WGS 84
    private static final double CONVERGED_RAD = 1e-12; // 0.006 mm
    private static final int MOST_ROUNDS = 100;

    private Geodesic() {}

    /**
     * Length of the shortest line on the WGS 84 ellipsoid between two places.
     *
     * <p>Source: Vincenty, Direct and inverse solutions of geodesics on the ellipsoid with application of nested
     * equations, Survey Review 23(176):88-93, 1975; good to 0.5 mm. Between places almost opposite each other on the
     * Earth the iteration does not settle, and {@link #haversineMetres} answers instead, off by up to 0.6 %. Neglected:
     * elevation, which makes a line at 1000 m longer by 0.016 %. Cost: 2 to 5 rounds for points of a track, 100 at most.
     *
     * @param one a place
     * @param other another place
     * @return metres, 0 or more
     */
    public static double metres(Place one, Place other) {
        double longitude = StrictMath.toRadians(other.longitudeDeg() - one.longitudeDeg());
        double u1 = reduced(one);
        double u2 = reduced(other);
        double lambda = longitude;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            Arc arc = Arc.of(u1, u2, lambda);
            if (arc.sinSigma() == 0) {
                return arc.cosSigma() > 0 ? 0 : haversineMetres(one, other);
            }
            double next = longitude + arc.excess();
            if (StrictMath.abs(next - lambda) < CONVERGED_RAD) {
                return arc.metres();
            }
            lambda = next;
        }
        return haversineMetres(one, other);
    }

    /**
     * Distance on a sphere of 6 371 008.8 m, the mean radius of WGS 84.
     *
     * <p>Formula: 2 R asin sqrt(sin²(dlat / 2) + cos lat1 cos lat2 sin²(dlon / 2)). Off by up to 0.6 % on the Earth,
     * which is flattened; here for comparison with figures that were computed so.
     *
     * @param one a place
     * @param other another place
     * @return metres, 0 or more
     */
    public static double haversineMetres(Place one, Place other) {
        double latitude1 = StrictMath.toRadians(one.latitudeDeg());
        double latitude2 = StrictMath.toRadians(other.latitudeDeg());
        double north = StrictMath.sin((latitude2 - latitude1) / 2);
        double east = StrictMath.sin(StrictMath.toRadians(other.longitudeDeg() - one.longitudeDeg()) / 2);
        double h = north * north + StrictMath.cos(latitude1) * StrictMath.cos(latitude2) * east * east;
        return 2 * MEAN_RADIUS_M * StrictMath.asin(StrictMath.min(1, StrictMath.sqrt(h)));
    }

    /** Latitude on the auxiliary sphere in radians. */
    private static double reduced(Place place) {
        double latitude = StrictMath.toRadians(place.latitudeDeg());
        return StrictMath.atan2((1 - FLATTENING) * StrictMath.sin(latitude), StrictMath.cos(latitude));
    }

    /** The arc on the auxiliary sphere; names as in Vincenty 1975. */
    private record Arc(double sinSigma, double cosSigma, double sinAlpha, double cosSqAlpha, double cos2SigmaM) {

        static Arc of(double u1, double u2, double lambda) {
            double x = StrictMath.cos(u2) * StrictMath.sin(lambda);
            double y = StrictMath.cos(u1) * StrictMath.sin(u2)
                    - StrictMath.sin(u1) * StrictMath.cos(u2) * StrictMath.cos(lambda);
            double sinSigma = StrictMath.sqrt(x * x + y * y);
            double sinSin = StrictMath.sin(u1) * StrictMath.sin(u2);
            double cosSigma = sinSin + StrictMath.cos(u1) * StrictMath.cos(u2) * StrictMath.cos(lambda);
            double sinAlpha = sinSigma == 0 ? 0 : StrictMath.cos(u1) * x / sinSigma;
            double cosSqAlpha = 1 - sinAlpha * sinAlpha;
            double cos2SigmaM = cosSqAlpha == 0 ? 0 : cosSigma - 2 * sinSin / cosSqAlpha; // 0 along the equator
            return new Arc(sinSigma, cosSigma, sinAlpha, cosSqAlpha, cos2SigmaM);
        }

        double sigma() {
            return StrictMath.atan2(sinSigma, cosSigma);
        }

        double excess() {
            double c = FLATTENING / 16 * cosSqAlpha * (4 + FLATTENING * (4 - 3 * cosSqAlpha));
            double inner = cos2SigmaM + c * cosSigma * (2 * cos2SigmaM * cos2SigmaM - 1);
            return (1 - c) * FLATTENING * sinAlpha * (sigma() + c * sinSigma * inner);
        }

        double metres() {
            double uSq = cosSqAlpha * (EQUATOR_RADIUS_M * EQUATOR_RADIUS_M / (POLE_RADIUS_M * POLE_RADIUS_M) - 1);
            double a = 1 + uSq / 16384 * (4096 + uSq * (-768 + uSq * (320 - 175 * uSq)));
            double b = uSq / 1024 * (256 + uSq * (-128 + uSq * (74 - 47 * uSq)));
            double squared = cos2SigmaM * cos2SigmaM;
            double third = b / 6 * cos2SigmaM * (4 * sinSigma * sinSigma - 3) * (4 * squared - 3);
            double delta = b * sinSigma * (cos2SigmaM + b / 4 * (cosSigma * (2 * squared - 1) - third));
            return POLE_RADIUS_M * a * (sigma() - delta);
        }
    }
}
