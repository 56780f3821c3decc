package groupwright.definition.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Replaces several fields of one object at once, so that fields bound to each other (a comparator and its upper limit) can
 * change together, which one after the other they could not.
 */
public final class ObjectEdit {
    private ObjectEdit() {}

    /**
     * A project with these fields of one object replaced.
     *
     * @param object address of a record, of an item in a list, or of an object inside
     * @param values by field name, of the Java type of the field without its Optional; nothing empties a field
     * @throws Invalid if the address leads nowhere or a value is refused; names the field from the record on
     */
    public static Definition with(Definition definition, Address object, Map<String, ? extends Optional<?>> values) {
        Entry record = definition
                .get(object.record())
                .orElseThrow(() -> new Invalid("", "there is no record " + object.record(), "add it first"));
        Entry written = (Entry) with(record, object.path(), values);
        if (!written.id().equals(record.id())) {
            throw new Invalid(
                    "id", record.id() + " cannot become " + written.id(), "add a new record, retire this one");
        }
        return written.equals(record) ? definition : definition.with(written);
    }

    /** The same for an object that stands in no project yet, for example a draft. */
    public static Object with(Object root, List<String> path, Map<String, ? extends Optional<?>> values) {
        Object object = FieldPath.read(root, path)
                .orElseThrow(() ->
                        new Invalid(String.join(".", path), "there is no such object", "it may have been removed"));
        return FieldPath.write(root, path, Optional.of(replaced(object, path, values)));
    }

    /** What stands in an object by a path; nothing where it leads nowhere or the field is empty. */
    public static Optional<Object> value(Object root, List<String> path) {
        return FieldPath.read(root, path);
    }

    private static Object replaced(Object object, List<String> path, Map<String, ? extends Optional<?>> values) {
        try {
            return replaced(object, values);
        } catch (Invalid invalid) {
            throw path.isEmpty() ? invalid : invalid.inside(String.join(".", path));
        }
    }

    private static Object replaced(Object object, Map<String, ? extends Optional<?>> values) {
        Shape<?> shape = Shape.of(object.getClass());
        List<Object> all = new ArrayList<>();
        for (int i = 0; i < shape.components().size(); i++) {
            Component component = shape.components().get(i);
            Optional<?> given = values.get(component.name());
            if (given == null) {
                all.add(shape.value(object, i));
            } else if (component.optional() == Component.Presence.OPTIONAL) {
                all.add(given);
            } else {
                all.add(given.orElseThrow(() -> new Invalid(component.name(), "must not be empty", "write a value")));
            }
        }
        return shape.create(all.toArray());
    }
}
