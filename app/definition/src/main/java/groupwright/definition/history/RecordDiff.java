package groupwright.definition.history;

import groupwright.definition.record.Address;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Item;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Settings;
import groupwright.definition.record.Shape;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The fields that differ between two definitions. Lists of plain values are one value; lists of objects are compared object
 * by object through their ids, and another order of those in both is one change at the list; a record added or taken out is
 * one change at its own address.
 */
public final class RecordDiff {
    private final RecordId record;
    private final List<FieldChange> found;

    private RecordDiff(RecordId record, List<FieldChange> found) {
        this.record = record;
        this.found = found;
    }

    /** All differences, in the order of kinds, ids and fields; costs as much as the changed records have fields. */
    public static List<FieldChange> between(Definition before, Definition after) {
        List<FieldChange> found = new ArrayList<>();
        for (Definition.Change change : Definition.changes(before, after)) {
            if (change.before().isPresent() && change.after().isPresent()) {
                new RecordDiff(change.id(), found)
                        .compare(change.before().get(), change.after().get(), List.of());
            } else {
                found.add(new FieldChange(
                        Address.of(change.id()),
                        change.before().map(Object.class::cast),
                        change.after().map(Object.class::cast)));
            }
        }
        return found;
    }

    private void compare(Object before, Object after, List<String> path) {
        if (before.equals(after)) {
            return;
        }
        if (isObject(before) && before.getClass() == after.getClass()) {
            Shape<?> shape = Shape.of(before.getClass());
            for (int i = 0; i < shape.components().size(); i++) {
                compare(
                        shape.value(before, i),
                        shape.value(after, i),
                        and(path, shape.components().get(i).name()));
            }
        } else if (before instanceof Optional<?> was && after instanceof Optional<?> is) {
            if (was.isPresent() && is.isPresent()) {
                compare(was.get(), is.get(), path);
            } else {
                add(path, was, is);
            }
        } else if (before instanceof List<?> was && after instanceof List<?> is && (hasItems(was) || hasItems(is))) {
            compareItems(was, is, path);
        } else {
            add(path, Optional.of(before), Optional.of(after));
        }
    }

    /** Whether a value is compared field by field. */
    static boolean isObject(Object value) {
        return value instanceof groupwright.definition.record.Entry
                || value instanceof Item
                || value instanceof Record && isDescribed(value);
    }

    /** Values such as amounts and ids are records too, but one value each. */
    private static boolean isDescribed(Object value) {
        return !(value instanceof groupwright.definition.record.Amount
                || value instanceof RecordId
                || value instanceof Settings);
    }

    static boolean hasItems(List<?> list) {
        return !list.isEmpty() && list.get(0) instanceof Item;
    }

    private void compareItems(List<?> before, List<?> after, List<String> path) {
        Set<String> ids = new LinkedHashSet<>();
        before.forEach(item -> ids.add(((Item) item).id()));
        after.forEach(item -> ids.add(((Item) item).id()));
        if (!inBoth(before, after).equals(inBoth(after, before))) {
            add(path, Optional.of(before), Optional.of(after));
        }
        for (String id : ids) {
            Optional<Object> was = find(before, id);
            Optional<Object> is = find(after, id);
            if (was.isPresent() && is.isPresent()) {
                compare(was.get(), is.get(), and(path, id));
            } else {
                add(and(path, id), was, is);
            }
        }
    }

    /** The ids of the first list that the second has too, in the order of the first. */
    private static List<String> inBoth(List<?> list, List<?> other) {
        Set<String> others = new LinkedHashSet<>();
        other.forEach(item -> others.add(((Item) item).id()));
        return list.stream()
                .map(item -> ((Item) item).id())
                .filter(others::contains)
                .toList();
    }

    private static Optional<Object> find(List<?> items, String id) {
        return items.stream()
                .filter(item -> ((Item) item).id().equals(id))
                .findFirst()
                .map(Object.class::cast);
    }

    private void add(List<String> path, Optional<?> before, Optional<?> after) {
        found.add(new FieldChange(
                new Address(record, path), before.map(Object.class::cast), after.map(Object.class::cast)));
    }

    private static List<String> and(List<String> path, String name) {
        List<String> longer = new ArrayList<>(path);
        longer.add(name);
        return longer;
    }
}
