package groupwright.drivetrain.chain;

import groupwright.drivetrain.quantity.Bounds;

/** What a chain has to carry, beside what rules ask of it. Dynamic loads from the polygon effect are neglected. */
public final class ChainLoad {
    /** Least tensile strength in N of a bicycle's chain in the United States, 1800 lbf. Source: 16 CFR 1512.8. */
    public static final double LEAST_TENSILE_US_N = 8010;

    /** The same for a sidewalk bicycle, 1400 lbf. Source: 16 CFR 1512.8. */
    public static final double LEAST_TENSILE_US_SIDEWALK_N = 6230;

    private static final double MM_PER_M = 1000;
    private static final double SECONDS_PER_MINUTE = 60;

    private ChainLoad() {}

    /**
     * Mean chain speed: z · p · n / 60 000.
     *
     * <p>Source: Bhandari, Design of Machine Elements, Example 14.1.
     *
     * @param pitchMm pitch in mm, above 0
     * @param teeth teeth of the sprocket, 3 to 1000
     * @param speedRpm its speed in rpm, 0 or more
     * @return metres per second
     * @throws IllegalArgumentException if a number lies outside its range
     */
    public static double speedMps(double pitchMm, int teeth, double speedRpm) {
        PitchCircle.diameterMm(pitchMm, teeth);
        Bounds.notNegative("the speed of a sprocket", speedRpm, "rpm");
        return teeth * pitchMm * speedRpm / (MM_PER_M * SECONDS_PER_MINUTE);
    }

    /**
     * Chain tension that carries a power: P / v.
     *
     * @param powerW power in W, 0 or more
     * @param chainSpeedMps chain speed in m/s, above 0
     * @return newtons
     * @throws IllegalArgumentException if a number lies outside its range
     */
    public static double tensionOfPowerN(double powerW, double chainSpeedMps) {
        return Bounds.notNegative("the power", powerW, "W")
                / Bounds.positive("the speed of a chain", chainSpeedMps, "m/s");
    }

    /**
     * Chain tension that carries a torque: torque / pitch radius. The lower span is taken as slack.
     *
     * @param torqueNm torque on the sprocket in N·m, 0 or more
     * @param pitchMm pitch in mm, above 0
     * @param teeth teeth of the sprocket, 3 to 1000
     * @return newtons
     * @throws IllegalArgumentException if a number lies outside its range
     */
    public static double tensionOfTorqueN(double torqueNm, double pitchMm, int teeth) {
        Bounds.notNegative("the torque", torqueNm, "N·m");
        return torqueNm * MM_PER_M / (PitchCircle.diameterMm(pitchMm, teeth) / 2);
    }

    /**
     * Factor between tensile strength and tension.
     *
     * @param tensileN tensile strength in N, above 0
     * @param tensionN tension in N, above 0
     * @return strength / tension, without unit
     * @throws IllegalArgumentException if a number lies outside its range
     */
    public static double safetyFactor(double tensileN, double tensionN) {
        return Bounds.positive("the tensile strength", tensileN, "N") / Bounds.positive("the tension", tensionN, "N");
    }
}
