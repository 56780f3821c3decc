package groupwright.definition.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads and writes a field of a record by its path, through the record's description. */
final class FieldPath {
    private FieldPath() {}

    /** What stands there; nothing where the path leads nowhere. */
    static Optional<Object> read(Object object, List<String> path) {
        if (path.isEmpty()) {
            return Optional.of(object);
        }
        List<String> rest = path.subList(1, path.size());
        if (object instanceof Record) {
            Shape<?> shape = Shape.of(object.getClass());
            int position = shape.indexOf(path.get(0));
            return position < 0
                    ? Optional.empty()
                    : present(shape.value(object, position)).flatMap(v -> read(v, rest));
        }
        if (object instanceof List<?> list) {
            return list.stream()
                    .filter(element -> element instanceof Item item && item.id().equals(path.get(0)))
                    .findFirst()
                    .flatMap(element -> read(element, rest));
        }
        return Optional.empty();
    }

    private static Optional<Object> present(Object value) {
        return value instanceof Optional<?> optional ? optional.map(Object.class::cast) : Optional.of(value);
    }

    /** A copy with the value there; see {@link Definition#with(Address, Optional)}. */
    static Object write(Object object, List<String> path, Optional<?> value) {
        if (path.isEmpty()) {
            return value.orElseThrow(() -> new Invalid("", "must not be empty", "write a value"));
        }
        String name = path.get(0);
        List<String> rest = path.subList(1, path.size());
        return object instanceof List<?> list ? inList(list, name, rest, value) : inRecord(object, name, rest, value);
    }

    /** Writes inside the object under a name; what is refused there is named from here. */
    private static Object inside(String name, Object object, List<String> rest, Optional<?> value) {
        try {
            return write(object, rest, value);
        } catch (Invalid invalid) {
            throw invalid.inside(name);
        }
    }

    private static Object inRecord(Object object, String name, List<String> rest, Optional<?> value) {
        if (!(object instanceof Record)) {
            throw nowhere(name);
        }
        Shape<?> shape = Shape.of(object.getClass());
        int position = shape.indexOf(name);
        if (position < 0) {
            throw nowhere(name);
        }
        Object[] values = new Object[shape.components().size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = shape.value(object, i);
        }
        if (shape.components().get(position).optional() == Component.Presence.OPTIONAL) {
            Optional<?> old = (Optional<?>) values[position];
            values[position] = rest.isEmpty()
                    ? value
                    : Optional.of(inside(name, old.orElseThrow(() -> nowhere(name)), rest, value));
        } else {
            values[position] = inside(name, values[position], rest, value);
        }
        return shape.create(values);
    }

    private static Object inList(List<?> list, String id, List<String> rest, Optional<?> value) {
        List<Object> copy = new ArrayList<>(list);
        for (int i = 0; i < copy.size(); i++) {
            if (copy.get(i) instanceof Item item && item.id().equals(id)) {
                if (rest.isEmpty() && value.isEmpty()) {
                    copy.remove(i);
                } else {
                    copy.set(i, inside(id, copy.get(i), rest, value));
                }
                return List.copyOf(copy);
            }
        }
        throw nowhere(id);
    }

    private static Invalid nowhere(String name) {
        return new Invalid(name, "there is no such field", "check the address");
    }
}
