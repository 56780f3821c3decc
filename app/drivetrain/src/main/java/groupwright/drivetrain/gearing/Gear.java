package groupwright.drivetrain.gearing;

import groupwright.drivetrain.quantity.Bounds;
import groupwright.drivetrain.quantity.Chainring;
import groupwright.drivetrain.quantity.Cog;

/**
 * One ring with one cog. Gears are ordered by ratio, compared exactly; equal ratios by ring, the smaller first.
 *
 * <p>Everything here is kinematics: tyre and chain do not slip.
 *
 * @param ring the ring the chain lies on
 * @param cog the cog the chain lies on
 */
public record Gear(Chainring ring, Cog cog) implements Comparable<Gear> {
    private static final double MM_PER_INCH = 25.4; // exact by the international agreement of 1959
    private static final double MINUTES_PER_HOUR = 60;
    private static final double M_PER_KM = 1000;

    /** The gear with these tooth counts. */
    public static Gear of(int ringTeeth, int cogTeeth) {
        return new Gear(new Chainring(ringTeeth), new Cog(cogTeeth));
    }

    /** Turns of the wheel for one turn of the crank: ring teeth / cog teeth. */
    public double ratio() {
        return (double) ring.teeth() / cog.teeth();
    }

    /**
     * Development: metres covered in one turn of the crank.
     *
     * <p>Formula: circumference · ratio. Source: footnote to 16 CFR 1512.5.
     */
    public double developmentM(Wheel wheel) {
        return wheel.circumferenceM() * ratio();
    }

    /** Gear inches: diameter in inches of the directly driven wheel with the same development (common practice). */
    public double gearInches(Wheel wheel) {
        return ratio() * wheel.rollingDiameterMm() / MM_PER_INCH;
    }

    /**
     * Gain ratio: distance the bicycle covers for each unit of distance the pedal covers on its circle.
     *
     * <p>Formula: (wheel radius / crank length) · ratio; no unit (common practice, no source).
     *
     * @param wheel the driven wheel
     * @param crankLengthMm crank length in mm, 50 to 300
     * @return the gain ratio
     * @throws IllegalArgumentException if the crank length lies outside its range
     */
    public double gainRatio(Wheel wheel, double crankLengthMm) {
        Bounds.within("the crank length", crankLengthMm, 50, 300, "mm");
        return wheel.rollingDiameterMm() / 2 / crankLengthMm * ratio();
    }

    /**
     * Speed in km/h at a cadence: development · cadence · 60 / 1000.
     *
     * @throws IllegalArgumentException if the cadence in rpm is negative or not finite
     */
    public double speedKmh(Wheel wheel, double cadenceRpm) {
        Bounds.notNegative("the cadence", cadenceRpm, "rpm");
        return developmentM(wheel) * cadenceRpm * MINUTES_PER_HOUR / M_PER_KM;
    }

    /**
     * Cadence in rpm at a speed: speed · 1000 / (60 · development).
     *
     * @throws IllegalArgumentException if the speed in km/h is negative or not finite
     */
    public double cadenceRpm(Wheel wheel, double speedKmh) {
        Bounds.notNegative("the speed", speedKmh, "km/h");
        return speedKmh * M_PER_KM / (MINUTES_PER_HOUR * developmentM(wheel));
    }

    /**
     * Cadence in rpm just after a shift from this gear, before the speed has changed: cadence · ratio / next ratio.
     *
     * @throws IllegalArgumentException if the cadence in rpm is negative or not finite
     */
    public double cadenceAfterShiftRpm(Gear next, double cadenceRpm) {
        Bounds.notNegative("the cadence", cadenceRpm, "rpm");
        return cadenceRpm * ratio() / next.ratio();
    }

    /** How much higher the other gear is, in percent of this one: 100 · (next ratio / ratio - 1); negative if lower. */
    public double stepToPct(Gear next) {
        int own = ring.teeth() * next.cog.teeth();
        return 100.0 * (next.ring.teeth() * cog.teeth() - own) / own;
    }

    @Override
    public int compareTo(Gear other) {
        int byRatio = Integer.compare(ring.teeth() * other.cog.teeth(), other.ring.teeth() * cog.teeth());
        return byRatio != 0 ? byRatio : ring.compareTo(other.ring);
    }
}
