package groupwright.definition.record;

import java.util.List;
import java.util.Optional;

/** Holds values against the limits their description states. */
final class LimitCheck {
    private LimitCheck() {}

    static void check(Component component, Object value) {
        Object inner = value instanceof Optional<?> optional ? optional.orElse(null) : value;
        if (inner instanceof List<?> list) {
            size(component, list);
            list.forEach(element -> one(component, element));
        } else if (inner != null) { // absent is fine where the Java type is Optional
            one(component, inner);
        }
    }

    private static void size(Component component, List<?> list) {
        FieldType.ListOf type = (FieldType.ListOf) component.type();
        if (list.size() < type.least() || list.size() > type.most()) {
            throw new Invalid(
                    component.name(),
                    "has " + list.size() + (list.size() == 1 ? " entry" : " entries"),
                    type.most() == Integer.MAX_VALUE
                            ? "write at least " + type.least()
                            : "write " + type.least() + " to " + type.most());
        }
    }

    private static void one(Component component, Object value) {
        if (value instanceof Amount amount) {
            number(component, amount.value());
        } else if (value instanceof Integer whole) {
            number(component, whole);
        } else if (value instanceof String text) {
            if (component.type() instanceof FieldType.Text type && type.required() && text.isBlank()) {
                throw new Invalid(component.name(), "is empty", "write it");
            }
        } else if (value instanceof Record nested && !(value instanceof RecordId) && !(value instanceof Settings)) {
            try {
                Shape.of(nested.getClass()).check(nested);
            } catch (Invalid invalid) {
                throw invalid.inside(
                        nested instanceof Item item ? component.name() + "." + item.id() : component.name());
            }
        }
    }

    private static void number(Component component, double number) {
        if (!component.allows(number)) {
            throw new Invalid(component.name(), shown(number) + " is out of its limits", allowed(component));
        }
    }

    private static String allowed(Component component) {
        String unit = component.unit().isEmpty() ? "" : " " + component.unit();
        if (Double.isInfinite(component.least())) {
            return "write at most " + shown(component.most()) + unit;
        }
        if (Double.isInfinite(component.most())) {
            return "write at least " + shown(component.least()) + unit;
        }
        return "write " + shown(component.least()) + " to " + shown(component.most()) + unit;
    }

    private static String shown(double number) {
        return new java.math.BigDecimal(Double.toString(number))
                .stripTrailingZeros()
                .toPlainString();
    }
}
