package groupwright.definition.ledger;

import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import groupwright.definition.record.Field;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Circles among records that name one another, for example parts that are each other's parents. All circles along a field
 * are found in one pass, O(n), without recursion.
 */
public final class Circles {
    private final Map<Field<?, ?>, Map<RecordId, List<RecordId>>> byField = new HashMap<>();

    Circles() {}

    /** The circle a record's way leads into, from its smallest id on; empty where the way ends. */
    List<RecordId> from(Definition definition, Field<?, ?> next, RecordId record) {
        return byField.computeIfAbsent(next, any -> find(definition, next)).getOrDefault(record, List.of());
    }

    /** The fields asked about. */
    Set<Field<?, ?>> fields() {
        return byField.keySet();
    }

    /** Takes in that a record changed: what was known along a field it changed no longer holds. */
    void changed(Definition.Change change) {
        byField.keySet()
                .removeIf(field -> field.owner()
                                == change.before()
                                        .or(change::after)
                                        .orElseThrow()
                                        .getClass()
                        && !Changes.retargeted(field, change).isEmpty());
    }

    /** All circles along a field: from each record whose way leads into one, to that circle. */
    public static Map<RecordId, List<RecordId>> find(Definition definition, Field<?, ?> next) {
        Map<RecordId, Optional<RecordId>> way = new HashMap<>();
        for (Entry entry : definition.all(RecordKinds.of(owner(next)))) {
            way.put(entry.id(), References.targets(next, entry).get(0));
        }
        Map<RecordId, List<RecordId>> known = new HashMap<>(); // empty list: the way ends
        for (RecordId start : way.keySet()) {
            walk(start, way, known);
        }
        known.values().removeIf(List::isEmpty);
        return known;
    }

    @SuppressWarnings("unchecked") // a field's owner is the class of a kind
    private static Class<? extends Entry> owner(Field<?, ?> field) {
        return (Class<? extends Entry>) field.owner();
    }

    private static void walk(
            RecordId start, Map<RecordId, Optional<RecordId>> way, Map<RecordId, List<RecordId>> known) {
        Map<RecordId, Integer> seen = new HashMap<>();
        List<RecordId> path = new ArrayList<>();
        Optional<RecordId> at = Optional.of(start);
        while (at.isPresent()
                && way.containsKey(at.get())
                && !known.containsKey(at.get())
                && !seen.containsKey(at.get())) {
            seen.put(at.get(), path.size());
            path.add(at.get());
            at = way.get(at.get());
        }
        List<RecordId> circle = List.of();
        if (at.isPresent() && seen.containsKey(at.get())) {
            circle = fromSmallest(path.subList(seen.get(at.get()), path.size()));
        } else if (at.isPresent()) {
            circle = known.getOrDefault(at.get(), List.of());
        }
        for (RecordId passed : path) {
            known.put(passed, circle);
        }
    }

    private static List<RecordId> fromSmallest(List<RecordId> circle) {
        List<RecordId> turned = new ArrayList<>(circle);
        Collections.rotate(turned, -circle.indexOf(Collections.min(circle)));
        return List.copyOf(turned);
    }
}
