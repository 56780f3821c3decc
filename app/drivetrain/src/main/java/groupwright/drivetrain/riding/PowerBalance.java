package groupwright.drivetrain.riding;

import groupwright.drivetrain.quantity.Bounds;

/**
 * Power and speed of a bicycle on a steady slope.
 *
 * <p>Formula: crank power · efficiency = ½ · density · (CdA + Fw) · va · |va| · v + v · Crr · m · g · cos a + v · (b0 +
 * b1 · v) + v · m · g · sin a (+ kinetic power), a = atan(grade), va = v + headwind.
 *
 * <p>Source: Martin, Milliken, Cobb, McFadden, Coggan, Validation of a mathematical model for road cycling power, J.
 * Applied Biomechanics 14(3):276-291, 1998; there va² stands for va · |va|, which is the same unless a tailwind is faster
 * than the rider. Neglected: gusts, drafting, cornering, tyre slip, losses that change with chain tension.
 */
public final class PowerBalance {
    /** Acceleration of gravity in m/s² as Martin et al. round it. */
    public static final double GRAVITY = 9.81;

    private static final double FASTEST_MPS = 1000;

    private PowerBalance() {}

    /**
     * The power terms at a steady speed.
     *
     * @param system rider and bicycle
     * @param air the air
     * @param grade rise / horizontal run, -1 to 1; 0.08 is 8 %
     * @param speedMps ground speed in m/s, 0 or more
     * @return the terms, none of them kinetic
     * @throws IllegalArgumentException if a number lies outside its range
     */
    public static PowerTerms terms(RidingSystem system, Air air, double grade, double speedMps) {
        Bounds.notNegative("the ground speed", speedMps, "m/s");
        double slope = slopeAngle(grade);
        double weightN = system.massKg() * GRAVITY;
        return new PowerTerms(
                speedMps * airN(system, air, speedMps),
                speedMps * system.rollingCoefficient() * weightN * StrictMath.cos(slope),
                speedMps * system.bearings().forceN(speedMps),
                speedMps * weightN * StrictMath.sin(slope),
                0);
    }

    /**
     * Power at the crank that holds a speed; 0 where the bicycle would have to be braked.
     *
     * @param system rider and bicycle
     * @param air the air
     * @param grade rise / horizontal run, -1 to 1
     * @param speedMps ground speed in m/s, 0 or more
     * @return watts
     * @throws IllegalArgumentException if a number lies outside its range
     */
    public static double crankPowerW(RidingSystem system, Air air, double grade, double speedMps) {
        return terms(system, air, grade, speedMps).crankW(system);
    }

    /**
     * Speed that a power at the crank holds; the inverse of {@link #crankPowerW}.
     *
     * <p>With no power the speed at which the bicycle coasts, 0 where it does not roll by itself. The resisting force
     * never falls with speed, so there is one such speed. It is found by halving brackets, about 60 evaluations, to the
     * last digits.
     *
     * @param system rider and bicycle
     * @param air the air
     * @param grade rise / horizontal run, -1 to 1
     * @param crankPowerW power at the crank in W, 0 or more
     * @return metres per second
     * @throws IllegalArgumentException if a number lies outside its range, or if nothing holds the bicycle back below
     *     1000 m/s
     */
    public static double speedMps(RidingSystem system, Air air, double grade, double crankPowerW) {
        double wheelW = Bounds.notNegative("the power", crankPowerW, "W") * system.efficiency();
        double slope = slopeAngle(grade);
        double steadyN = system.massKg()
                * GRAVITY
                * (system.rollingCoefficient() * StrictMath.cos(slope) + StrictMath.sin(slope));
        double coastingMps = Root.ofRising(v -> resistanceN(system, air, steadyN, v), FASTEST_MPS)
                .orElseThrow(PowerBalance::nothingHoldsBack);
        return Root.ofRising(v -> resistanceN(system, air, steadyN, v) * v - wheelW, coastingMps, FASTEST_MPS)
                .orElseThrow(PowerBalance::nothingHoldsBack);
    }

    /** Slope angle in radians of a grade, checked. */
    static double slopeAngle(double grade) {
        return StrictMath.atan(Bounds.within("the grade (rise / run)", grade, -1, 1, ""));
    }

    /** Air resistance in N at a ground speed, negative in a tailwind faster than the rider. */
    static double airN(RidingSystem system, Air air, double speedMps) {
        double airSpeed = speedMps + air.headwindMps();
        double areaM2 = system.dragAreaM2() + system.wheelDragAreaM2();
        return air.densityKgPerM3() / 2 * areaM2 * airSpeed * StrictMath.abs(airSpeed);
    }

    private static double resistanceN(RidingSystem system, Air air, double steadyN, double speedMps) {
        return airN(system, air, speedMps) + steadyN + system.bearings().forceN(speedMps);
    }

    private static IllegalArgumentException nothingHoldsBack() {
        return new IllegalArgumentException(
                "nothing holds the bicycle back below 1000 m/s, enter rolling resistance and drag area");
    }
}
