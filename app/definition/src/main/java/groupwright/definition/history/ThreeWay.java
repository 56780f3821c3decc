package groupwright.definition.history;

import groupwright.definition.record.Address;
import groupwright.definition.record.Item;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Shape;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Joins the changes of two sides in one record, field by field and object by object. */
final class ThreeWay {
    private final RecordId record;
    private final List<Conflict> conflicts = new ArrayList<>();

    ThreeWay(RecordId record) {
        this.record = record;
    }

    List<Conflict> conflicts() {
        return conflicts;
    }

    /** Something that may be absent on each side. */
    Optional<Object> joined(Optional<?> base, Optional<?> ours, Optional<?> theirs, List<String> path) {
        if (ours.equals(theirs) || theirs.equals(base)) {
            return ours.map(Object.class::cast);
        } else if (ours.equals(base)) {
            return theirs.map(Object.class::cast);
        } else if (base.isPresent() && ours.isPresent() && theirs.isPresent()) {
            return Optional.of(changedByBoth(base.get(), ours.get(), theirs.get(), path));
        }
        add(path, base, ours, theirs);
        return ours.map(Object.class::cast);
    }

    private Object joinedField(Object base, Object ours, Object theirs, List<String> path) {
        return base instanceof Optional<?> was
                ? joined(was, (Optional<?>) ours, (Optional<?>) theirs, path)
                : joined(Optional.of(base), Optional.of(ours), Optional.of(theirs), path)
                        .orElseThrow();
    }

    private Object changedByBoth(Object base, Object ours, Object theirs, List<String> path) {
        if (RecordDiff.isObject(base) && base.getClass() == ours.getClass() && base.getClass() == theirs.getClass()) {
            Shape<?> shape = Shape.of(base.getClass());
            Object[] values = new Object[shape.components().size()];
            for (int i = 0; i < values.length; i++) {
                String name = shape.components().get(i).name();
                values[i] = joinedField(
                        shape.value(base, i), shape.value(ours, i), shape.value(theirs, i), and(path, name));
            }
            return shape.create(values);
        }
        if (base instanceof List<?> was
                && ours instanceof List<?> here
                && theirs instanceof List<?> there
                && (RecordDiff.hasItems(here) || RecordDiff.hasItems(there))) {
            return items(was, here, there, path);
        }
        add(path, Optional.of(base), Optional.of(ours), Optional.of(theirs));
        return ours;
    }

    private List<Object> items(List<?> base, List<?> ours, List<?> theirs, List<String> path) {
        Map<String, Object> was = byId(base);
        Map<String, Object> here = byId(ours);
        Map<String, Object> there = byId(theirs);
        Set<String> ids = new LinkedHashSet<>(was.keySet());
        ids.addAll(here.keySet());
        ids.addAll(there.keySet());
        Map<String, Object> joined = new LinkedHashMap<>();
        for (String id : ids) {
            joined(find(was, id), find(here, id), find(there, id), and(path, id))
                    .ifPresent(item -> joined.put(id, item));
        }
        ItemOrder order = ItemOrder.joined(List.copyOf(was.keySet()), here.keySet(), there.keySet(), joined.keySet());
        if (order.isDisputed()) {
            add(path, Optional.of(base), Optional.of(ours), Optional.of(theirs));
        }
        return order.ids().stream().map(joined::get).toList();
    }

    private static Map<String, Object> byId(List<?> items) {
        Map<String, Object> map = new LinkedHashMap<>();
        items.forEach(item -> map.put(((Item) item).id(), item));
        return map;
    }

    private static Optional<Object> find(Map<String, Object> items, String id) {
        return Optional.ofNullable(items.get(id));
    }

    private void add(List<String> path, Optional<?> base, Optional<?> ours, Optional<?> theirs) {
        conflicts.add(new Conflict(
                new Address(record, path),
                base.map(Object.class::cast),
                ours.map(Object.class::cast),
                theirs.map(Object.class::cast)));
    }

    private static List<String> and(List<String> path, String name) {
        List<String> longer = new ArrayList<>(path);
        longer.add(name);
        return longer;
    }
}
