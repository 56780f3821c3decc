package groupwright.definition.record;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What can happen to a record of any kind as a whole: duplicated, retired, brought back, parked, taken up again. */
public final class Lifecycle {
    private static final String RETIRED = "retired";
    private static final String STATE = "state";
    private static final String REASON = "stateReason";
    private static final String PARKED = "PARKED";
    private static final List<String> TITLES = List.of("title", "name", "words", "wording");

    /** What was decided, signed or found about a record says nothing about its copy. */
    private static final Set<String> OF_THE_ORIGINAL =
            Set.of("approvals", "signatures", "frozen", "results", STATE, REASON, RETIRED);

    private Lifecycle() {}

    /**
     * With a copy of a record under the next free id, {@link Definition#nextId}: its title ends in "copy", it carries no
     * approval, signature, result or state of the original.
     *
     * @throws Invalid if there is no such record or it is the project itself
     */
    public static Definition duplicate(Definition definition, RecordId id) {
        Entry record = record(definition, id);
        Shape<?> shape = Shape.of(record.getClass());
        List<Object> values = new ArrayList<>();
        for (int i = 0; i < shape.components().size(); i++) {
            Component component = shape.components().get(i);
            Object value = shape.value(record, i);
            if (component.type() instanceof FieldType.OwnId) {
                values.add(definition.nextId(RecordKinds.of(id).orElseThrow()));
            } else if (OF_THE_ORIGINAL.contains(component.name())) {
                values.add(usual(component).orElse(value));
            } else {
                values.add(component.name().equals(titleField(shape)) ? value + " copy" : value);
            }
        }
        return definition.with((Entry) shape.create(values.toArray()));
    }

    private static String titleField(Shape<?> shape) {
        return TITLES.stream()
                .filter(name -> shape.indexOf(name) >= 0)
                .findFirst()
                .orElse("");
    }

    private static Optional<Object> usual(Component component) {
        if (component.type() instanceof FieldType.ListOf) {
            return Optional.of(List.of());
        } else if (component.type() instanceof FieldType.Text) {
            return Optional.of("");
        } else if (component.type() instanceof FieldType.Choice choice) {
            String word = component.missing().orElse("").replace("\"", "").replace('-', '_');
            for (Enum<?> constant : choice.type().getEnumConstants()) {
                if (constant.name().equalsIgnoreCase(word)) {
                    return Optional.of(constant);
                }
            }
        }
        return Optional.empty();
    }

    /**
     * With a record retired.
     *
     * @param reason why; must say something
     * @throws Invalid if the reason is blank, there is no such record, or its kind cannot be retired
     */
    public static Definition retire(Definition definition, RecordId id, String reason) {
        record(definition, id);
        return ObjectEdit.with(definition, Address.of(id), Map.of(RETIRED, Optional.of(said(RETIRED, reason))));
    }

    /** With a retired record in use again. */
    public static Definition bringBack(Definition definition, RecordId id) {
        record(definition, id);
        return ObjectEdit.with(definition, Address.of(id), Map.of(RETIRED, Optional.of("")));
    }

    /** Whether records of a kind can be parked. */
    public static boolean canBeParked(RecordKind<?> kind) {
        return kind.shape().indexOf(REASON) >= 0 && parked(kind.shape()).isPresent();
    }

    /** Whether a record is parked. */
    public static boolean isParked(Entry record) {
        Shape<?> shape = Shape.of(record.getClass());
        return parked(shape)
                .map(word -> word.equals(shape.value(record, shape.indexOf(STATE))))
                .orElse(false);
    }

    /**
     * With a record parked.
     *
     * @param reason why; must say something
     * @throws Invalid if the reason is blank, there is no such record, or its kind cannot be parked
     */
    public static Definition park(Definition definition, RecordId id, String reason) {
        Shape<?> shape = Shape.of(record(definition, id).getClass());
        Enum<?> parked = parked(shape).orElseThrow(() -> new Invalid(STATE, id + " cannot be parked", "retire it"));
        return state(definition, id, parked, said(REASON, reason));
    }

    /** With a parked record in the state new ones have; the reason goes. */
    public static Definition unpark(Definition definition, RecordId id) {
        Shape<?> shape = Shape.of(record(definition, id).getClass());
        if (parked(shape).isEmpty()) {
            throw new Invalid(STATE, id + " cannot be parked", "leave it");
        }
        Component state = shape.components().get(shape.indexOf(STATE));
        return state(definition, id, usual(state).orElseThrow(), "");
    }

    private static Definition state(Definition definition, RecordId id, Object state, String reason) {
        Map<String, Optional<?>> values = new LinkedHashMap<>();
        values.put(STATE, Optional.of(state));
        values.put(REASON, Optional.of(reason));
        return ObjectEdit.with(definition, Address.of(id), values);
    }

    private static Optional<Enum<?>> parked(Shape<?> shape) {
        int position = shape.indexOf(STATE);
        if (position >= 0 && shape.components().get(position).type() instanceof FieldType.Choice choice) {
            for (Enum<?> constant : choice.type().getEnumConstants()) {
                if (constant.name().equals(PARKED)) {
                    return Optional.of(constant);
                }
            }
        }
        return Optional.empty();
    }

    private static Entry record(Definition definition, RecordId id) {
        if (id.equals(RecordId.PROJECT)) {
            throw new Invalid("id", "this cannot be done to the project itself", "choose a record");
        }
        return definition.get(id).orElseThrow(() -> new Invalid("", "there is no record " + id, "add it first"));
    }

    private static String said(String field, String reason) {
        if (reason.isBlank()) {
            throw new Invalid(field, "no reason is given", "say why, in a few words");
        }
        return reason.strip();
    }
}
