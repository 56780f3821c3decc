package groupwright.definition.history;

import groupwright.definition.record.Item;
import groupwright.definition.record.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Takes what stands at one place of an object into another object of the same kind. */
final class Taking {
    private Taking() {}

    static Object taking(Object into, Object from, List<String> path) {
        if (into instanceof Optional<?> here && from instanceof Optional<?> there) {
            return here.isPresent() && there.isPresent() ? Optional.of(taking(here.get(), there.get(), path)) : there;
        } else if (into instanceof List<?> here && from instanceof List<?> there) {
            return inList(here, there, path);
        }
        return path.isEmpty() || !RecordDiff.isObject(into) ? from : inObject(into, from, path);
    }

    private static Object inObject(Object into, Object from, List<String> path) {
        Shape<?> shape = Shape.of(into.getClass());
        int position = shape.indexOf(path.get(0));
        if (position < 0) {
            throw new IllegalArgumentException(shape.type() + " has no field " + path.get(0));
        }
        Object[] values = new Object[shape.components().size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = shape.value(into, i);
        }
        values[position] = taking(values[position], shape.value(from, position), path.subList(1, path.size()));
        return shape.create(values);
    }

    private static List<?> inList(List<?> into, List<?> from, List<String> path) {
        if (!RecordDiff.hasItems(into) && !RecordDiff.hasItems(from)) {
            return from; // a list of plain values is one value
        }
        if (path.isEmpty()) {
            return ordered(into, from);
        }
        String id = path.get(0);
        List<Object> items = new ArrayList<>();
        boolean found = false;
        Optional<Object> there = find(from, id);
        for (Object item : into) {
            boolean here = ((Item) item).id().equals(id);
            found |= here;
            if (!here) {
                items.add(item);
            } else if (there.isPresent()) {
                items.add(taking(item, there.get(), path.subList(1, path.size())));
            }
        }
        return found || there.isEmpty() ? items : inserted(items, there.get(), from);
    }

    /** With one more object, behind the one it follows where it comes from. */
    private static List<Object> inserted(List<Object> items, Object more, List<?> from) {
        List<String> here = ids(items);
        List<Object> all = new ArrayList<>(items);
        all.add(more);
        return ItemOrder.joined(ids(from), here, ids(from), ids(all)).ids().stream()
                .map(id -> find(all, id).orElseThrow())
                .toList();
    }

    /** The first list's objects in the second's order. */
    private static List<Object> ordered(List<?> items, List<?> like) {
        List<String> ids = ids(items);
        return ItemOrder.joined(ids, ids, ids(like), ids).ids().stream()
                .map(id -> find(items, id).orElseThrow())
                .toList();
    }

    private static List<String> ids(List<?> items) {
        return items.stream().map(item -> ((Item) item).id()).toList();
    }

    private static Optional<Object> find(List<?> items, String id) {
        return items.stream()
                .filter(item -> ((Item) item).id().equals(id))
                .findFirst()
                .map(Object.class::cast);
    }
}
