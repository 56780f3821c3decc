package groupwright.definition.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A project against the simplest thing it could be: a sorted map. */
class RecordModelTest {
    private static final RecordKind<Yardstick> KIND = RecordKinds.YARDSTICK; // small records; tables know no kinds

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4})
    void behavesLikeASortedMap(long seed) {
        Random random = new Random(seed);
        int ids = seed % 2 == 0 ? 60 : 3000; // crowded and sparse: chunks fill, split and vanish
        RandomRecords records = new RandomRecords(random);
        Definition definition = records.project(1);
        TreeMap<RecordId, Entry> model = new TreeMap<>();
        definition.all(KIND).forEach(entry -> model.put(entry.id(), entry));
        for (int step = 0; step < 6000; step++) {
            RecordId id = RecordId.of(KIND.letters(), random.nextInt(ids));
            Definition before = definition;
            Map<RecordId, Entry> modelBefore = step % 100 == 0 ? new TreeMap<>(model) : Map.of();
            boolean remove = random.nextInt(10) < (step / 1500 % 2 == 0 ? 3 : 7); // grows, then shrinks
            if (remove) {
                definition = definition.without(id);
                model.remove(id);
            } else {
                Yardstick record = records.record(KIND, id, definition);
                definition = definition.with(record);
                model.put(id, record);
            }
            assertSame(
                    model.getOrDefault(id, before.project()),
                    definition.get(id).orElse(before.project()),
                    "seed " + seed + ", step " + step);
            if (step % 100 == 0) {
                assertEquals(List.copyOf(model.values()), definition.all(KIND), "seed " + seed + ", step " + step);
                assertEquals(List.copyOf(modelBefore.values()), before.all(KIND), "the one before stays as it was");
                assertRanges(definition, model, random, ids);
            }
        }
    }

    private static void assertRanges(Definition definition, TreeMap<RecordId, Entry> model, Random random, int ids) {
        assertEquals(model.size(), definition.count(KIND));
        for (int i = 0; i < 20; i++) {
            int first = random.nextInt(ids);
            int end = first + random.nextInt(ids / 2) - 5;
            List<RecordId> expected = model.keySet().stream()
                    .filter(id -> id.number() >= first && id.number() < end)
                    .toList();
            assertEquals(expected, definition.idsBetween(KIND, first, end), first + " to " + end);
            assertEquals(!expected.isEmpty(), definition.anyBetween(KIND, first, end), first + " to " + end);
        }
        int highest = model.isEmpty() ? 0 : model.lastKey().number();
        assertEquals(highest + 1, definition.nextId(KIND).number());
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {5, 6, 7})
    void changesAreThoseRecordsThatAreNotTheSameObjects(long seed) {
        Random random = new Random(seed);
        RandomRecords records = new RandomRecords(random);
        RandomEdits edits = new RandomEdits(records);
        Definition before = records.project(600);
        for (int step = 0; step < 300; step++) {
            Definition after = edits.edits(before, random.nextInt(random.nextBoolean() ? 3 : 60));
            assertEquals(expectedChanges(before, after), Definition.changes(before, after), "seed " + seed);
            assertEquals(List.of(), Definition.changes(after, after));
            before = after;
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {8, 9})
    void aRebuiltProjectOfTheSameObjectsHasNoChanges(long seed) {
        Definition before = new RandomRecords(new Random(seed)).project(900);
        List<Entry> records = new ArrayList<>(everything(before).values());
        records.remove(before.project());
        java.util.Collections.shuffle(records, new Random(seed));
        assertEquals(List.of(), Definition.changes(before, Definition.of(before.project(), records)));
    }

    private static List<Definition.Change> expectedChanges(Definition before, Definition after) {
        Map<RecordId, Entry> old = everything(before);
        Map<RecordId, Entry> now = everything(after);
        List<Definition.Change> expected = new ArrayList<>();
        for (RecordKind<?> kind : RecordKinds.all()) {
            TreeSet<RecordId> either = new TreeSet<>();
            before.all(kind).forEach(entry -> either.add(entry.id()));
            after.all(kind).forEach(entry -> either.add(entry.id()));
            for (RecordId id : either) {
                if (old.get(id) != now.get(id)) {
                    expected.add(new Definition.Change(
                            id, Optional.ofNullable(old.get(id)), Optional.ofNullable(now.get(id))));
                }
            }
        }
        return expected;
    }

    private static Map<RecordId, Entry> everything(Definition definition) {
        Map<RecordId, Entry> all = new HashMap<>();
        for (RecordKind<?> kind : RecordKinds.all()) {
            definition.all(kind).forEach(entry -> all.put(entry.id(), entry));
        }
        return all;
    }
}
