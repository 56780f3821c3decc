package groupwright.definition.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Committed edits that cannot simply be finished. */
class JournalTest {
    private static final RecordPath N1 = Project.path("needs/N-001.json");
    private static final RecordPath N2 = Project.path("needs/N-002.json");
    private static final Content OLD = Project.text("{\"v\": 1}\n");
    private static final Content NEW = Project.text("{\"v\": 2}\n");
    private static final List<Change> EDIT =
            List.of(Change.replace(N1, OLD.sha256(), NEW), Change.replace(N2, OLD.sha256(), NEW));
    private static final String KEPT = ".groupwright/conflict-001";

    @TempDir(factory = MemoryFolder.class)
    private Path temp;

    private Path root;

    @BeforeEach
    void aProject() throws IOException {
        root = temp.toRealPath();
        Project.write(root, Map.of("project.json", "{}\n", N1.text(), OLD.text(), N2.text(), OLD.text()));
    }

    /** Stops the writer with the edit committed and so many of its files in place. */
    private void stopWith(int inPlace) throws IOException {
        HookedDisk disk = new HookedDisk();
        try (ProjectWriter writer = Project.open(root, disk)) {
            int[] replaced = {-1}; // the first renaming commits
            disk.hook(operation -> {
                if (operation.name().equals("replace") && replaced[0]++ == inPlace) {
                    throw new CrashingDisk.Crash();
                }
            });
            writer.commit(EDIT);
        } catch (CrashingDisk.Crash crash) {
            assertTrue(Files.exists(root.resolve(".groupwright/journal/manifest")));
        }
    }

    private Snapshot read() {
        return ProjectFolder.at(root, Project.FOLDERS).read();
    }

    private Opening.Opened opened() {
        return assertInstanceOf(
                Opening.Opened.class, ProjectFolder.at(root, Project.FOLDERS).openForWriting());
    }

    @Test
    void aReaderShowsTheEditWholeAndWritesNothing() throws IOException {
        stopWith(1);
        assertEquals(NEW.text(), Project.texts(read()).get(N1.text()));
        assertEquals(NEW.text(), Project.texts(read()).get(N2.text()));
        assertEquals(OLD.text(), Files.readString(N2.below(root)));
    }

    @Test
    void aFileChangedMeanwhileIsAConflictThatLosesNothing() throws IOException {
        stopWith(0);
        Project.write(root, Map.of(N2.text(), "{\"v\": \"theirs\"}\n"));
        assertEquals(OLD.text(), Project.texts(read()).get(N1.text()), "a reader shows what a writer would");
        assertEquals(
                List.of(".groupwright/journal: holds an edit that was interrupted and cannot be finished because"
                        + " somebody else changed needs/N-002.json; take from it what you need, then delete it."),
                Project.sentences(read()));
        Opening.Opened opened = opened();
        assertEquals(
                KEPT + ": holds an edit that was interrupted and cannot be finished because"
                        + " somebody else changed needs/N-002.json; take from it what you need, then delete it.",
                opened.problems().get(0).sentence());
        assertEquals(NEW.text(), Files.readString(root.resolve(KEPT + "/needs-N-001.json")));
        assertEquals(NEW.text(), Files.readString(root.resolve(KEPT + "/needs-N-002.json")));
        assertEquals(
                Map.of("project.json", "{}\n", N1.text(), OLD.text(), N2.text(), "{\"v\": \"theirs\"}\n"),
                Project.texts(opened.writer().read()));
        assertEquals("Saved.", opened.writer().commit(List.of(EDIT.get(0))).sentence());
        opened.writer().close();
        assertEquals(
                List.of(KEPT + ": keeps an edit that was interrupted and could not be finished;"
                        + " take from it what you need, then delete it."),
                Project.sentences(read()));
    }

    @Test
    void aFileRemovedMeanwhileIsAConflict() throws IOException {
        stopWith(1);
        Files.delete(N2.below(root));
        assertEquals(1, opened().problems().size());
        assertEquals(NEW.text(), Files.readString(root.resolve(KEPT + "/needs-N-002.json")));
    }

    @Test
    void editsKeptAsideAreCounted() throws IOException {
        Project.write(root, Map.of(KEPT + "/manifest", "earlier"));
        stopWith(0);
        Files.delete(N2.below(root));
        opened().writer().close();
        assertEquals(List.of("conflict-001", "conflict-002", "lock"), Project.ownNames(root));
    }

    @Test
    void aNewVersionMissingFromTheJournalIsNoticed() throws IOException {
        stopWith(0);
        Files.writeString(root.resolve(".groupwright/journal/needs-N-002.json"), "damaged");
        Opening.Opened opened = opened();
        assertEquals(1, opened.problems().size());
        assertEquals(OLD.text(), Project.texts(opened.writer().read()).get(N1.text()));
        opened.writer().close();
    }

    @Test
    void aDamagedManifestIsKeptAside() throws IOException {
        stopWith(0);
        Files.writeString(root.resolve(".groupwright/journal/manifest"), "groupwright journal 1\nrubbish\n");
        assertEquals(
                List.of(".groupwright/journal: holds an edit that is damaged;"
                        + " compare the files in it with those of the project."),
                Project.sentences(read()));
        Opening.Opened opened = opened();
        assertEquals(KEPT, opened.problems().get(0).file());
        opened.writer().close();
        assertEquals(NEW.text(), Files.readString(root.resolve(KEPT + "/needs-N-001.json")));
    }

    @Test
    void aJournalOfANewerVersionIsLeftAlone() throws IOException {
        Project.write(root, Map.of(".groupwright/journal/manifest", "groupwright journal 2\n?\n"));
        String sentence = ".groupwright/journal: holds an edit by a newer version of Groupwright;"
                + " open the project with that version.";
        Opening opening = ProjectFolder.at(root, Project.FOLDERS).openForWriting();
        assertEquals(
                sentence,
                assertInstanceOf(Opening.NotOpened.class, opening).problem().sentence());
        assertEquals(List.of(sentence), Project.sentences(read()));
        assertEquals("groupwright journal 2\n?\n", Files.readString(root.resolve(".groupwright/journal/manifest")));
    }

    /** A program that knows no lock changes a file just after the edit is committed. */
    @Test
    void aConflictWhilePuttingInPlaceKeepsTheEdit() throws IOException {
        HookedDisk disk = new HookedDisk();
        try (ProjectWriter writer = Project.open(root, disk)) {
            disk.hook(operation -> {
                if (operation.name().equals("replace") && operation.path().endsWith("journal")) {
                    Project.write(root, Map.of(N2.text(), "theirs"));
                }
            });
            assertEquals(new Outcome.Conflict(List.of(N2), Optional.of(KEPT)), writer.commit(EDIT));
        }
        assertEquals("theirs", Files.readString(N2.below(root)));
        assertEquals(OLD.text(), Files.readString(N1.below(root)));
        assertEquals(NEW.text(), Files.readString(root.resolve(KEPT + "/needs-N-001.json")));
    }

    @Test
    void aConflictBetweenTwoFilesKeepsTheRest() throws IOException {
        HookedDisk disk = new HookedDisk();
        try (ProjectWriter writer = Project.open(root, disk)) {
            disk.hook(operation -> {
                if (operation.path().equals(N1.below(root))) {
                    Project.write(root, Map.of(N2.text(), "theirs"));
                }
            });
            assertEquals(new Outcome.Conflict(List.of(N2), Optional.of(KEPT)), writer.commit(EDIT));
        }
        assertEquals(NEW.text(), Files.readString(N1.below(root)));
        assertEquals("theirs", Files.readString(N2.below(root)));
        assertEquals(NEW.text(), Files.readString(root.resolve(KEPT + "/needs-N-002.json")));
    }

    @Test
    void aFileMadeInTheMomentOfSavingIsAConflict() throws IOException {
        RecordPath c1 = Project.path("concepts/C-001.json");
        HookedDisk disk = new HookedDisk();
        try (ProjectWriter writer = Project.open(root, disk)) {
            disk.hook(operation -> {
                if (operation.name().equals("moveToNew")) {
                    Project.write(root, Map.of(c1.text(), "theirs"));
                }
            });
            Outcome outcome = writer.commit(List.of(Change.create(c1, NEW), EDIT.get(0)));
            assertEquals(new Outcome.Conflict(List.of(c1), Optional.of(KEPT)), outcome);
        }
        assertEquals("theirs", Files.readString(c1.below(root)));
        assertEquals(OLD.text(), Files.readString(N1.below(root)));
    }

    @Test
    void leftoversOfAnUncommittedEditAreThrownAway() throws IOException {
        Project.write(
                root,
                Map.of(
                        ".groupwright/saving",
                        "x",
                        ".groupwright/staging/needs-N-001.json",
                        "x",
                        ".groupwright/journal/needs-N-001.json",
                        "x",
                        ".groupwright/notes.txt",
                        "not ours"));
        opened().writer().close();
        assertEquals(List.of("lock", "notes.txt"), Project.ownNames(root));
    }
}
