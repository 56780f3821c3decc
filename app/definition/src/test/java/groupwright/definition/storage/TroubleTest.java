package groupwright.definition.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Edits on a disk that is full, read-only, or goes away. */
class TroubleTest {
    private static final RecordPath N1 = Project.path("needs/N-001.json");
    private static final RecordPath R1 = Project.path("requirements/R-001.json");
    private static final RecordPath C1 = Project.path("concepts/C-001.json");
    private static final Content OLD = Project.text("{\"v\": 1}\n");
    private static final Content NEW = Project.text("{\"v\": 2}\n");
    private static final Change CHANGE_N1 = Change.replace(N1, OLD.sha256(), NEW);
    private static final Change CHANGE_R1 = Change.replace(R1, OLD.sha256(), NEW);

    @TempDir(factory = MemoryFolder.class)
    private Path temp;

    private Path root;
    private final HookedDisk disk = new HookedDisk();

    @BeforeEach
    void aProject() throws IOException {
        root = Files.createDirectory(temp.toRealPath().resolve("alpine"));
        Project.write(root, Map.of("project.json", "{}\n", N1.text(), OLD.text(), R1.text(), OLD.text()));
    }

    private SortedMap<String, String> texts() {
        return Project.texts(Project.folder(root, new PassingDisk()).read());
    }

    private static void full(HookedDisk.Operation operation) throws IOException {
        if (operation.name().startsWith("create") || operation.name().equals("force")) {
            throw new IOException("No space left on device");
        }
    }

    private HookedDisk.Hook readOnly(String folder) {
        return operation -> {
            if (operation.path().getParent().equals(root.resolve(folder))) {
                throw new AccessDeniedException(operation.path().toString());
            }
        };
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void aFullDiskChangesNothing(int files) throws IOException {
        SortedMap<String, String> before = texts();
        List<Change> edit = List.of(CHANGE_N1, CHANGE_R1).subList(0, files);
        try (ProjectWriter writer = Project.open(root, disk)) {
            disk.hook(TroubleTest::full);
            assertEquals(
                    new Outcome.Failed("Nothing was saved because the disk is full; free some space and try again;"
                            + " the files are as before."),
                    writer.commit(edit));
            assertEquals(before, texts());
            assertEquals(List.of("lock"), Project.ownNames(root));
            disk.hook(operation -> {});
            assertEquals("Saved.", writer.commit(edit).sentence());
        }
    }

    @Test
    void aReadOnlyFolderChangesNothing() throws IOException {
        SortedMap<String, String> before = texts();
        try (ProjectWriter writer = Project.open(root, disk)) {
            disk.hook(readOnly("needs"));
            Outcome outcome = writer.commit(List.of(CHANGE_N1));
            assertEquals(
                    "Nothing was saved because the folder " + root.resolve("needs") + " cannot be written to;"
                            + " make it writable or copy the project; the files are as before.",
                    assertInstanceOf(Outcome.Failed.class, outcome).sentence());
            outcome = writer.commit(List.of(CHANGE_N1, CHANGE_R1)); // needs comes first
            assertInstanceOf(Outcome.Failed.class, outcome);
            assertEquals(before, texts());
            assertEquals(List.of("lock"), Project.ownNames(root));
        }
    }

    /** The first file is in place when the second is refused: there is no way back, and the edit is safe. */
    @Test
    void anEditHalfInPlaceIsShownWholeAndFinishedLater() throws IOException {
        try (ProjectWriter writer = Project.open(root, disk)) {
            disk.hook(readOnly("requirements"));
            Outcome outcome = writer.commit(List.of(CHANGE_N1, CHANGE_R1));
            assertEquals(
                    "The edit is saved in the journal but not all files are in place because the folder "
                            + root.resolve("requirements")
                            + " cannot be written to; make it writable or copy the project.",
                    assertInstanceOf(Outcome.Committed.class, outcome).sentence());
            assertEquals(OLD.text(), Files.readString(R1.below(root)));
            assertEquals(NEW.text(), texts().get(R1.text()));
            assertEquals(NEW.text(), texts().get(N1.text()));
            assertInstanceOf(Outcome.Failed.class, writer.commit(List.of(Change.create(C1, NEW))));
            disk.hook(operation -> {});
            assertEquals(
                    "Saved.", writer.commit(List.of(Change.create(C1, NEW))).sentence());
            assertEquals(NEW.text(), Files.readString(R1.below(root)));
        }
    }

    /** Known before, it is refused before. */
    @Test
    void aFolderKnownToBeReadOnlyIsNotTried() throws IOException {
        Disk knowing = new PassingDisk() {
            @Override
            public boolean isWritable(Path folder) {
                return !folder.endsWith("requirements");
            }
        };
        try (ProjectWriter writer = Project.open(root, knowing)) {
            assertEquals(
                    "Nothing was saved: the folder " + root.resolve("requirements")
                            + " cannot be written to; make it writable.",
                    writer.commit(List.of(CHANGE_N1, CHANGE_R1)).sentence());
        }
        assertEquals(OLD.text(), texts().get(N1.text()));
    }

    @Test
    void aReadOnlyProjectIsNotOpenedForWriting() {
        disk.hook(operation -> {
            throw new AccessDeniedException(operation.path().toString());
        });
        Opening opening = Project.folder(root, disk).openForWriting();
        assertEquals(
                root + ": cannot be opened: the folder " + root
                        + " cannot be written to; make it writable or copy the project.",
                assertInstanceOf(Opening.NotOpened.class, opening).problem().sentence());
        assertEquals(3, texts().size());
    }

    @Test
    void aFolderTakenAwayBetweenEdits() throws IOException {
        SortedMap<String, String> before = texts();
        try (ProjectWriter writer = Project.open(root, disk)) {
            Path away = Files.move(root, temp.resolve("away"));
            Outcome outcome = writer.commit(List.of(CHANGE_N1));
            assertTrue(
                    assertInstanceOf(Outcome.Failed.class, outcome).sentence().startsWith("Nothing was saved"),
                    outcome::sentence);
            assertEquals(1, writer.read().problems().size());
            Files.move(away, root);
            assertEquals(before, texts());
            assertEquals("Saved.", writer.commit(List.of(CHANGE_N1)).sentence());
        }
    }

    private interface Trouble {
        HookedDisk.Hook at(int operation);
    }

    private HookedDisk.Hook once(int failing) {
        return operation -> {
            if (operation.index() == failing) {
                throw new IOException("Input/output error");
            }
        };
    }

    private HookedDisk.Hook from(int failing) {
        return operation -> {
            if (operation.index() >= failing) {
                throw new IOException("Input/output error");
            }
        };
    }

    private HookedDisk.Hook goneFrom(int failing) {
        return operation -> {
            if (operation.index() == failing) {
                Files.move(root, temp.resolve("away"));
            }
        };
    }

    @Test
    void anErrorInAnyOneOperation() throws IOException {
        everyOperation(this::once);
    }

    @Test
    void aDiskThatFailsForGoodAtAnyOperation() throws IOException {
        everyOperation(this::from);
    }

    @Test
    void aFolderTakenAwayAtAnyOperation() throws IOException {
        everyOperation(this::goneFrom);
    }

    /** What the outcome says is what reading shows, once the disk is in order again, and edits go on from there. */
    private void everyOperation(Trouble trouble) throws IOException {
        for (List<Change> edit : List.of(
                List.of(CHANGE_N1),
                List.of(Change.create(C1, NEW)),
                List.of(Change.remove(N1, OLD.sha256())),
                List.of(CHANGE_N1, CHANGE_R1, Change.create(C1, NEW)))) {
            boolean troubled = true;
            for (int operation = 0; troubled; operation++) {
                troubled = troubled(edit, trouble.at(operation), operation + " of " + edit);
                Project.delete(root);
                aProject();
            }
        }
    }

    private boolean troubled(List<Change> edit, HookedDisk.Hook hook, String message) throws IOException {
        SortedMap<String, String> before = texts();
        SortedMap<String, String> after = after(before, edit);
        try (ProjectWriter writer = Project.open(root, disk)) {
            disk.hook(hook);
            Outcome outcome = writer.commit(edit);
            if (Files.exists(temp.resolve("away"))) {
                Files.move(temp.resolve("away"), root);
            }
            disk.hook(operation -> {});
            boolean open = outcome.sentence().contains("found whole or not at all");
            SortedMap<String, String> expected = outcome instanceof Outcome.Committed ? after : before;
            SortedMap<String, String> found = texts();
            assertTrue(found.equals(expected) || open && found.equals(after), () -> message + ": " + outcome + found);
            assertEquals("Saved.", writer.commit(next()).sentence(), message);
            assertEquals(List.of("lock"), Project.ownNames(root), message);
            assertEquals(List.of(), Project.sentences(writer.read()), message);
            return !outcome.sentence().equals("Saved.");
        }
    }

    private static List<Change> next() {
        return List.of(Change.create(Project.path("needs/N-009.json"), NEW));
    }

    private static SortedMap<String, String> after(SortedMap<String, String> before, List<Change> edit) {
        SortedMap<String, String> after = new TreeMap<>(before);
        for (Change change : edit) {
            after.remove(change.path().text());
            change.after().ifPresent(content -> after.put(change.path().text(), content.text()));
        }
        return after;
    }
}
