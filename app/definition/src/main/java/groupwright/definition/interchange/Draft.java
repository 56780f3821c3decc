package groupwright.definition.interchange;

import groupwright.definition.record.Amount;
import groupwright.definition.record.Component;
import groupwright.definition.record.FieldType;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.ObjectEdit;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.Shape;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A record or item that is not complete yet. Fields without a usual value hold a stand-in until somebody gives them; they
 * are {@link #asked}, and nobody may show or keep the stand-in.
 *
 * @param object what there is so far, stand-ins included
 * @param asked names of the fields that still hold a stand-in, in the order of the description
 */
public record Draft(Object object, Set<String> asked) {
    private static final LocalDate SOME_DAY = LocalDate.of(2000, 1, 1);

    public Draft {
        asked = java.util.Collections.unmodifiableSet(new LinkedHashSet<>(asked));
    }

    /**
     * A draft of these values; the rest at their usual values or asked for.
     *
     * @throws Invalid if a value given is refused
     */
    public static Draft of(Shape<?> shape, Map<String, ?> given) {
        Map<String, Object> values = new LinkedHashMap<>(given);
        Set<String> asked = new LinkedHashSet<>();
        for (int i = 0; i < shape.components().size(); i++) {
            Component component = shape.components().get(i);
            boolean usual = component.optional() == Component.Presence.OPTIONAL
                    || component.missing().isPresent();
            if (!usual && !given.containsKey(component.name())) {
                values.put(component.name(), standIn(component, component.type(), i));
                asked.add(component.name());
            }
        }
        return new Draft(Defaults.of(shape, values), asked);
    }

    /** Numbers rise from field to field, since later ones are upper limits of earlier ones. */
    private static Object standIn(Component component, FieldType type, int position) {
        if (type instanceof FieldType.Whole) {
            return (int) within(component, position);
        } else if (type instanceof FieldType.Number) {
            return Amount.of(within(component, position));
        } else if (type instanceof FieldType.Choice choice) {
            return choice.type().getEnumConstants()[0];
        } else if (type instanceof FieldType.Day) {
            return SOME_DAY;
        } else if (type instanceof FieldType.Reference reference) {
            return RecordId.of(RecordKinds.of(reference.kind()).letters(), 0);
        } else if (type instanceof FieldType.ListOf list) {
            return list.least() == 0 ? List.of() : List.of(standIn(component, list.element(), position));
        } else if (type instanceof FieldType.Nested nested) {
            return of(nested.shape(), Map.of()).object();
        }
        return "-";
    }

    private static double within(Component component, int position) {
        return Math.max(component.least(), Math.min(component.most(), position));
    }

    /**
     * With values given to fields of the draft, or of an object inside it.
     *
     * @throws Invalid if one is refused
     */
    public Draft with(List<String> path, Map<String, ? extends Optional<?>> values) {
        Set<String> left = new LinkedHashSet<>(asked);
        left.removeAll(path.isEmpty() ? values.keySet() : Set.of(path.get(0)));
        return new Draft(ObjectEdit.with(object, path, values), left);
    }

    /** Whether nothing is asked for any more. */
    public boolean isComplete() {
        return asked.isEmpty();
    }

    /** The fields still asked for, as a refusal each. */
    public List<Invalid> refusals() {
        List<Invalid> refusals = new ArrayList<>();
        asked.forEach(name -> refusals.add(new Invalid(name, "is not given", "give it before adding")));
        return refusals;
    }
}
