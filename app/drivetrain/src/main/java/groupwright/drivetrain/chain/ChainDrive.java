package groupwright.drivetrain.chain;

import groupwright.drivetrain.quantity.Bounds;
import groupwright.drivetrain.quantity.ChainPitch;
import groupwright.drivetrain.quantity.Chainring;
import groupwright.drivetrain.quantity.Cog;

/**
 * Two sprockets with a chain laid round both, without a derailleur.
 *
 * @param pitchMm distance between neighbouring pins in mm, above 0
 * @param teeth1 teeth of one sprocket, 3 to 1000
 * @param teeth2 teeth of the other sprocket, 3 to 1000
 */
public record ChainDrive(double pitchMm, int teeth1, int teeth2) {

    /** Throws {@link IllegalArgumentException} if pitch or tooth counts lie outside their range. */
    public ChainDrive {
        PitchCircle.diameterMm(pitchMm, teeth1);
        PitchCircle.diameterMm(pitchMm, teeth2);
    }

    /** Ring and cog with a bicycle chain. */
    public static ChainDrive of(Chainring ring, Cog cog) {
        return new ChainDrive(ChainPitch.BICYCLE_MM, ring.teeth(), cog.teeth());
    }

    /**
     * Chain length in pitches by the usual series.
     *
     * <p>Formula: L = 2a/p + (z1 + z2)/2 + ((z2 - z1) / 2pi)² · p/a. Source: Bhandari, Design of Machine Elements,
     * Example 14.3. Neglected: higher terms, less than 0.005 pitch on a bicycle; sag.
     *
     * @param centreDistanceMm centre distance a in mm; the pitch circles must not touch
     * @return pitches, seldom a whole number
     * @throws IllegalArgumentException if the pitch circles would touch
     */
    public double approximateLengthPitches(double centreDistanceMm) {
        double a = checkedCentreDistance(centreDistanceMm) / pitchMm;
        return 2 * a + meanTeeth() + spread() / a;
    }

    /**
     * Chain length in pitches, arcs and tangents taken exactly.
     *
     * <p>Formula: L = 2a/p · cos t + (z1 + z2)/2 + t · (z2 - z1) / pi with sin t = (R2 - R1) / a and R = p / (2 sin(pi
     * / z)). Geometry of two circles; arcs are counted in pitches, z to a turn. Neglected: sag, and that links are
     * straight.
     *
     * @param centreDistanceMm centre distance a in mm; the pitch circles must not touch
     * @return pitches, seldom a whole number
     * @throws IllegalArgumentException if the pitch circles would touch
     */
    public double exactLengthPitches(double centreDistanceMm) {
        double a = checkedCentreDistance(centreDistanceMm);
        double tilt = StrictMath.asin((radiusMm(teeth2) - radiusMm(teeth1)) / a);
        return 2 * a / pitchMm * StrictMath.cos(tilt) + meanTeeth() + tilt * (teeth2 - teeth1) / StrictMath.PI;
    }

    /**
     * Centre distance at which a chain of given length is tight; the inverse of {@link #approximateLengthPitches}.
     *
     * <p>Formula: a = p/4 · (k + sqrt(k² - 8 ((z2 - z1) / 2pi)²)), k = L - (z1 + z2)/2. Source: Bhandari, Design of
     * Machine Elements, Example 14.3. Sag neglected.
     *
     * @param lengthPitches chain length in pitches
     * @return millimetres
     * @throws IllegalArgumentException if the chain is too short to go round both sprockets
     */
    public double centreDistanceMm(double lengthPitches) {
        Bounds.positive("the length of a chain", lengthPitches, "pitches");
        double k = lengthPitches - meanTeeth();
        double root = k * k - 8 * spread();
        double a = k > 0 && root >= 0 ? pitchMm / 4 * (k + StrictMath.sqrt(root)) : 0;
        if (a <= leastCentreDistanceMm()) {
            throw new IllegalArgumentException(
                    "a chain of %s pitches is too short to go round sprockets of %d and %d teeth"
                            .formatted(lengthPitches, teeth1, teeth2));
        }
        return a;
    }

    private double checkedCentreDistance(double centreDistanceMm) {
        Bounds.positive("the centre distance", centreDistanceMm, "mm");
        if (centreDistanceMm <= leastCentreDistanceMm()) {
            throw new IllegalArgumentException(
                    "at a centre distance of %s mm sprockets of %d and %d teeth touch, it must be above %s mm"
                            .formatted(centreDistanceMm, teeth1, teeth2, leastCentreDistanceMm()));
        }
        return centreDistanceMm;
    }

    private double leastCentreDistanceMm() {
        return radiusMm(teeth1) + radiusMm(teeth2);
    }

    private double radiusMm(int teeth) {
        return PitchCircle.diameterMm(pitchMm, teeth) / 2;
    }

    private double meanTeeth() {
        return (teeth1 + teeth2) / 2.0;
    }

    private double spread() {
        double perTurn = (teeth2 - teeth1) / (2 * StrictMath.PI);
        return perTurn * perTurn;
    }
}
