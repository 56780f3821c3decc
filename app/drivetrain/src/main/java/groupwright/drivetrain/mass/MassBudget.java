package groupwright.drivetrain.mass;

import groupwright.drivetrain.quantity.Bounds;
import java.util.List;

/**
 * The mass of a set, added up from its parts; 0 for no parts. Cost of each: O(n) in the number of parts.
 *
 * @param parts the parts
 */
public record MassBudget(List<PartMass> parts) {
    /** Correlation taken between the errors of two parts unless stated otherwise (own choice, no source). */
    public static final double DEFAULT_CORRELATION = 0.3;

    /** Nine in ten: the standard normal distribution's quantile at 0.9 (from tables). */
    private static final double Z_90 = 1.2815515655446004;

    /** Copies the list. */
    public MassBudget {
        parts = List.copyOf(parts);
    }

    /** Basic mass in g: what the parts weigh by what is known now. */
    public double basicG() {
        return parts.stream().mapToDouble(PartMass::basicG).sum();
    }

    /** Predicted mass in g: sum of basic · (1 + allowance), what the set is expected to weigh in series. */
    public double predictedG() {
        return parts.stream().mapToDouble(PartMass::predictedG).sum();
    }

    /**
     * Spread: standard deviation of the set's mass, any two parts being wrong together to the same degree.
     *
     * <p>Formula: sqrt((1 - rho) · sum of s² + rho · (sum of s)²), the double sum of rho · s_i · s_j in closed form; rho
     * 0 gives the root of the sum of squares, rho 1 the plain sum.
     *
     * @param correlation rho, 0 to 1
     * @return grams
     * @throws IllegalArgumentException if the correlation lies outside 0 to 1
     */
    public double spreadG(double correlation) {
        Bounds.within("the correlation between parts", correlation, 0, 1, "");
        double squares = parts.stream()
                .mapToDouble(part -> part.spreadG() * part.spreadG())
                .sum();
        double sum = parts.stream().mapToDouble(PartMass::spreadG).sum();
        return StrictMath.sqrt((1 - correlation) * squares + correlation * sum * sum);
    }

    /**
     * The mass that nine sets of designs like this one in ten stay below: predicted + 1.2816 · spread.
     *
     * <p>Neglected: that errors are not quite normal, and that parts tend to grow rather than shrink.
     *
     * @param correlation between the errors of two parts, 0 to 1
     * @return grams
     * @throws IllegalArgumentException if the correlation lies outside 0 to 1
     */
    public double p90G(double correlation) {
        return predictedG() + Z_90 * spreadG(correlation);
    }

    /**
     * Margin in g: target - predicted; positive is good.
     *
     * @throws IllegalArgumentException if the target in g is negative or not finite
     */
    public double marginG(double targetG) {
        return Bounds.notNegative("the mass target", targetG, "g") - predictedG();
    }
}
