package groupwright.definition.ledger;

import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import groupwright.definition.record.Field;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKind;
import groupwright.definition.record.RecordKinds;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Who refers to whom: for each field that was ever asked about, target to referring records. Built once, O(n), and then
 * kept up with each change, O(log n) a reference.
 */
final class References {
    private final Map<Field<?, ?>, Map<Optional<RecordId>, TreeSet<RecordId>>> byField = new HashMap<>();

    /** The records that refer to a target, in order. */
    List<RecordId> to(Definition definition, Field<?, ?> field, Optional<RecordId> target) {
        Set<RecordId> found =
                byField.computeIfAbsent(field, any -> build(definition, field)).get(target);
        return found == null ? List.of() : List.copyOf(found);
    }

    private static Map<Optional<RecordId>, TreeSet<RecordId>> build(Definition definition, Field<?, ?> field) {
        Map<Optional<RecordId>, TreeSet<RecordId>> index = new HashMap<>();
        for (Entry entry : definition.all(kindOf(field))) {
            targets(field, entry).forEach(target -> put(index, target, entry.id()));
        }
        return index;
    }

    private static void put(
            Map<Optional<RecordId>, TreeSet<RecordId>> index, Optional<RecordId> target, RecordId from) {
        index.computeIfAbsent(target, any -> new TreeSet<>()).add(from);
    }

    @SuppressWarnings("unchecked") // a field's owner is the class of a kind
    private static RecordKind<? extends Entry> kindOf(Field<?, ?> field) {
        return RecordKinds.of((Class<? extends Entry>) field.owner());
    }

    /** The fields asked about. */
    Set<Field<?, ?>> fields() {
        return byField.keySet();
    }

    /** Takes in that a record changed. */
    void changed(Definition.Change change) {
        byField.forEach((field, index) -> {
            for (Optional<RecordId> target : retargeted(field, change)) {
                if (change.after().isPresent()
                        && targets(field, change.after().get()).contains(target)) {
                    put(index, target, change.id());
                } else {
                    index.get(target).remove(change.id());
                }
            }
        });
    }

    private static List<Optional<RecordId>> retargeted(Field<?, ?> field, Definition.Change change) {
        Class<?> owner = change.before().or(change::after).orElseThrow().getClass();
        return field.owner() == owner ? Changes.retargeted(field, change) : List.of();
    }

    /** The records a field names; one empty target where it names none. */
    @SuppressWarnings("unchecked") // a field is only ever read from records of its owner
    static List<Optional<RecordId>> targets(Field<?, ?> field, Entry entry) {
        Object value = ((Field<Entry, Object>) field).in(entry);
        if (value instanceof RecordId id) {
            return List.of(Optional.of(id));
        } else if (value instanceof Optional<?> optional) {
            return List.of(optional.map(RecordId.class::cast));
        }
        List<?> ids = (List<?>) value;
        return ids.isEmpty()
                ? List.of(Optional.empty())
                : ids.stream().distinct().map(id -> Optional.of((RecordId) id)).toList();
    }
}
