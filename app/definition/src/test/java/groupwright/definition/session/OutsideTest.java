package groupwright.definition.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.assessment.Scene;
import groupwright.definition.history.Conflict;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordKinds;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An open project whose files others change too. */
class OutsideTest {
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

    @Test
    void whereNothingChangedThereIsNothingToTell() {
        assertEquals(Optional.empty(), open.session.lookOutside());
        open.set("G-001.title", "Racers");
        assertEquals(Optional.empty(), open.session.lookOutside());
        assertEquals(Optional.empty(), open.session.lookOutside());
    }

    @Test
    void whatOthersChangedIsTakenInWithItsRipple() {
        open.others("C-001.cogs", List.of(15, 20));
        Step step = open.session.lookOutside().orElseThrow();
        assertEquals(Step.Kind.OUTSIDE, step.kind());
        assertEquals("C-001 cogs", step.name().text());
        assertEquals(1, step.ripple().effects().size());
        assertEquals(Optional.empty(), step.standing().undo(), "others' edits are not ours to undo");
        assertEquals(Optional.empty(), open.session.lookOutside());
    }

    /** As a tool does that keeps times: size and time stay, only the content differs. */
    @Test
    void aChangeThatKeepsSizeAndTimeOfAYoungFileIsFound() throws IOException {
        FileTime time = Files.getLastModifiedTime(open.file("G-001"));
        Files.writeString(
                open.file("G-001"), Files.readString(open.file("G-001")).replace("80", "90"));
        Files.setLastModifiedTime(open.file("G-001"), time);
        assertTrue(open.session.lookOutside().isPresent());
        assertEquals(Amount.of(90), open.value("G-001.riderMass_kg"));
    }

    @Test
    void recordsThatOthersAddAndTakeOutComeAndGo() throws IOException {
        OpenProject.writeFile(open.folder, Scene.record("G-002", "\"riderMass_kg\": 70"));
        Files.delete(open.file("G-001"));
        assertTrue(open.session.lookOutside().isPresent());
        assertEquals("nothing", open.value("G-001"));
        assertEquals(Amount.of(70), open.value("G-002.riderMass_kg"));
        open.assertSaved("taken in");
    }

    @Test
    void anEditOfAFileThatOthersChangedIsJoinedWithTheirs() {
        open.others("G-001.riderMass_kg", Amount.of(90));
        Step step = open.set("G-001.title", "Racers");
        assertEquals("G-001 title G-001 → Racers", step.name().text());
        assertEquals(2, step.ripple().changes().size());
        assertEquals(List.of(), step.conflicts());
        open.assertSaved("joined");
        open.session.undo();
        assertEquals(Amount.of(90), open.onDisk("G-001.riderMass_kg"));
        assertEquals("G-001", open.onDisk("G-001.title"));
    }

    private Conflict conflict() {
        open.others("G-001.title", "Theirs");
        open.others("G-001.riderMass_kg", Amount.of(90));
        Step step = open.set("G-001.title", "Ours");
        Conflict conflict = new Conflict(
                OpenProject.at("G-001.title"), Optional.of("G-001"), Optional.of("Ours"), Optional.of("Theirs"));
        assertEquals(List.of(conflict), step.conflicts());
        assertEquals(List.of(conflict), step.standing().conflicts());
        return conflict;
    }

    @Test
    void whileAConflictIsOpenTheFolderKeepsTheirsAndTheSessionOurs() {
        conflict();
        assertEquals("Ours", open.value("G-001.title"));
        assertEquals("Theirs", open.onDisk("G-001.title"));
        assertEquals(
                "G-001.title differs from what somebody else wrote and is kept in memory; the rest is saved; decide"
                        + " which is to stand.",
                open.session.standing().saving().told().orElseThrow());
        Step other = open.set("G-001.riderMass_kg", Amount.of(95));
        assertEquals(List.of(), other.conflicts());
        assertEquals(Amount.of(95), open.onDisk("G-001.riderMass_kg"));
        assertEquals("Theirs", open.onDisk("G-001.title"));
    }

    @Test
    void keepingOursWritesIt() {
        Step step = open.session.settle(conflict(), Session.Choice.KEEP_OURS);
        assertEquals(Step.Kind.SETTLED, step.kind());
        assertEquals(List.of(), step.standing().conflicts());
        assertEquals("Ours", open.onDisk("G-001.title"));
        open.assertSaved("settled");
    }

    @Test
    void takingTheirsIsAnEditThatCanBeUndone() {
        Step step = open.session.settle(conflict(), Session.Choice.TAKE_THEIRS);
        assertEquals("G-001 title Ours → Theirs", step.name().text());
        assertEquals("Theirs", open.value("G-001.title"));
        open.assertSaved("settled");
        open.session.undo();
        assertEquals("Ours", open.onDisk("G-001.title"));
    }

    @Test
    void aConflictThatOthersMovedOnIsToBeLookedAtAgain() {
        Conflict old = conflict();
        open.others("G-001.title", "Later");
        open.session.lookOutside();
        assertThrows(Invalid.class, () -> open.session.settle(old, Session.Choice.TAKE_THEIRS));
        assertEquals(
                Optional.of("Later"), open.session.standing().conflicts().get(0).theirs());
        open.others("G-001.title", "Ours");
        open.session.lookOutside();
        assertEquals(List.of(), open.session.standing().conflicts(), "both have come to say the same");
        open.assertSaved("over");
    }

    @Test
    void undoLeavesAndTellsWhatOthersChangedSince() {
        open.set("G-001.title", "Ours");
        open.others("G-001.title", "Theirs");
        open.session.lookOutside();
        Step undone = open.session.undo().orElseThrow();
        assertEquals(
                List.of(new Conflict(
                        OpenProject.at("G-001.title"),
                        Optional.of("Ours"),
                        Optional.of("Theirs"),
                        Optional.of("G-001"))),
                undone.conflicts());
        assertEquals(List.of(), undone.standing().conflicts(), "there is nothing to decide");
        assertEquals("Theirs", open.onDisk("G-001.title"));
        open.assertSaved("undone");
    }

    @Test
    void aFileThatOthersBrokeIsAProblemAndItsRecordStays() throws IOException {
        String sound = Files.readString(open.file("G-001"));
        Files.writeString(open.file("G-001"), sound.substring(0, sound.length() / 2));
        Step step = open.session.lookOutside().orElseThrow();
        assertEquals(List.of(), step.ripple().changes());
        assertEquals(
                List.of("riders/G-001.json"),
                step.standing().problems().stream()
                        .map(problem -> problem.file())
                        .toList());
        assertEquals(Amount.of(80), open.value("G-001.riderMass_kg"));
        assertEquals("G-002", open.session.nextId(RecordKinds.RIDER_GROUP).text());
        Step edited = open.set("G-001.title", "Ours");
        String told = edited.standing().saving().told().orElseThrow();
        assertTrue(told.startsWith("G-001 is kept in memory and not saved, because its file cannot be read: "), told);
        open.set("C-001.title", "Saved beside it");
        assertEquals("Saved beside it", open.onDisk("C-001.title"));
        assertEquals(sound.substring(0, sound.length() / 2), Files.readString(open.file("G-001")));
        Files.writeString(open.file("G-001"), sound.replace("80", "90"));
        open.session.lookOutside();
        assertEquals("Ours", open.onDisk("G-001.title"));
        assertEquals(Amount.of(90), open.value("G-001.riderMass_kg"));
        open.assertSaved("mended");
    }

    @Test
    void aNewRecordMayNotTakeTheNameOfAFileThatWaitsToBeMended() throws IOException {
        Files.writeString(open.folder.resolve("riders/G-002.json"), "{");
        open.session.lookOutside();
        assertEquals("G-003", open.session.nextId(RecordKinds.RIDER_GROUP).text());
        assertThrows(
                Invalid.class,
                () -> open.session.edit(
                        Optional.empty(), project -> project.with(Scene.record("G-002", "\"riderMass_kg\": 70"))));
    }

    @Test
    void aFolderOfRecordsThatCannotBeReadTakesNoRecordAway() throws IOException {
        Path riders = open.folder.resolve("riders");
        Files.move(riders, temp.resolve("riders"));
        Files.createSymbolicLink(riders, temp.resolve("riders"));
        Step step = open.session.lookOutside().orElseThrow();
        assertEquals(Amount.of(80), open.value("G-001.riderMass_kg"));
        assertEquals(
                "riders: is a link; put the folder itself in its place.",
                step.standing().problems().get(0).sentence());
    }

    @Test
    void aBrokenProjectFileKeepsEverythingInMemory() throws IOException {
        String sound = Files.readString(open.folder.resolve("project.json"));
        Files.writeString(open.folder.resolve("project.json"), "{");
        Step step = open.session.lookOutside().orElseThrow();
        assertTrue(step.standing().saving().told().orElseThrow().contains("everything is kept in memory"));
        OpenProject.assertSame(SessionTest.START, open.session.definition(), "kept");
        Files.writeString(open.folder.resolve("project.json"), sound);
        open.session.lookOutside();
        open.assertSaved("mended");
    }
}
