package groupwright.definition.interchange;

import groupwright.definition.record.Component;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Makes records in which all but a few fields hold their usual values. */
public final class Defaults {
    private Defaults() {}

    /**
     * A record of these values and, for the rest, of what a missing field means.
     *
     * @param given values by field name, of the field's Java type
     * @throws Invalid if a field without a usual value is not given, or a value is refused
     */
    public static <T> T of(Shape<T> shape, Map<String, ?> given) {
        List<Object> values = new ArrayList<>();
        for (Component component : shape.components()) {
            Object value = given.get(component.name());
            values.add(value != null ? value : usual(component));
        }
        return shape.create(values.toArray());
    }

    private static Object usual(Component component) {
        if (component.optional() == Component.Presence.OPTIONAL) {
            return Optional.empty();
        }
        String text = component.missing().orElseThrow(() -> new Invalid(component.name(), "is missing", "give it"));
        return new ValueReader("", "", Parsed.NOTHING).usual(component.type(), Json.ofConstant(text));
    }
}
