package groupwright.definition.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Opening for writing, and edits on a disk in good order. */
class WritingTest {
    private static final RecordPath N1 = Project.path("needs/N-001.json");
    private static final RecordPath N2 = Project.path("needs/N-002.json");
    private static final RecordPath C1 = Project.path("concepts/C-001.json");
    private static final Content OLD = Project.text("{\"v\": 1}\n");
    private static final Content NEW = Project.text("{\"v\": 2}\n");

    @TempDir(factory = MemoryFolder.class)
    private Path temp;

    private Path root;
    private Path outside;

    @BeforeEach
    void folders() throws IOException {
        root = Files.createDirectory(temp.resolve("project"));
        outside = Files.createDirectory(temp.resolve("outside"));
    }

    private void project() {
        Project.write(root, Map.of("project.json", "{}\n", N1.text(), OLD.text(), N2.text(), OLD.text()));
    }

    private Outcome commit(Change... changes) throws IOException {
        try (ProjectWriter writer = Project.open(root, new RealDisk())) {
            return writer.commit(List.of(changes));
        }
    }

    private String text(RecordPath path) throws IOException {
        return Files.readString(path.below(root));
    }

    @Test
    void aNewProject() throws IOException {
        Path folder = root.resolve("alpine");
        ProjectFolder project = ProjectFolder.at(folder, Project.FOLDERS);
        try (ProjectWriter writer =
                assertInstanceOf(Opening.Opened.class, project.startNew()).writer()) {
            writer.commit(List.of(Change.create(RecordPath.PROJECT, NEW), Change.create(C1, OLD)));
        }
        assertEquals(Map.of("project.json", NEW.text(), C1.text(), OLD.text()), Project.texts(project.read()));
    }

    @Test
    void aNewProjectNeedsAnEmptyFolder() throws IOException {
        Project.write(root, Map.of("holiday.txt", "x"));
        Opening opening = ProjectFolder.at(root, Project.FOLDERS).startNew();
        assertEquals(
                root + ": is not empty; name a new folder or an empty one.",
                assertInstanceOf(Opening.NotOpened.class, opening).problem().sentence());
        assertTrue(Files.notExists(root.resolve(".groupwright")));
    }

    @Test
    void versionControlMayBeThereFirst() throws IOException {
        Project.write(root, Map.of(".git/HEAD", "x"));
        Opening opening = ProjectFolder.at(root, Project.FOLDERS).startNew();
        assertInstanceOf(Opening.Opened.class, opening).writer().close();
    }

    @Test
    void aFolderThatIsNoProjectIsNotTouched() {
        Project.write(root, Map.of("holiday.txt", "x"));
        Opening opening = ProjectFolder.at(root, Project.FOLDERS).openForWriting();
        assertTrue(assertInstanceOf(Opening.NotOpened.class, opening)
                .problem()
                .sentence()
                .contains("holds no project.json"));
        assertTrue(Files.notExists(root.resolve(".groupwright")));
    }

    @Test
    void anEditReplacesMakesAndRemoves() throws IOException {
        project();
        Outcome outcome =
                commit(Change.replace(N1, OLD.sha256(), NEW), Change.create(C1, NEW), Change.remove(N2, OLD.sha256()));
        assertEquals(
                Map.of(N1, NEW.sha256(), C1, NEW.sha256()),
                assertInstanceOf(Outcome.Committed.class, outcome).hashes());
        assertEquals(
                Map.of("project.json", "{}\n", N1.text(), NEW.text(), C1.text(), NEW.text()),
                Project.texts(ProjectFolder.at(root, Project.FOLDERS).read()));
        assertEquals(List.of("lock"), Project.ownNames(root));
    }

    @Test
    void filesThatDoNotChangeAreNotRewritten() throws IOException {
        project();
        FileTime longAgo = FileTime.fromMillis(1_000_000_000_000L);
        Files.setLastModifiedTime(N1.below(root), longAgo);
        Outcome outcome = commit(Change.replace(N1, OLD.sha256(), OLD), Change.replace(N2, OLD.sha256(), NEW));
        assertEquals(
                Map.of(N1, OLD.sha256(), N2, NEW.sha256()),
                assertInstanceOf(Outcome.Committed.class, outcome).hashes());
        assertEquals(longAgo, Files.getLastModifiedTime(N1.below(root)));
        assertEquals(NEW.text(), text(N2));
    }

    @Test
    void anEmptyEditIsSaved() throws IOException {
        project();
        assertInstanceOf(Outcome.Committed.class, commit());
    }

    @Test
    void whatOthersChangedIsNotOverwritten() throws IOException {
        project();
        Project.write(root, Map.of(N2.text(), "{\"v\": \"theirs\"}\n"));
        Outcome outcome = commit(
                Change.create(N1, NEW),
                Change.replace(N2, OLD.sha256(), NEW),
                Change.replace(RecordPath.PROJECT, Project.text("{}\n").sha256(), NEW),
                Change.replace(C1, OLD.sha256(), NEW));
        assertEquals(new Outcome.Conflict(List.of(C1, N1, N2), Optional.empty()), outcome);
        assertEquals(
                "The edit was not saved because somebody else changed concepts/C-001.json, needs/N-001.json,"
                        + " needs/N-002.json; reload, look and save again.",
                outcome.sentence());
        assertEquals("{\"v\": \"theirs\"}\n", text(N2));
        assertEquals("{}\n", text(RecordPath.PROJECT));
    }

    @Test
    void whatCannotBeReadIsNeverOverwritten() throws IOException {
        project();
        byte[] latin = {'{', '"', (byte) 0xe9, '"', '}'};
        Files.write(N2.below(root), latin);
        for (Change change : List.of(
                Change.create(N2, NEW),
                Change.replace(N2, Sha256.of(latin), NEW),
                Change.remove(N2, Sha256.of(latin)))) {
            Outcome outcome = commit(change, Change.replace(N1, OLD.sha256(), NEW));
            assertEquals(
                    "Nothing was saved: needs/N-002.json:1:3: N-002: is not UTF-8 (byte E9 at offset 2);"
                            + " save it as UTF-8 without byte order mark.",
                    assertInstanceOf(Outcome.Unreadable.class, outcome).sentence());
        }
        assertTrue(Arrays.equals(latin, Files.readAllBytes(N2.below(root))));
        assertEquals(OLD.text(), text(N1));
    }

    @Test
    void nothingIsWrittenThroughALink() throws IOException {
        project();
        Path secret = Files.writeString(outside.resolve("C-001.json"), OLD.text());
        Files.createSymbolicLink(root.resolve("concepts"), outside);
        Files.createSymbolicLink(root.resolve("needs/N-003.json"), secret);
        assertInstanceOf(Outcome.Unreadable.class, commit(Change.replace(C1, OLD.sha256(), NEW)));
        assertInstanceOf(Outcome.Unreadable.class, commit(Change.create(Project.path("concepts/C-002.json"), NEW)));
        RecordPath linked = Project.path("needs/N-003.json");
        assertInstanceOf(Outcome.Unreadable.class, commit(Change.replace(linked, OLD.sha256(), NEW)));
        assertEquals(OLD.text(), Files.readString(secret));
        assertTrue(Files.notExists(outside.resolve("C-002.json")));
    }

    @Test
    void ourOwnFolderMustNotBeALink() throws IOException {
        project();
        Files.createSymbolicLink(root.resolve(".groupwright"), outside);
        Opening opening = ProjectFolder.at(root, Project.FOLDERS).openForWriting();
        assertEquals(
                ".groupwright: is a link; put the folder itself in its place.",
                assertInstanceOf(Opening.NotOpened.class, opening).problem().sentence());
        assertEquals(List.of(), new RealDisk().list(outside));
    }

    @Test
    void nothingIsWrittenThatCouldNotBeRead() throws IOException {
        project();
        for (byte[] bad : new byte[][] {{}, {(byte) 0xff}, new byte[Snapshot.MOST_BYTES + 1]}) {
            assertInstanceOf(Outcome.Failed.class, commit(Change.replace(N1, OLD.sha256(), Content.of(bad))));
        }
        assertEquals(OLD.text(), text(N1));
    }

    @Test
    void mistakesOfTheProgramAreThrown() throws IOException {
        project();
        ProjectWriter writer = Project.open(root, new RealDisk());
        Change change = Change.replace(N1, OLD.sha256(), NEW);
        assertThrows(IllegalArgumentException.class, () -> writer.commit(List.of(change, change)));
        assertThrows(
                IllegalArgumentException.class,
                () -> writer.commit(List.of(Change.create(Project.path("unknown/N-001.json"), NEW))));
        writer.close();
        assertThrows(IllegalStateException.class, () -> writer.commit(List.of(change)));
        assertThrows(IllegalArgumentException.class, () -> ProjectFolder.at(root, Set.of("../x")));
    }

    @Test
    void anInterruptThatCameBeforeIsPutOff() throws IOException {
        project();
        try (ProjectWriter writer = Project.open(root, new RealDisk())) {
            Thread.currentThread().interrupt();
            Outcome outcome = writer.commit(List.of(Change.replace(N1, OLD.sha256(), NEW), Change.create(C1, NEW)));
            assertTrue(Thread.interrupted());
            assertInstanceOf(Outcome.Committed.class, outcome);
        }
        assertEquals(NEW.text(), text(N1));
    }

    /** A program that knows no lock makes the same file at the last moment. */
    @Test
    void aNewFileNeverOverwrites() throws IOException {
        project();
        HookedDisk disk = new HookedDisk();
        try (ProjectWriter writer = Project.open(root, disk)) {
            disk.hook(operation -> {
                if (operation.name().equals("moveToNew")) {
                    Project.write(root, Map.of(C1.text(), "theirs"));
                }
            });
            Outcome outcome = writer.commit(List.of(Change.create(C1, NEW)));
            assertEquals(new Outcome.Conflict(List.of(C1), Optional.empty()), outcome);
            assertEquals(List.of("lock"), Project.ownNames(root));
        }
        assertEquals("theirs", text(C1));
    }
}
