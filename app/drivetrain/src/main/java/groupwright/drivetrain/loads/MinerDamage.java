package groupwright.drivetrain.loads;

import groupwright.drivetrain.quantity.Bounds;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Damage by loads of several sizes, added up linearly; failure is expected where the sum reaches 1 (Palmgren and Miner).
 *
 * <p>Formula: D = Σ n_i / N_i. Source: the rule as used in Bhandari, Design of Machine Elements, Example 5.11.
 *
 * <p>Neglects the order of the loads, and mean loads. Real parts fail at sums well away from 1 (common practice, no
 * source), so ratios of damage mean more than lives. Design estimate, not proof of conformity.
 *
 * @param parts n_i / N_i of each load, in the order of the loads
 */
public record MinerDamage(List<Double> parts) {

    /** Throws {@link IllegalArgumentException} if a part is negative or not finite. */
    public MinerDamage {
        parts = List.copyOf(parts);
        parts.forEach(part -> Bounds.notNegative("a part of the damage", part, ""));
    }

    /** Damage by a spectrum on an S-N line, both in the same measure of load; one part for each block. */
    public static MinerDamage of(LoadSpectrum spectrum, SnLine line) {
        return new MinerDamage(spectrum.blocks().stream()
                .map(block -> block.cycles() * line.damageOfOne(block.load()))
                .toList());
    }

    /** Damage by loads whose lives are known. */
    public static MinerDamage of(List<Usage> usages) {
        return new MinerDamage(
                usages.stream().map(usage -> usage.used() / usage.life()).toList());
    }

    /** The sum of the parts. */
    public double sum() {
        return parts.stream().mapToDouble(Double::doubleValue).sum();
    }

    /** How often all of this can be repeated until the sum is 1; empty if it does no damage. */
    public OptionalDouble repeatsToFailure() {
        double sum = sum();
        return sum > 0 ? OptionalDouble.of(1 / sum) : OptionalDouble.empty();
    }

    /** Share of each load in the damage in percent, in their order; all 0 if there is no damage. */
    public List<Double> sharesPct() {
        double sum = sum();
        return parts.stream().map(part -> sum > 0 ? 100 * part / sum : 0).toList();
    }
}
