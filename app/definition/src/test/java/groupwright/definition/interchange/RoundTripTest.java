package groupwright.definition.interchange;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import groupwright.definition.record.RandomEdits;
import groupwright.definition.record.RandomRecords;
import groupwright.definition.record.RecordKind;
import groupwright.definition.record.RecordKinds;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever project there can be, its files give back the same project. */
class RoundTripTest {
    private static TreeMap<String, byte[]> written(Definition definition) {
        TreeMap<String, byte[]> files = new TreeMap<>();
        for (RecordKind<?> kind : RecordKinds.all()) {
            for (Entry record : definition.all(kind)) {
                files.put(kind.path(record.id()), RecordWriter.write(record));
            }
        }
        return files;
    }

    private static void assertSame(Definition expected, Definition actual, String about) {
        for (RecordKind<?> kind : RecordKinds.all()) {
            assertEquals(expected.all(kind), actual.all(kind), about + ", " + kind.noun());
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void generatedProjectsComeBackEqual(long seed) {
        Definition project = new RandomRecords(new Random(seed)).project(60);
        Loading.Outcome outcome = Loading.load(written(project));
        assertSame(project, outcome.definition().orElseThrow(), "seed " + seed);
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {21, 22, 23, 24, 25, 26})
    void editedRecordsWrittenOverTheirOldFilesComeBackEqual(long seed) {
        RandomRecords records = new RandomRecords(new Random(seed));
        Definition project = records.project(40);
        TreeMap<String, byte[]> files = written(project);
        Definition edited = new RandomEdits(records).edits(project, 60);
        for (Definition.Change change : Definition.changes(project, edited)) {
            String path = RecordKinds.of(change.id()).orElseThrow().path(change.id());
            if (change.after().isEmpty()) {
                files.remove(path);
            } else {
                byte[] base = files.get(path);
                Entry record = change.after().get();
                files.put(path, base == null ? RecordWriter.write(record) : RecordWriter.write(record, base));
            }
        }
        assertSame(edited, Loading.load(files).definition().orElseThrow(), "seed " + seed);
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {31, 32, 33})
    void writingAgainGivesTheSameBytes(long seed) {
        Definition project = new RandomRecords(new Random(seed)).project(40);
        for (var file : written(project).entrySet()) {
            Entry record = project
                    .all(RecordKinds.byFolder(folder(file.getKey())).orElseThrow())
                    .stream()
                    .filter(entry -> file.getKey().endsWith(entry.id() + ".json"))
                    .findFirst()
                    .orElseThrow();
            assertArrayEquals(file.getValue(), RecordWriter.write(record, file.getValue()), file.getKey());
        }
    }

    private static String folder(String path) {
        return path.contains("/") ? path.substring(0, path.indexOf('/')) : "";
    }
}
