package groupwright.documents.project;

import groupwright.definition.figure.Nearest;
import groupwright.definition.record.Component;
import groupwright.definition.record.FieldType;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKind;
import groupwright.definition.record.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/** Fields of records by the names templates use: {@code cogs}, or {@code derailleur.slope_deg} inside an object. */
final class RecordFields {
    private RecordFields() {}

    /** All fields of a kind, those of objects inside it too; fields of objects in lists are left out. */
    static SortedMap<String, Component> of(RecordKind<?> kind) {
        SortedMap<String, Component> fields = new TreeMap<>();
        collect("", kind.shape(), fields);
        return fields;
    }

    private static void collect(String prefix, Shape<?> shape, SortedMap<String, Component> fields) {
        for (Component component : shape.components()) {
            if (component.type() instanceof FieldType.Nested nested) {
                collect(prefix + component.name() + ".", nested.shape(), fields);
            } else {
                fields.put(prefix + component.name(), component);
            }
        }
    }

    /**
     * The description of a field.
     *
     * @throws Invalid with the nearest name if there is none
     */
    static Component component(String word, String field) {
        SortedMap<String, Component> fields = of(Kinds.of(word));
        if (fields.containsKey(field)) {
            return fields.get(field);
        }
        throw new Invalid(
                "",
                "a " + word + " has no field \"" + field + "\"",
                Nearest.of(field, fields.keySet())
                        .map(near -> "did you mean " + near + "?")
                        .orElse("its fields are " + String.join(", ", fields.keySet())));
    }

    /** What stands in a field that its kind has; nothing where an optional one, or the object around it, is empty. */
    static Optional<Object> value(Object record, String field) {
        Object at = record;
        for (String name : field.split("\\.")) {
            Shape<?> shape = Shape.of(at.getClass());
            Object value = shape.value(at, shape.indexOf(name));
            if (value instanceof Optional<?> optional) {
                if (optional.isEmpty()) {
                    return Optional.empty();
                }
                value = optional.get();
            }
            at = value;
        }
        return Optional.of(at);
    }

    /** The records that a record refers to, in any field at any depth, in the order of ids. Cost: its fields. */
    static List<RecordId> references(Object record) {
        TreeSet<RecordId> found = new TreeSet<>();
        Shape<?> shape = Shape.of(record.getClass());
        for (int i = 0; i < shape.components().size(); i++) {
            if (!(shape.components().get(i).type() instanceof FieldType.OwnId)) {
                gather(shape.value(record, i), found);
            }
        }
        return new ArrayList<>(found);
    }

    private static void gather(Object value, TreeSet<RecordId> found) {
        if (value instanceof RecordId id) {
            found.add(id);
        } else if (value instanceof Optional<?> optional) {
            optional.ifPresent(inner -> gather(inner, found));
        } else if (value instanceof List<?> list) {
            list.forEach(element -> gather(element, found));
        } else if (value.getClass().isRecord() && isDescribed(value)) {
            found.addAll(references(value));
        }
    }

    private static boolean isDescribed(Object value) {
        return !(value instanceof groupwright.definition.record.Amount)
                && !(value instanceof groupwright.definition.record.Settings);
    }
}
