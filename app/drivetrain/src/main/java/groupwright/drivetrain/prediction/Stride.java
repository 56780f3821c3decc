package groupwright.drivetrain.prediction;

/**
 * One step of the way.
 *
 * @param fromMps speed at its start in m/s
 * @param toMps speed at its end in m/s
 * @param wayM its length in m
 * @param kind how the rider moved
 * @param drivenJ work of the rider at the wheel, or on foot, in J
 * @param brakedJ work of the brakes in J
 * @param kineticJ work into speed in J
 */
record Stride(double fromMps, double toMps, double wayM, Kind kind, double drivenJ, double brakedJ, double kineticJ) {
    enum Kind {
        PEDALLED,
        COASTED,
        WALKED
    }

    /**
     * What bounds a step.
     *
     * @param paceMps below it the rider walks
     * @param capMps he is no faster; infinite where nothing caps him
     * @param wheelW power in W with which he walks as well
     */
    record Limits(double paceMps, double capMps, double wheelW) {}

    static Stride of(Motion motion, double from, double way, Limits limits) {
        double to = motion.speedAfter(from, way, RideModel.SLOWEST_MPS);
        if (to < limits.paceMps()) {
            return onFoot(motion, from, way, limits);
        }
        if (to > limits.capMps()) {
            return held(motion, from, way, limits.capMps());
        }
        double legsJ = way * motion.legs().forceN(to);
        return new Stride(from, to, way, pedalledIf(legsJ), legsJ, 0, kinetic(motion, from, to));
    }

    /** On foot no gear limits the force, and nobody is faster than walking pace. */
    private static Stride onFoot(Motion motion, double from, double way, Limits limits) {
        Motion feet = new Motion(
                motion.massKg(), motion.forces(), new Legs(limits.wheelW(), Double.MAX_VALUE, Double.MAX_VALUE));
        double to = Math.min(limits.paceMps(), feet.speedAfter(from, way, RideModel.SLOWEST_MPS));
        double needed = motion.neededJ(from, to, way);
        double braked = Math.max(0, -needed);
        return new Stride(from, to, way, Kind.WALKED, Math.max(0, needed), braked, kinetic(motion, from, to));
    }

    /** At the cap the rider pedals less; where even that is too much, he brakes. */
    private static Stride held(Motion motion, double from, double way, double cap) {
        double needed = motion.neededJ(from, cap, way);
        double legsJ = Math.max(0, needed);
        return new Stride(from, cap, way, pedalledIf(legsJ), legsJ, Math.max(0, -needed), kinetic(motion, from, cap));
    }

    private static Kind pedalledIf(double legsJ) {
        return legsJ > 0 ? Kind.PEDALLED : Kind.COASTED;
    }

    private static double kinetic(Motion motion, double from, double to) {
        return motion.massKg() / 2 * (to * to - from * from);
    }

    /** How long it took in s, with the mean of both speeds. */
    double seconds() {
        return wayM / meanMps();
    }

    double meanMps() {
        return (fromMps + toMps) / 2;
    }
}
