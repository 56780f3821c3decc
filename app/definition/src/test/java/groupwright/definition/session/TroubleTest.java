package groupwright.definition.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.assessment.Scene;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Invalid;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An open project whose disk fills up or whose folder goes away. */
class TroubleTest {
    @TempDir
    private Path temp;

    private OpenProject open;

    @BeforeEach
    void open() throws IOException {
        open = OpenProject.of(Files.createDirectory(temp.resolve("alpine")), SessionTest.START);
    }

    @AfterEach
    void close() throws IOException {
        open.close();
    }

    private String told() {
        return open.session.standing().saving().told().orElse("");
    }

    @Test
    void onAFullDiskTheEditStaysInMemoryUntilTheNextEditFits() {
        open.disk.fillUp();
        Step step = open.set("G-001.title", "Ours");
        assertEquals(
                new Saving.Unsaved(
                        "Nothing was saved because the disk is full; free some space and try again; the files"
                                + " are as before; the edit is kept in memory."),
                step.standing().saving());
        assertEquals("Ours", open.value("G-001.title"));
        assertEquals("G-001", open.onDisk("G-001.title"));
        open.set("C-001.title", "Too");
        assertEquals(Optional.empty(), open.session.lookOutside(), "looking does not try to save again");
        open.disk.mend();
        open.set("G-001.riderMass_kg", Amount.of(85));
        open.assertSaved("everything unsaved, not only the last edit");
        assertEquals("Ours", open.onDisk("G-001.title"));
        assertEquals("Too", open.onDisk("C-001.title"));
    }

    @Test
    void savingCanBeTriedAgain() {
        open.disk.fillUp();
        open.set("G-001.title", "Ours");
        open.disk.mend();
        Step step = open.session.save();
        assertEquals(Step.Kind.SAVED, step.kind());
        assertTrue(step.ripple().isQuiet());
        open.assertSaved("tried again");
    }

    @Test
    void undoOfAnUnsavedEditLeavesNothingToSave() {
        open.disk.fillUp();
        open.set("G-001.title", "Ours");
        open.session.undo();
        open.assertSaved("the folder never changed");
    }

    /** Whichever operation of the disk fails once, the session is right and one more try puts the folder right. */
    @Test
    void anErrorInAnyOneOperation() {
        for (int operation = 0; operation < 25; operation++) {
            open.disk.failAt(operation);
            int mass = 60 + operation;
            open.session.edit(
                    Optional.empty(),
                    project -> project.with(OpenProject.at("G-001.riderMass_kg"), Optional.of(Amount.of(mass)))
                            .with(OpenProject.at("C-001.title"), Optional.of("T" + mass)));
            assertEquals(Amount.of(mass), open.value("G-001.riderMass_kg"));
            open.disk.mend();
            open.session.save();
            OpenProject.assertSame(open.session.definition(), OpenProject.read(open.folder), "operation " + operation);
            assertTrue(open.session.standing().saving() instanceof Saving.Saved, "operation " + operation + told());
        }
    }

    @Test
    void aFolderTakenAwayLeavesEverythingInMemoryAndIsFoundWhenItIsBack() throws IOException {
        Files.move(open.folder, temp.resolve("away"));
        Step step = open.session.lookOutside().orElseThrow();
        assertEquals(
                new Saving.Unsaved(open.folder + " does not exist; everything is kept in memory; bring the project back"
                        + " or save it elsewhere."),
                step.standing().saving());
        assertEquals(Optional.empty(), open.session.lookOutside(), "told once");
        open.set("G-001.title", "Ours");
        assertEquals("Ours", open.value("G-001.title"));
        assertTrue(open.session.standing().saving() instanceof Saving.Unsaved);
        Files.move(temp.resolve("away"), open.folder);
        assertEquals(Step.Kind.OUTSIDE, open.session.lookOutside().orElseThrow().kind());
        open.assertSaved("back");
        assertEquals("Ours", open.onDisk("G-001.title"));
    }

    @Test
    void aLockThatWasDeletedIsTakenAgain() throws IOException {
        Files.delete(open.folder.resolve(".groupwright/lock"));
        open.others("C-001.title", "Theirs");
        open.set("G-001.title", "Ours");
        open.session.lookOutside();
        open.assertSaved("with a new lock");
        assertTrue(Files.exists(open.folder.resolve(".groupwright/lock")));
        assertEquals("Theirs", open.value("C-001.title"));
    }

    @Test
    void theWholeProjectIsSavedElsewhereFromMemory() throws IOException {
        Files.writeString(
                open.file("G-001"),
                Files.readString(open.file("G-001")).replaceFirst("\\{", "{\n  \"horse\": \"grey\","));
        open.session.lookOutside();
        OpenProject.delete(open.folder);
        open.set("G-001.title", "Ours");
        Path other = temp.resolve("other");
        Step step = open.session.saveElsewhere(other);
        assertEquals(other, step.standing().folder());
        assertEquals(new Saving.Saved(Optional.empty()), step.standing().saving());
        assertTrue(Files.readString(OpenProject.file(other, "G-001")).contains("horse"));
        open.set("C-001.title", "Goes on there");
        open.close();
        try (OpenProject again = OpenProject.at(other)) {
            OpenProject.assertSame(open.session.definition(), again.session.definition(), "reopened");
        }
    }

    @Test
    void whatIsNoRecordGoesAlongAndWhatWasTakenOutDoesNot() throws IOException {
        OpenProject.write(open.folder.resolve("templates/brief.md"), "# Brief\n");
        OpenProject.write(open.folder.resolve("riders/G-007.json"), "\u0000");
        OpenProject.write(open.folder.resolve("riders/G-008.json"), "{");
        open.session.lookOutside();
        open.disk.fillUp();
        open.session.edit(Optional.empty(), project -> project.without(Scene.id("G-001")));
        open.disk.mend();
        Path other = temp.resolve("other");
        open.session.saveElsewhere(other);
        assertEquals("# Brief\n", Files.readString(other.resolve("templates/brief.md")));
        assertEquals("\u0000", Files.readString(other.resolve("riders/G-007.json")));
        assertEquals("{", Files.readString(other.resolve("riders/G-008.json")));
        assertTrue(Files.notExists(other.resolve("riders/G-001.json")));
        OpenProject.assertSame(open.session.definition(), OpenProject.read(other), "all records");
        assertEquals(2, open.session.standing().problems().size());
    }

    @Test
    void aFolderThatIsNotEmptyIsNoPlaceToSave() throws IOException {
        OpenProject.write(temp.resolve("full/letter.txt"), "Dear");
        Standing before = open.session.standing();
        assertThrows(Invalid.class, () -> open.session.saveElsewhere(temp.resolve("full")));
        assertEquals(before, open.session.standing());
        open.set("G-001.title", "Still here");
        assertEquals("Still here", open.onDisk("G-001.title"));
        assertEquals(
                List.of("letter.txt"), List.of(temp.resolve("full").toFile().list()));
    }
}
