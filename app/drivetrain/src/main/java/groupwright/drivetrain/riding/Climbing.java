package groupwright.drivetrain.riding;

import groupwright.drivetrain.gearing.Gear;
import groupwright.drivetrain.gearing.Wheel;
import groupwright.drivetrain.quantity.Bounds;
import java.util.OptionalDouble;

/** What a gear lets a rider do with a given power, by the steady {@link PowerBalance}. */
public final class Climbing {
    private static final double KMH_PER_MPS = 3.6;

    private Climbing() {}

    /**
     * Speed and cadence up a slope with a given power.
     *
     * @param system rider and bicycle
     * @param air the air
     * @param grade rise / horizontal run, -1 to 1
     * @param crankPowerW power at the crank in W, 0 or more
     * @param gear the gear ridden in
     * @param wheel the driven wheel
     * @return the climb
     * @throws IllegalArgumentException if a number lies outside its range, or if nothing holds the bicycle back
     */
    public static Climb climb(RidingSystem system, Air air, double grade, double crankPowerW, Gear gear, Wheel wheel) {
        double speedKmh = PowerBalance.speedMps(system, air, grade, crankPowerW) * KMH_PER_MPS;
        return new Climb(speedKmh, gear.cadenceRpm(wheel, speedKmh));
    }

    /**
     * The steepest slope on which a rider can hold a cadence in a gear with a given power.
     *
     * <p>Formula: at the speed the cadence gives, the force left for the slope is F = efficiency · P / v - air - bearings
     * = m · g · (Crr · cos a + sin a), so a = asin(F / (m · g · sqrt(1 + Crr²))) - atan Crr; the grade is tan a.
     *
     * @param system rider and bicycle
     * @param air the air
     * @param crankPowerW power at the crank in W, 0 or more
     * @param gear the gear ridden in
     * @param wheel the driven wheel
     * @param cadenceRpm the cadence in rpm, above 0
     * @return grade in percent; negative if the cadence needs a descent; empty if the force left is more than the weight
     *     either way, so that no slope is steep enough
     * @throws IllegalArgumentException if a number lies outside its range
     */
    public static OptionalDouble steepestGradePct(
            RidingSystem system, Air air, double crankPowerW, Gear gear, Wheel wheel, double cadenceRpm) {
        Bounds.notNegative("the power", crankPowerW, "W");
        double speedMps = gear.speedKmh(wheel, Bounds.positive("the cadence", cadenceRpm, "rpm")) / KMH_PER_MPS;
        double leftN = system.efficiency() * crankPowerW / speedMps
                - PowerBalance.airN(system, air, speedMps)
                - system.bearings().forceN(speedMps);
        double rolling = StrictMath.atan(system.rollingCoefficient());
        double share = leftN * StrictMath.cos(rolling) / (system.massKg() * PowerBalance.GRAVITY);
        double slope = StrictMath.asin(StrictMath.max(-1, StrictMath.min(1, share))) - rolling;
        return StrictMath.abs(share) < 1 && StrictMath.abs(slope) < StrictMath.PI / 2
                ? OptionalDouble.of(100 * StrictMath.tan(slope))
                : OptionalDouble.empty();
    }

    /**
     * Spin-out speed: the speed in km/h in the highest gear at the highest cadence a rider likes.
     *
     * @param highest the highest gear in use
     * @param wheel the driven wheel
     * @param cadenceRpm the cadence in rpm, 0 or more
     * @return km/h
     * @throws IllegalArgumentException if the cadence is negative or not finite
     */
    public static double spinOutSpeedKmh(Gear highest, Wheel wheel, double cadenceRpm) {
        return highest.speedKmh(wheel, cadenceRpm);
    }

    /**
     * Held speed: what a rider can hold on the flat with a given power, in whatever gear that takes.
     *
     * @param system rider and bicycle
     * @param air the air
     * @param crankPowerW power at the crank in W, 0 or more
     * @return km/h
     * @throws IllegalArgumentException if the power is negative or not finite, or if nothing holds the bicycle back
     */
    public static double heldSpeedKmh(RidingSystem system, Air air, double crankPowerW) {
        return PowerBalance.speedMps(system, air, 0, crankPowerW) * KMH_PER_MPS;
    }
}
