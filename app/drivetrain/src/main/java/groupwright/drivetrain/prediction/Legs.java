package groupwright.drivetrain.prediction;

/**
 * Force of the legs at the wheel in one gear: the power asked for, less where it would take more torque than there is,
 * fading to nothing above the fastest cadence. It never grows with speed.
 *
 * @param wheelPowerW power at the wheel in W, 0 or more
 * @param mostN most force at the wheel in N
 * @param fadesFromMps speed of the fastest cadence in this gear in m/s
 */
record Legs(double wheelPowerW, double mostN, double fadesFromMps) {
    /** No pedalling. */
    static final Legs RESTING = new Legs(0, 0, 1);

    private static final double FADE = 0.05; // share above the fastest cadence at which no power is left

    double forceN(double speedMps) {
        return Math.min(wheelPowerW / speedMps, mostN) * left(speedMps);
    }

    double growthNsPerM(double speedMps) {
        boolean fading = speedMps > fadesFromMps && speedMps < fadesFromMps * (1 + FADE);
        double free = wheelPowerW / speedMps;
        double full = Math.min(free, mostN);
        double growth = free < mostN ? -free / speedMps : 0;
        return growth * left(speedMps) - (fading ? full / (FADE * fadesFromMps) : 0);
    }

    private double left(double speedMps) {
        return speedMps <= fadesFromMps ? 1 : Math.max(0, 1 - (speedMps / fadesFromMps - 1) / FADE);
    }
}
