package groupwright.drivetrain.wear;

import groupwright.drivetrain.quantity.Bounds;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * How fast parts wear against those of a reference, for each km: 2 is twice as fast.
 *
 * <p>Formula: energy / energy of the reference · factor of the conditions, part by part. Supposes that wear grows with
 * friction energy (Archard's assumption, from memory) and that both use the same materials; coefficient of friction, pin
 * radius and pitch drop out if they are the same. Design estimate, not proof of conformity.
 *
 * @param parts the ratio of each part that both use, 0 or more
 */
public record RelativeWear(Map<WornPart, Double> parts) {

    /** Copies the ratios; throws {@link IllegalArgumentException} if one is negative or not finite. */
    public RelativeWear {
        parts.forEach((part, ratio) -> Bounds.notNegative("the relative wear of a part", ratio, ""));
        Map<WornPart, Double> ordered = new EnumMap<>(WornPart.class);
        ordered.putAll(parts);
        parts = Collections.unmodifiableMap(ordered);
    }

    /**
     * Wear against a reference.
     *
     * @param own what is judged
     * @param reference what it is held against
     * @param conditionFactor how much harsher the own conditions are than those of the reference, above 0; see
     *     {@link ConditionFactors#mean}
     * @throws IllegalArgumentException if the factor is not finite and above 0
     */
    public static RelativeWear of(ArticulationEnergy own, ArticulationEnergy reference, double conditionFactor) {
        Bounds.positive("the condition factor", conditionFactor, "");
        Map<WornPart, Double> ratios = new EnumMap<>(WornPart.class);
        for (WornPart part : WornPart.values()) {
            OptionalDouble ours = own.of(part);
            double theirs = reference.of(part).orElse(0);
            if (ours.isPresent() && theirs > 0) {
                ratios.put(part, ours.getAsDouble() / theirs * conditionFactor);
            }
        }
        return new RelativeWear(ratios);
    }

    /** The ratio of a part; empty if one of both does not use it, so that there is nothing to compare. */
    public OptionalDouble of(WornPart part) {
        return parts.containsKey(part) ? OptionalDouble.of(parts.get(part)) : OptionalDouble.empty();
    }
}
