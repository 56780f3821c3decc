package groupwright.drivetrain.derailleur;

import groupwright.drivetrain.quantity.Bounds;
import java.util.ArrayList;
import java.util.List;

/**
 * How far an indexed derailleur misses the cogs, summed up from the smallest cog.
 *
 * @param stackedMm error at each cog from the smallest on in mm: way of the derailleur since the smallest cog less way to
 *     the cog; above 0 it stands too far inwards; the first is 0
 */
public record IndexError(List<Double> stackedMm) {
    /** Throws {@link IllegalArgumentException} if there is no cog or an error is not finite. */
    public IndexError {
        stackedMm = List.copyOf(stackedMm);
        if (stackedMm.isEmpty()) {
            throw new IllegalArgumentException("errors need at least one cog");
        }
        stackedMm.forEach(error -> Bounds.finite("the error at a cog", error, "mm"));
    }

    /**
     * Errors of a shifter and a derailleur on a cassette.
     *
     * <p>Formula: error at cog k = sum over its k gaps of (pull · actuation ratio - spacing) (common practice, no
     * source). Neglected: that the actuation ratio changes along the path, play and friction of the cable. Cost: O(n) in
     * the number of cogs.
     *
     * @param cogSpacingsMm from each cog to the next larger one in mm, each above 0
     * @param pullsMm cable pull of each click from the smallest cog on in mm, each above 0, as many as spacings
     * @param actuationRatio way of the derailleur along the axle for each mm of cable, above 0; 1 with pulls taken as
     *     ways of an electronic derailleur
     * @return the errors, one more than spacings
     * @throws IllegalArgumentException if a number lies outside its range or the lists differ in length
     */
    public static IndexError of(List<Double> cogSpacingsMm, List<Double> pullsMm, double actuationRatio) {
        Bounds.positive("the actuation ratio", actuationRatio, "");
        if (cogSpacingsMm.size() != pullsMm.size()) {
            throw new IllegalArgumentException("%d spacings of cogs need as many pulls, there are %d"
                    .formatted(cogSpacingsMm.size(), pullsMm.size()));
        }
        List<Double> stacked = new ArrayList<>();
        double sum = 0;
        stacked.add(sum);
        for (int i = 0; i < pullsMm.size(); i++) {
            sum += Bounds.positive("the cable pull of a click", pullsMm.get(i), "mm") * actuationRatio
                    - Bounds.positive("the spacing of two cogs", cogSpacingsMm.get(i), "mm");
            stacked.add(sum);
        }
        return new IndexError(stacked);
    }

    /** Largest distance from a cog in mm when the barrel adjuster is set so that the smallest cog is met. */
    public double worstSetOnSmallestMm() {
        return stackedMm.stream().mapToDouble(StrictMath::abs).max().orElseThrow();
    }

    /** Largest distance from a cog in mm at the best setting of the barrel adjuster: half the spread of the errors. */
    public double worstSetBestMm() {
        double most = stackedMm.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        double least = stackedMm.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
        return (most - least) / 2;
    }
}
