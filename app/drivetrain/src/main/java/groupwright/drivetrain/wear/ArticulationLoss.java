package groupwright.drivetrain.wear;

import groupwright.drivetrain.chain.ChainLoad;
import groupwright.drivetrain.gearing.Gear;
import groupwright.drivetrain.quantity.Bounds;

/**
 * Power lost to friction in the joints of the chain, in one gear at one power and cadence.
 *
 * <p>Formula: v / p joints a second bend at each end of a run. Slack run with tension T₀: on both pulleys, off them, off
 * the ring, on the cog. Tight run with tension P / v + T₀: off the cog, on the ring. Each bend costs mu · F · r · 2 pi / z.
 * So loss / P = a + b / F with F = P / v: the efficiency falls linearly with 1 / tension, as measured by Spicer et al.,
 * Journal of Mechanical Design 123(4), 2001.
 *
 * <p>Neglected: bearings and seals of pulleys, stirred lubricant, crossed running, impact of rollers. So levels come out
 * better than measured ones, and so do differences (Spicer et al. report 2 to 5 points between 52-11 and 52-21, the assumed
 * friction gives less than 1): use differences between concepts for their sign and order, with
 * {@link ChainFriction#UNCERTAINTY_PCT}. Design estimate, not proof of conformity.
 *
 * @param powerW power at the crank in W, above 0
 * @param tightW loss in W where the tight run bends, 0 or more
 * @param slackW loss in W where the slack run bends, 0 or more
 */
public record ArticulationLoss(double powerW, double tightW, double slackW) {

    /** Throws {@link IllegalArgumentException} if a number lies outside its range. */
    public ArticulationLoss {
        Bounds.positive("the power at the crank", powerW, "W");
        Bounds.notNegative("the loss of the tight run", tightW, "W");
        Bounds.notNegative("the loss of the slack run", slackW, "W");
    }

    /**
     * The loss in a gear.
     *
     * @param gear ring and cog
     * @param pulleys the pulleys of the cage
     * @param friction the chain
     * @param powerW power at the crank in W, above 0
     * @param cadenceRpm turns of the crank a minute, above 0
     * @throws IllegalArgumentException if a number lies outside its range
     */
    public static ArticulationLoss of(
            Gear gear, Pulleys pulleys, ChainFriction friction, double powerW, double cadenceRpm) {
        Bounds.positive("the power at the crank", powerW, "W");
        Bounds.positive("the cadence", cadenceRpm, "rpm");
        double speed = ChainLoad.speedMps(friction.pitchMm(), gear.ring().teeth(), cadenceRpm);
        double slackN = friction.slackTensionN();
        double tightN = ChainLoad.tensionOfPowerN(powerW, speed) + slackN;
        double gearRad = Articulation.underLoadRad(gear); // the slack run bends on the same two wheels
        double pulleysRad =
                2 * Articulation.angleRad(pulleys.guideTeeth()) + 2 * Articulation.angleRad(pulleys.tensionTeeth());
        return new ArticulationLoss(
                powerW,
                tightN * speed * friction.shareOfWork(gearRad),
                slackN * speed * friction.shareOfWork(gearRad + pulleysRad));
    }

    /** The whole loss in W. */
    public double lossW() {
        return tightW + slackW;
    }

    /** Share of the power that is left, below 1; 0 where the loss would eat more than the power. */
    public double efficiency() {
        return Math.max(0, 1 - lossW() / powerW);
    }
}
