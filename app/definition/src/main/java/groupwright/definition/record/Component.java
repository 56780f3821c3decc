package groupwright.definition.record;

import java.util.Optional;

/**
 * The description of one field.
 *
 * @param name as in Java, in files and in addresses; ends in the unit where there is one
 * @param type what it holds
 * @param optional whether it may be absent (it is then an {@link Optional} in Java)
 * @param least smallest number allowed; minus infinity where there is no limit
 * @param most largest number allowed
 * @param missing what a missing field means, as JSON text; nothing where the field must be there
 * @param help what it holds, in words
 */
public record Component(
        String name,
        FieldType type,
        Presence optional,
        double least,
        double most,
        Optional<String> missing,
        String help) {
    /** Whether a field may be absent. */
    public enum Presence {
        ALWAYS,
        OPTIONAL
    }

    /** The unit as shown, or empty. */
    public String unit() {
        return UnitSuffix.shown(name);
    }

    /** Whether the number keeps the limits. */
    boolean allows(double number) {
        return number >= least && number <= most;
    }
}
