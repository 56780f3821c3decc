package groupwright.definition.record;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * All records of one product as an immutable value; on screen it is called a project. An edit gives a new one that shares
 * everything untouched, and two of them are compared by identity.
 */
public final class Definition {
    private final RecordTable[] tables; // by position in RecordKinds.all(); never written after construction

    private Definition(RecordTable[] tables) {
        this.tables = tables;
    }

    /** A project without any records but its own settings. */
    public static Definition of(Project project) {
        RecordTable[] tables = new RecordTable[RecordKinds.all().size()];
        java.util.Arrays.fill(tables, RecordTable.EMPTY);
        return new Definition(tables).with(project);
    }

    /**
     * A project of many records at once.
     *
     * @throws Invalid if a record breaks a limit of its description
     */
    public static Definition of(Project project, Collection<? extends Entry> records) {
        Definition base = of(project);
        Map<Integer, Map<RecordId, Entry>> byKind = new TreeMap<>();
        byKind.put(index(project.id()), new TreeMap<>(Map.of(project.id(), project)));
        for (Entry record : records) {
            check(record);
            Map<RecordId, Entry> kind = byKind.computeIfAbsent(index(record.id()), any -> new TreeMap<>());
            if (kind.put(record.id(), record) != null) {
                throw new Invalid("id", record.id() + " stands twice", "give each record an id of its own");
            }
        }
        RecordTable[] tables = base.tables.clone();
        byKind.forEach((kind, map) -> tables[kind] = RecordTable.of(map.values()));
        return new Definition(tables);
    }

    private static void check(Entry record) {
        RecordKind<?> kind = RecordKinds.all().get(index(record.id()));
        if (kind.type() != record.getClass()) {
            throw new Invalid("id", record.id() + " is no id of a " + nounOf(record), "use its own letters");
        }
        kind.shape().check(record);
    }

    private static String nounOf(Entry record) {
        return RecordKinds.of(record.getClass()).noun();
    }

    private static int index(RecordId id) {
        int index = RecordKinds.indexOf(id);
        if (index >= 0) {
            return index;
        }
        throw new Invalid("id", "no kind of record has ids like " + id, "use the letters of a kind, for example R-001");
    }

    /** The settings of the project. */
    public Project project() {
        return (Project) get(RecordId.PROJECT).orElseThrow();
    }

    /** The record with this id; nothing too where no kind has such ids. */
    public Optional<Entry> get(RecordId id) {
        int index = RecordKinds.indexOf(id);
        return index < 0 ? Optional.empty() : tables[index].get(id);
    }

    /** The record with this id, if it is of this type. */
    public <R extends Entry> Optional<R> get(RecordId id, Class<R> type) {
        return get(id).filter(type::isInstance).map(type::cast);
    }

    /** All records of a kind in the order of their ids; a copy, O(n). */
    @SuppressWarnings("unchecked") // check() admits only the kind's own class to its table
    public <R extends Entry> List<R> all(RecordKind<R> kind) {
        return (List<R>) (List<?>) tables[RecordKinds.all().indexOf(kind)].all();
    }

    /** The ids of a kind whose numbers lie from {@code first} up to but not {@code end}; O(log n + found). */
    public List<RecordId> idsBetween(RecordKind<?> kind, int first, int end) {
        return tables[RecordKinds.all().indexOf(kind)].idsBetween(first, end);
    }

    /** Whether any record of a kind has a number from {@code first} up to but not {@code end}; O(log n). */
    public boolean anyBetween(RecordKind<?> kind, int first, int end) {
        return tables[RecordKinds.all().indexOf(kind)].anyBetween(first, end);
    }

    /** How many records of a kind there are. */
    public int count(RecordKind<?> kind) {
        return tables[RecordKinds.all().indexOf(kind)].size();
    }

    /**
     * With a record added or replaced.
     *
     * @throws Invalid if it breaks a limit of its description
     */
    public Definition with(Entry record) {
        check(record);
        RecordTable[] copy = tables.clone();
        int kind = index(record.id());
        copy[kind] = copy[kind].with(record);
        return new Definition(copy);
    }

    /** With a record taken out; the same where it is not there. The project itself stays. */
    public Definition without(RecordId id) {
        if (id.equals(RecordId.PROJECT)) {
            throw new Invalid("id", "the project itself cannot be taken out", "leave it");
        }
        if (get(id).isEmpty()) {
            return this;
        }
        RecordTable[] copy = tables.clone();
        copy[index(id)] = copy[index(id)].without(id);
        return new Definition(copy);
    }

    /** The next free id of a kind: one above the highest number in use; ids are never used again. */
    public RecordId nextId(RecordKind<?> kind) {
        int highest = 0;
        for (Entry entry : all(kind)) {
            highest = Math.max(highest, entry.id().number());
        }
        return RecordId.of(kind.letters(), highest + 1);
    }

    /** What stands at an address; nothing where it leads nowhere or the field is empty. */
    public Optional<Object> value(Address address) {
        return get(address.record()).flatMap(record -> FieldPath.read(record, address.path()));
    }

    /**
     * With the value at an address replaced.
     *
     * @param value of the Java type of the field, without its Optional; nothing empties an optional field
     * @throws Invalid if the address leads nowhere or the value is refused
     */
    public Definition with(Address address, Optional<?> value) {
        Entry record = get(address.record())
                .orElseThrow(() -> new Invalid("", "there is no record " + address.record(), "add it first"));
        Entry written = (Entry) FieldPath.write(record, address.path(), value);
        if (!written.id().equals(record.id())) {
            throw new Invalid(
                    "id", record.id() + " cannot become " + written.id(), "add a new record, retire this one");
        }
        return with(written);
    }

    /** One record that differs between two definitions. */
    public record Change(RecordId id, Optional<Entry> before, Optional<Entry> after) {}

    /** The records that are not the same objects in both, in the order of kinds and ids. */
    public static List<Change> changes(Definition before, Definition after) {
        List<Change> changes = new ArrayList<>();
        for (int i = 0; i < before.tables.length; i++) {
            RecordTable.compare(
                    before.tables[i],
                    after.tables[i],
                    (old, now) -> changes.add(
                            new Change(old.or(() -> now).orElseThrow().id(), old, now)));
        }
        return changes;
    }
}
