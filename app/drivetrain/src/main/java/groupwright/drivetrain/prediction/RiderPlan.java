package groupwright.drivetrain.prediction;

import groupwright.drivetrain.quantity.Bounds;
import groupwright.drivetrain.riding.Climb;
import java.util.List;

/**
 * How a rider means to ride.
 *
 * @param power power by grade, at least one, by rising grade; between two grades in proportion, beyond the ends as there
 * @param coastingGrade below this grade, -1 to 1, the rider does not pedal if the bicycle rolls by itself at twice the
 *     walking pace
 * @param downhillCapKmh speed in km/h he does not exceed downhill, at least 5: he pedals less, then brakes
 * @param cadence the cadences he likes
 * @param mostTorqueNm most torque at the crank, as a mean over a turn, in N·m, above 0
 * @param walkingPaceKmh below this speed in km/h, 1 to 10, he gets off and walks
 */
public record RiderPlan(
        List<GradePower> power,
        double coastingGrade,
        double downhillCapKmh,
        CadenceHabits cadence,
        double mostTorqueNm,
        double walkingPaceKmh) {
    private static final double COASTING_GRADE = -0.03;

    /** Copies the powers; throws {@link IllegalArgumentException} if a number lies outside its range or out of order. */
    public RiderPlan {
        power = List.copyOf(power);
        if (power.isEmpty()) {
            throw new IllegalArgumentException("a rider needs a power for at least one grade");
        }
        for (int i = 1; i < power.size(); i++) {
            if (power.get(i).grade() <= power.get(i - 1).grade()) {
                throw new IllegalArgumentException(
                        "the powers of a rider must be ordered by rising grade, but %s follows %s"
                                .formatted(
                                        power.get(i).grade(), power.get(i - 1).grade()));
            }
        }
        Bounds.within("the coasting grade", coastingGrade, -1, 1, "");
        Bounds.within("the downhill speed", downhillCapKmh, 5, 300, "km/h");
        Bounds.positive("the most torque at the crank", mostTorqueNm, "N·m");
        Bounds.within("the walking pace", walkingPaceKmh, 1, 10, "km/h");
    }

    /**
     * A plan from few numbers, by our own assumptions: 0.6 of the power held for an hour on -2 %, 0.85 on the flat, 0.95
     * on 3 % and 1.05 from 6 % on; coasting below -3 %; torque for the largest of these powers at half the least
     * cadence; walking below 4.5 km/h.
     *
     * <p>Recorded rides show the pattern, more uphill and less downhill; the shares differ from rider to rider. Where a
     * ride was recorded, use its own mean powers by grade.
     *
     * @param powerHourW power held for an hour in W, 0 or more
     * @param cadence the cadences the rider likes
     * @param downhillCapKmh speed in km/h he does not exceed downhill, at least 5
     * @return the plan
     * @throws IllegalArgumentException if a number lies outside its range
     */
    public static RiderPlan usual(double powerHourW, CadenceHabits cadence, double downhillCapKmh) {
        List<GradePower> power = List.of(
                new GradePower(-0.02, 0.6 * powerHourW),
                new GradePower(0, 0.85 * powerHourW),
                new GradePower(0.03, 0.95 * powerHourW),
                new GradePower(0.06, 1.05 * powerHourW));
        return of(power, COASTING_GRADE, downhillCapKmh, cadence);
    }

    /** A plan with the usual torque and walking pace, see {@link #usual}. */
    public static RiderPlan of(
            List<GradePower> power, double coastingGrade, double downhillCapKmh, CadenceHabits cadence) {
        double most = power.stream().mapToDouble(GradePower::crankPowerW).max().orElse(0);
        double halfLeastRadPerS = cadence.leastRpm() / 2 * 2 * StrictMath.PI / 60;
        return new RiderPlan(
                power,
                coastingGrade,
                downhillCapKmh,
                cadence,
                Math.max(1, most / halfLeastRadPerS),
                Climb.WALKING_PACE_KMH);
    }

    /** Power at the crank in W on a grade. */
    public double powerW(double grade) {
        GradePower below = power.get(0);
        for (GradePower above : power) {
            if (grade <= above.grade()) {
                double span = above.grade() - below.grade();
                double part = span > 0 ? Math.max(0, (grade - below.grade()) / span) : 0;
                return below.crankPowerW() + part * (above.crankPowerW() - below.crankPowerW());
            }
            below = above;
        }
        return below.crankPowerW();
    }
}
