package groupwright.definition.project;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import groupwright.definition.problem.Problem;
import groupwright.definition.record.Address;
import groupwright.definition.record.Definition;
import groupwright.definition.storage.Change;
import groupwright.definition.storage.Opening;
import groupwright.definition.storage.Outcome;
import groupwright.definition.storage.ProjectWriter;
import groupwright.definition.storage.RecordPath;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A project in a real folder: start it, read it, save an edit, read it again. */
class ProjectFilesTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 9);

    @TempDir
    Path folder;

    private Path started() {
        Path project = folder.resolve("mine");
        assertEquals(Optional.empty(), NewProject.start(project, "Mine", "EUR", Optional.of(DAY)));
        return project;
    }

    @Test
    void aNewProjectOpensWithoutAProblem() {
        ProjectFiles files = ProjectFiles.read(started());
        assertEquals(List.of(), files.problems());
        assertEquals("Mine", files.definition().orElseThrow().project().name());
        assertEquals(
                Optional.of(DAY), files.definition().orElseThrow().project().date());
    }

    @Test
    void aNewProjectNeverLandsOnAnother() throws IOException {
        Path project = started();
        byte[] before = Files.readAllBytes(project.resolve("project.json"));
        Optional<Problem> problem = NewProject.start(project, "Other", "USD", Optional.empty());
        assertEquals("is not empty", problem.orElseThrow().wrong());
        assertArrayEquals(before, Files.readAllBytes(project.resolve("project.json")));
    }

    @Test
    void savingWritesOnlyWhatChanged() throws IOException {
        Path project = started();
        Files.createDirectories(project.resolve("needs"));
        Files.writeString(project.resolve("needs/N-001.json"), need("N-001"));
        Files.writeString(project.resolve("needs/N-002.json"), need("N-002"));
        ProjectFiles files = ProjectFiles.read(project);
        Definition edited = files.definition()
                .orElseThrow()
                .with(Address.parse("N-002.words").orElseThrow(), Optional.of("new words"));
        List<Change> changes = files.changesTo(edited);
        assertEquals(
                List.of(RecordPath.of("needs", "N-002")),
                changes.stream().map(Change::path).toList());

        Opening.Opened opened = assertInstanceOf(
                Opening.Opened.class, ProjectFiles.folder(project).openForWriting());
        try (ProjectWriter writer = opened.writer()) {
            assertInstanceOf(Outcome.Committed.class, writer.commit(changes));
        }
        ProjectFiles again = ProjectFiles.read(project);
        assertEquals(
                "new words",
                again.definition()
                        .orElseThrow()
                        .value(Address.parse("N-002.words").orElseThrow())
                        .orElseThrow());
        assertEquals(need("N-001"), Files.readString(project.resolve("needs/N-001.json")), "untouched to the byte");
        assertEquals(again.contentHash(), files.after(edited, changes).contentHash());
    }

    /** Laid out unlike our own writer would. */
    private static String need(String id) {
        return "{\"id\":\"" + id + "\",\"words\":\"w\",\"source\":\"ride\",\"importance\":\"must\"}";
    }

    @Test
    void anEditOfOneRecordThatComesToNothingWritesNothing() {
        ProjectFiles files = ProjectFiles.read(started());
        Definition now = files.definition().orElseThrow();
        Definition same = now.with(Address.parse("project.name").orElseThrow(), Optional.of("Mine"));
        assertEquals(List.of(), files.changesTo(same));
    }

    @Test
    void theHashFollowsContentAndNotPlace() throws IOException {
        Path project = started();
        Path copy = folder.resolve("copy");
        Files.createDirectories(copy);
        Files.copy(project.resolve("project.json"), copy.resolve("project.json"));
        assertEquals(
                ProjectFiles.read(project).contentHash(),
                ProjectFiles.read(copy).contentHash());
        Files.writeString(
                copy.resolve("project.json"),
                Files.readString(copy.resolve("project.json")).replace("Mine", "Yours"));
        assertNotEquals(
                ProjectFiles.read(project).contentHash(),
                ProjectFiles.read(copy).contentHash());
    }

    @Test
    void whoNamesARecordWhoseFileIsEmptyIsSentToThatFile() throws IOException {
        Path project = started();
        Files.createDirectories(project.resolve("needs"));
        Files.writeString(project.resolve("needs/N-001.json"), "");
        Files.writeString(
                project.resolve("needs/N-002.json"), need("N-002").replace("}", ",\"contradicts\":[\"N-001\"]}"));
        assertEquals(
                List.of(
                        "needs/N-001.json: N-001: is empty (0 bytes); bring back an earlier version or delete the file.",
                        "needs/N-002.json: N-002, contradicts: names N-001, whose file could not be read; mend"
                                + " needs/N-001.json."),
                ProjectFiles.read(project).problems().stream()
                        .map(Problem::sentence)
                        .toList());
    }
}
