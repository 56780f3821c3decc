package groupwright.drivetrain.prediction;

import groupwright.drivetrain.quantity.Bounds;

/**
 * The cadences a rider likes, in rpm: 0 &lt; least ≤ low ≤ high ≤ most.
 *
 * @param leastRpm below it the rider grinds
 * @param preferredLowRpm lower end of the preferred cadences
 * @param preferredHighRpm upper end of the preferred cadences
 * @param mostRpm fastest cadence the rider keeps up; he pedals no faster
 */
public record CadenceHabits(double leastRpm, double preferredLowRpm, double preferredHighRpm, double mostRpm) {
    private static final double HIGHEST_RPM = 300;

    /** On this grade and above, the lower end of the preferred cadences is aimed at (own assumption). */
    public static final double STEEP_GRADE = 0.08;

    /** Throws {@link IllegalArgumentException} naming the first cadence out of order. */
    public CadenceHabits {
        Bounds.positive("the least cadence", leastRpm, "rpm");
        Bounds.within("the lower preferred cadence", preferredLowRpm, leastRpm, HIGHEST_RPM, "rpm");
        Bounds.within("the upper preferred cadence", preferredHighRpm, preferredLowRpm, HIGHEST_RPM, "rpm");
        Bounds.within("the fastest cadence", mostRpm, preferredHighRpm, HIGHEST_RPM, "rpm");
    }

    /**
     * The cadence aimed at on a grade in rpm: on the flat and downhill the middle of the preferred ones, falling in
     * proportion to the grade down to their lower end at {@link #STEEP_GRADE}. Own assumption; riders do pedal slower
     * uphill.
     */
    public double targetRpm(double grade) {
        double steepness = Math.max(0, Math.min(1, grade / STEEP_GRADE));
        double middle = (preferredLowRpm + preferredHighRpm) / 2;
        return middle + steepness * (preferredLowRpm - middle);
    }

    /** Whether a cadence is one of the preferred ones. */
    public boolean isComfortable(double cadenceRpm) {
        return cadenceRpm >= preferredLowRpm && cadenceRpm <= preferredHighRpm;
    }
}
