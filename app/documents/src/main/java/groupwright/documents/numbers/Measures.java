package groupwright.documents.numbers;

import java.util.Map;
import java.util.Optional;

/** Which units a reader wants lengths, speeds, weights and forces in. Other units are the same in both. */
public enum Measures {
    /** As everything is kept and computed. */
    METRIC(Map.of()),
    /**
     * Inches, feet, miles, ounces, pounds. Grams always become ounces, whatever their number, so that a column, a target and
     * a margin share one unit.
     */
    IMPERIAL(Map.of("mm", "in", "m", "ft", "km", "mi", "km/h", "mph", "g", "oz", "kg", "lb", "N", "lbf"));

    private final Map<String, String> shown;

    Measures(Map<String, String> shown) {
        this.shown = shown;
    }

    /** The way from a unit to the one shown; nothing where it stays. */
    Optional<Conversion> from(String unit) {
        return Optional.ofNullable(shown.get(unit)).flatMap(other -> Conversion.between(unit, other));
    }

    /** The symbol shown for a unit. */
    String shown(String unit) {
        return shown.getOrDefault(unit, unit);
    }
}
