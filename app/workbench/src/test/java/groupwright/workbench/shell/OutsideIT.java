package groupwright.workbench.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.project.ProjectFiles;
import groupwright.definition.record.Address;
import groupwright.definition.record.Amount;
import groupwright.definition.session.Saving;
import groupwright.workbench.Sample;
import groupwright.workbench.look.Theme;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What others do to the folder while the window is open. */
@NeedsDisplay
@Timeout(300) // seconds; a window that hangs must not hang the build
class OutsideIT {
    private static final Address TARGET =
            Address.parse("R-005.criteria.k1.target").orElseThrow();

    @TempDir
    Path folder;

    private Path project;

    @BeforeEach
    void copy() throws IOException {
        project = new groupwright.workbench.start.DataFolder(folder).sampleLike(Sample.FOLDER);
    }

    private void rewrite(String file, String from, String to) throws IOException {
        Path path = project.resolve(file);
        String text = Files.readString(path);
        assertTrue(text.contains(from), text);
        Files.writeString(path, text.replace(from, to));
    }

    private static void target(OpenWindow open, double value) {
        open.act(() -> open.shell()
                .edit(Optional.empty(), project -> project.with(TARGET, Optional.of(Amount.of(value))), refused -> {}));
        open.await(
                "the edit has arrived", () -> open.shell().ripple().sentence().contains("R-005 target"));
        open.settle();
    }

    @Test
    void whatOnlyOthersChangedIsTakenIn() throws IOException {
        try (OpenWindow open = OpenWindow.on(project, folder)) {
            target(open, 19);
            rewrite("requirements/R-007.json", "\"target\": 480", "\"target\": 470");
            open.act(() -> open.shell().desk().lookOutside());
            open.await(
                    "R-007 has come in", () -> open.shell().ripple().sentence().contains("R-007"));
            assertEquals(
                    Optional.of(Amount.of(19)),
                    open.read(() -> open.shell().definition().value(TARGET)));
            assertEquals(List.of(), open.read(open::problems));
        }
    }

    @Test
    void whatBothChangedWaitsForADecision() throws IOException {
        try (OpenWindow open = OpenWindow.on(project, folder)) {
            rewrite("requirements/R-005.json", "\"target\": 18", "\"target\": 17");
            target(open, 19);
            open.await(
                    "the conflict is listed",
                    () -> !open.shell().standing().conflicts().isEmpty());
            String told = String.join("\n", open.read(open::problems));
            assertTrue(told.contains("R-005") && told.contains("19") && told.contains("17"), told);
            open.clickSaying("Take 17");
            open.await(
                    "theirs is taken",
                    () -> open.shell().definition().value(TARGET).equals(Optional.of(Amount.of(17))));
            open.await(
                    "nothing waits any more",
                    () -> open.shell().standing().conflicts().isEmpty());
        }
    }

    @Test
    void aFolderTakenAwayKeepsTheWorkAndItCanBeSavedElsewhere() throws IOException {
        try (OpenWindow open = OpenWindow.on(project, folder)) {
            Files.move(project, project.resolveSibling("gone"));
            target(open, 19);
            open.await("it says so", () -> open.shell().standing().saving() instanceof Saving.Unsaved);
            String told = String.join("\n", open.read(open::problems));
            assertTrue(told.contains("Save elsewhere"), told);
            Path other = folder.resolve("elsewhere");
            open.act(() -> open.shell().desk().saveElsewhere(other));
            open.await("it is saved", () -> open.shell().standing().saving() instanceof Saving.Saved);
            assertEquals(
                    Optional.of(Amount.of(19)),
                    ProjectFiles.read(other).definition().orElseThrow().value(TARGET));
            assertEquals(List.of(), open.read(open::problems));
        }
    }

    @Test
    void aFileBrokenByOthersIsNamedAndTheRecordStays() throws IOException {
        try (OpenWindow open = OpenWindow.on(project, folder)) {
            rewrite("parts/P-001.json", "{", "{,");
            open.act(() -> open.shell().desk().lookOutside());
            open.await(
                    "the file is named",
                    () -> String.join("\n", open.problems()).contains("P-001"));
            assertTrue(open.read(
                    () -> open.shell().definition().get(Sample.id("P-001")).isPresent()));
        }
    }

    @Test
    void inAnotherThemeAndLanguageNothingIsThrown() {
        try (OpenWindow open = OpenWindow.onSample(folder, Theme.DARK, Locale.GERMANY)) {
            target(open, 18.5);
            assertTrue(open.foot().contains("18 → 18,5"), open.foot());
            assertEquals(Optional.empty(), open.events().thrown());
        }
    }
}
