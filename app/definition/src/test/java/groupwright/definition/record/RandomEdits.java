package groupwright.definition.record;

import java.util.List;
import java.util.Optional;

/** Random edits of a project: a field, a reference, a record more, a record less, a record replaced. */
public final class RandomEdits {
    private static final int TRIES = 20;

    private final RandomRecords records;
    private final List<RecordKind<?>> kinds;

    /** Edits of records of these kinds, with values from a generator. */
    public RandomEdits(RandomRecords records, List<RecordKind<?>> kinds) {
        this.records = records;
        this.kinds = List.copyOf(kinds);
    }

    /** Edits of records of all kinds. */
    public RandomEdits(RandomRecords records) {
        this(records, RecordKinds.all());
    }

    /** The project after one random edit. */
    public Definition edit(Definition before) {
        return switch (records.random().nextInt(20)) {
            case 0, 1 -> add(before);
            case 2 -> takeOut(before);
            case 3 -> replace(before);
            case 4, 5, 6, 7 -> retarget(before);
            default -> changeField(before);
        };
    }

    /** The project after several random edits. */
    public Definition edits(Definition before, int count) {
        Definition after = before;
        for (int i = 0; i < count; i++) {
            after = edit(after);
        }
        return after;
    }

    /** With one field of one record changed, or emptied. */
    public Definition changeField(Definition before) {
        return changed(before, false);
    }

    /** With one field that names other records changed. */
    public Definition retarget(Definition before) {
        return changed(before, true);
    }

    private Definition changed(Definition before, boolean onlyReferences) {
        for (int i = 0; i < TRIES; i++) {
            List<Place> places = some(before).map(Place::all).orElse(List.of());
            if (onlyReferences) {
                places = places.stream().filter(p -> p.refersTo().isPresent()).toList();
            }
            if (places.isEmpty()) {
                continue;
            }
            Place place = records.one(places);
            boolean empty = place.isOptional() && records.random().nextInt(3) == 0;
            Optional<Object> value = empty ? Optional.empty() : Optional.of(records.value(place.component(), before));
            try {
                return before.with(place.address(), value);
            } catch (Invalid brokenRule) {
                continue; // a rule between fields refuses this one; another will do
            }
        }
        return before;
    }

    private Optional<Entry> some(Definition definition) {
        RecordKind<?> kind = records.one(kinds);
        List<RecordId> ids = definition.idsBetween(kind, 0, Integer.MAX_VALUE);
        return ids.isEmpty() ? Optional.empty() : definition.get(records.one(ids));
    }

    /** With a new record: mostly the next of its kind, now and then far off or in a gap. */
    public Definition add(Definition before) {
        RecordKind<?> kind = records.one(kinds);
        if (kind == RecordKinds.PROJECT) {
            return replaced(before, RecordKinds.PROJECT, RecordId.PROJECT);
        }
        RecordId id = records.random().nextInt(4) == 0
                ? RecordId.of(kind.letters(), records.random().nextInt(2000))
                : before.nextId(kind);
        return replaced(before, kind, id);
    }

    /** With a record taken out, though others may still name it. */
    public Definition takeOut(Definition before) {
        return some(before)
                .filter(entry -> !entry.id().equals(RecordId.PROJECT))
                .map(entry -> before.without(entry.id()))
                .orElse(before);
    }

    /** With a record replaced by another one of the same id. */
    public Definition replace(Definition before) {
        return some(before)
                .map(entry -> replaced(before, RecordKinds.of(entry.getClass()), entry.id()))
                .orElse(before);
    }

    private Definition replaced(Definition before, RecordKind<?> kind, RecordId id) {
        return before.with(records.record(kind, id, before));
    }
}
