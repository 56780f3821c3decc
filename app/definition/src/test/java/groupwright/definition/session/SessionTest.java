package groupwright.definition.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.assessment.Scene;
import groupwright.definition.figure.FigureText;
import groupwright.definition.history.EditName;
import groupwright.definition.history.FieldChange;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.storage.FaultyDisk;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An open project nobody else touches. */
class SessionTest {
    static final Definition START = Scene.of(
                    Scene.record("project", "\"name\": \"Test\", \"leadConcept\": \"C-001\""),
                    Scene.record("C-001", "\"rings\": [30], \"cogs\": [15, 30]"),
                    Scene.record("G-001", "\"riderMass_kg\": 80"),
                    Scene.requirement("R-001", """
                            "state": "agreed", "criteria": [
                                {"id": "k1", "figure": "gear-range", "comparator": "at-least", "target": 150}]"""))
            .definition();

    @TempDir
    private Path temp;

    private OpenProject open;

    @BeforeEach
    void open() throws IOException {
        open = OpenProject.of(Files.createDirectory(temp.resolve("alpine")), START);
    }

    @AfterEach
    void close() throws IOException {
        open.close();
    }

    @Test
    void anEditIsSavedAtOnceAndTellsWhatFollowed() {
        Step step = open.set("C-001.cogs", List.of(15, 20));
        assertEquals(Step.Kind.EDIT, step.kind());
        assertEquals("C-001 cogs", step.name().text());
        assertEquals(
                List.of(new FieldChange(
                        OpenProject.at("C-001.cogs"), Optional.of(List.of(15, 30)), Optional.of(List.of(15, 20)))),
                step.ripple().changes());
        assertEquals(
                List.of("verdict C-001 R-001"),
                step.ripple().effects().stream()
                        .map(effect -> effect.ask().toString())
                        .toList());
        assertTrue(step.computations() > 0);
        OpenProject.assertSame(START, step.before(), "the project before");
        open.assertSaved("after the edit");
    }

    @Test
    void whatIsShownIsWatchedToo() {
        var ask = FigureText.parse("gears C-001").resolve(open.session.view().catalogue(), Optional.empty());
        assertEquals(
                List.of(), open.set("C-001.cogs", List.of(15, 20, 30)).ripple().effects());
        open.session.watchAlso(List.of(ask));
        assertEquals(
                List.of(ask),
                open.set("C-001.cogs", List.of(15, 30)).ripple().effects().stream()
                        .map(effect -> effect.ask())
                        .toList());
        open.session.watchAlso(List.of());
        assertEquals(
                List.of(), open.set("C-001.cogs", List.of(15, 20, 30)).ripple().effects());
    }

    @Test
    void anEditThatChangesNothingIsNoStepInTheHistory() {
        open.set("G-001.riderMass_kg", Amount.of(85));
        open.session.undo();
        Step step = open.set("C-001.cogs", List.of(15, 30));
        assertEquals(EditName.Act.NOTHING, step.name().act());
        assertEquals(Optional.empty(), step.standing().undo());
        assertTrue(step.standing().redo().isPresent(), "and what was undone can still be done again");
    }

    @Test
    void aRefusedEditChangesNothing() {
        Standing before = open.session.standing();
        assertThrows(Invalid.class, () -> open.set("C-001.cogs", List.of(30, 15)));
        assertEquals(before, open.session.standing());
        open.assertSaved("after the refusal");
    }

    @Test
    void undoAndRedoAreSavedAndNamed() {
        Step edit = open.set("G-001.title", "Racers");
        assertEquals(
                "G-001 title G-001 → Racers",
                edit.standing().undo().orElseThrow().text());
        Step undone = open.session.undo().orElseThrow();
        assertEquals(Step.Kind.UNDO, undone.kind());
        assertEquals("G-001 title G-001 → Racers", undone.name().text());
        assertEquals(Optional.empty(), undone.standing().undo());
        OpenProject.assertSame(START, OpenProject.read(open.folder), "undone on disk");
        Step redone = open.session.redo().orElseThrow();
        assertEquals(Step.Kind.REDO, redone.kind());
        assertEquals("Racers", open.onDisk("G-001.title"));
        assertEquals(Optional.empty(), open.session.redo());
    }

    @Test
    void undoingANewRecordTakesItsFileAway() {
        Step added = open.session.edit(
                Optional.of("Add a second group"),
                project -> project.with(Scene.record("G-002", "\"riderMass_kg\": 70")));
        assertEquals("Add a second group", added.name().text());
        assertTrue(Files.exists(open.file("G-002")));
        open.session.undo();
        assertTrue(Files.notExists(open.file("G-002")));
    }

    @Test
    void unknownFieldsStay() throws IOException {
        Files.writeString(
                open.file("G-001"),
                Files.readString(open.file("G-001")).replaceFirst("\\{", "{\n  \"horse\": \"grey\","));
        open.session.lookOutside();
        open.set("G-001.title", "Racers");
        assertTrue(Files.readString(open.file("G-001")).contains("\"horse\": \"grey\""));
    }

    @Test
    void whileSomebodyElseWritesItIsOpenForReadingOnly() throws IOException {
        Session second = assertInstanceOf(
                        SessionOpening.Opened.class, OpenProject.opening(open.folder, new FaultyDisk()))
                .session();
        String sentence = assertInstanceOf(
                        Saving.ReadOnly.class, second.standing().saving())
                .sentence();
        assertEquals(
                open.folder + " is being edited by process "
                        + ProcessHandle.current().pid()
                        + "; it is open for reading only; close it there and open it again to edit it.",
                sentence);
        assertThrows(Invalid.class, () -> second.edit(Optional.empty(), project -> project.without(Scene.id("G-001"))));
        open.set("G-001.title", "Racers");
        assertEquals(Step.Kind.OUTSIDE, second.lookOutside().orElseThrow().kind());
        assertEquals(
                "Racers",
                second.definition().value(OpenProject.at("G-001.title")).orElseThrow());
        Step copied = second.saveElsewhere(temp.resolve("copy"));
        assertEquals(new Saving.Saved(Optional.empty()), copied.standing().saving());
        second.edit(Optional.empty(), project -> project.without(Scene.id("G-001")));
        assertEquals(
                "nothing",
                OpenProject.read(temp.resolve("copy"))
                        .value(OpenProject.at("G-001"))
                        .orElse("nothing"));
        second.close();
    }

    @Test
    void aNewerFormatIsOpenForReadingOnly() throws IOException {
        open.close();
        Files.writeString(
                open.folder.resolve("project.json"),
                Files.readString(open.folder.resolve("project.json")).replaceFirst("\\{", "{\n  \"format\": 2,"));
        SessionOpening.Opened newer =
                assertInstanceOf(SessionOpening.Opened.class, OpenProject.opening(open.folder, new FaultyDisk()));
        assertTrue(newer.session().standing().saving().told().orElseThrow().contains("newer than this program"));
        assertThrows(Invalid.class, () -> newer.session().saveElsewhere(temp.resolve("copy")));
        newer.session().close();
        open = OpenProject.of(Files.createDirectory(temp.resolve("other")), START);
    }

    @Test
    void whereNoProjectIsNothingIsOpened() {
        SessionOpening opening = OpenProject.opening(temp.resolve("nowhere"), new FaultyDisk());
        assertTrue(assertInstanceOf(SessionOpening.NotOpened.class, opening)
                .problem()
                .sentence()
                .contains("does not exist"));
    }

    @Test
    void itBelongsToTheThreadThatOpenedIt() throws InterruptedException {
        AtomicReference<Throwable> thrown = new AtomicReference<>();
        Thread other = new Thread(() -> open.session.undo());
        other.setUncaughtExceptionHandler((thread, error) -> thrown.set(error));
        other.start();
        other.join();
        assertInstanceOf(IllegalStateException.class, thrown.get());
    }

    @Test
    void problemsBetweenRecordsFollowTheEdits() {
        assertEquals(List.of(), open.session.problems());
        open.set("project.leadConcept", Scene.id("C-009"));
        assertEquals(1, open.session.problems().size());
        assertEquals("G-002", open.session.nextId(RecordKinds.RIDER_GROUP).text());
    }
}
