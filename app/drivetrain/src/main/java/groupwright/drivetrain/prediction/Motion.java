package groupwright.drivetrain.prediction;

import groupwright.drivetrain.riding.RoadForces;

/**
 * The speed at the end of a short way: ½ m v1² - ½ m v0² + way · (resistance(v1) - legs(v1)) = 0.
 *
 * <p>Backward Euler along the way. Explicit steps oscillate on steep climbs and the implicit midpoint rings; this does
 * neither, and the energy of a step is accounted for exactly. The left side grows with v1, so there is one root.
 *
 * @param massKg mass in kg, that of the turning wheels included
 * @param forces what holds the bicycle back
 * @param legs what drives it
 */
record Motion(double massKg, RoadForces forces, Legs legs) {
    private static final int MOST_ROUNDS = 200; // Newton takes about 4; halving alone took 100
    private static final double CLOSE = 1e-13;

    /** Energy in J that is missing to reach a speed; negative if more is there. */
    double missingJ(double from, double to, double way) {
        return neededJ(from, to, way) - way * legs.forceN(to);
    }

    /** Energy in J that it takes to reach a speed, negative if the brakes must take some. */
    double neededJ(double from, double to, double way) {
        return massKg / 2 * (to * to - from * from) + way * forces.totalN(to);
    }

    /**
     * The speed reached, or the floor if it would be lower. Newton's method from the speed before, halving where a step
     * leaves the bracket.
     */
    double speedAfter(double from, double way, double floor) {
        double low = floor;
        double high = Double.POSITIVE_INFINITY;
        double speed = Math.max(from, floor);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double missing = missingJ(from, speed, way);
            if (missing < 0) {
                low = speed;
            } else if (speed <= floor) {
                return floor;
            } else {
                high = speed;
            }
            double growth = massKg * speed + way * (forces.growthNsPerM(speed) - legs.growthNsPerM(speed));
            double next = inside(low, high, speed - missing / growth);
            if (StrictMath.abs(next - speed) <= CLOSE * speed) {
                return next;
            }
            speed = next;
        }
        return speed;
    }

    private static double inside(double low, double high, double wanted) {
        if (wanted >= low && wanted <= high) {
            return wanted;
        }
        return high == Double.POSITIVE_INFINITY ? 2 * low : (low + high) / 2;
    }
}
