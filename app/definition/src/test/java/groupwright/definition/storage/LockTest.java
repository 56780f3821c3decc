package groupwright.definition.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LockTest {
    @TempDir
    private Path root;

    @BeforeEach
    void aProject() {
        Project.write(root, Map.of("project.json", "{}\n", "needs/N-001.json", "{}\n"));
    }

    private Opening open() {
        return ProjectFolder.at(root, Project.FOLDERS).openForWriting();
    }

    @Test
    void aSecondProcessIsToldWhoWritesAndCanRead() throws Exception {
        try (ChildProcess other = ChildProcess.start(HeldLock.class, root.toString())) {
            assertEquals("Opened", other.line());
            Opening.InUse inUse = assertInstanceOf(Opening.InUse.class, open());
            assertEquals(OptionalLong.of(other.pid()), inUse.process());
            assertEquals(
                    root + " is being edited by process " + other.pid()
                            + "; close it there, or open it for reading only.",
                    inUse.sentence());
            assertEquals(
                    2, ProjectFolder.at(root, Project.FOLDERS).read().files().size());
            other.kill();
            assertInstanceOf(Opening.Opened.class, open()).writer().close();
        }
    }

    /** On POSIX systems a careless second attempt in one process would drop the lock of the first. */
    @Test
    void aSecondAttemptInOneProcessLeavesTheLockInPlace() throws Exception {
        try (ProjectWriter writer = Project.open(root, new RealDisk())) {
            Opening.InUse inUse = assertInstanceOf(Opening.InUse.class, open());
            assertEquals(OptionalLong.of(ProcessHandle.current().pid()), inUse.process());
            try (ChildProcess other = ChildProcess.start(HeldLock.class, root.toString())) {
                assertEquals("InUse", other.line());
            }
            assertEquals(2, writer.read().files().size());
        }
        assertInstanceOf(Opening.Opened.class, open()).writer().close();
    }

    @Test
    void aLockFileLeftBehindDoesNotMatter() throws IOException {
        Project.write(root, Map.of(".groupwright/lock", "no number"));
        assertInstanceOf(Opening.Opened.class, open()).writer().close();
    }

    @Test
    void withoutItsLockFileAWriterWritesNoMore() throws IOException {
        try (ProjectWriter writer = Project.open(root, new RealDisk())) {
            Files.delete(root.resolve(".groupwright/lock"));
            Outcome outcome =
                    writer.commit(List.of(Change.create(Project.path("needs/N-002.json"), Project.text("{}\n"))));
            assertInstanceOf(Outcome.Failed.class, outcome);
            assertTrue(outcome.sentence().contains("deleted or moved .groupwright"), outcome::sentence);
            assertTrue(Files.notExists(root.resolve("needs/N-002.json")));
        }
    }

    @Test
    void twoProjectsCanBeOpenAtOnce(@TempDir Path other) throws IOException {
        Project.write(other, Map.of("project.json", "{}\n"));
        try (ProjectWriter first = Project.open(root, new RealDisk());
                ProjectWriter second = Project.open(other, new RealDisk())) {
            assertEquals(2, first.read().files().size());
            assertEquals(1, second.read().files().size());
        }
    }
}
