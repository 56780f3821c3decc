package groupwright.workbench.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.project.ProjectFiles;
import groupwright.definition.record.Address;
import groupwright.definition.record.Claim;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Definition;
import groupwright.definition.record.RecordKinds;
import groupwright.documents.project.ProjectDocuments;
import groupwright.workbench.Components;
import groupwright.workbench.Picture;
import groupwright.workbench.Sample;
import groupwright.workbench.bench.PlaceName;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Theme;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JComboBox;
import javax.swing.JTextField;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The window driven from end to end on the sample, in both themes and two languages of numbers. */
@NeedsDisplay
@Timeout(300) // seconds; a window that hangs must not hang the build
class WalkIT {
    @TempDir
    Path folder;

    private final Locale before = Locale.getDefault();

    @AfterEach
    void sameLocaleAsBefore() {
        Locale.setDefault(before);
    }

    private static List<Integer> cogs(OpenWindow open) {
        return open.read(() -> open.shell()
                .definition()
                .get(Sample.id("C-002"), Concept.class)
                .orElseThrow()
                .cogs());
    }

    @ParameterizedTest(name = "{0}, {1}")
    @CsvSource({"LIGHT, en", "DARK, de"})
    void fromACogToAPdf(Theme theme, String language) throws IOException {
        Locale locale = Locale.forLanguageTag(language);
        try (DiskWatch disk = new DiskWatch(folder);
                OpenWindow open = OpenWindow.onSample(folder, theme, locale)) {
            Path project = open.read(() -> open.shell().standing().folder());
            Definition opened = open.read(() -> open.shell().definition());
            assertEquals(
                    PlaceName.REQUIREMENTS, open.read(() -> open.shell().place().name()));

            typeCogsInAWrongOrder(open);
            changeACog(open);
            assertTrue(open.foot().contains("C-002 cogs 45 → 46"), open.foot());
            assertTrue(open.foot().contains("R-0"), "names a requirement: " + open.foot());
            assertEquals(46, cogs(open).get(cogs(open).size() - 1));
            Picture.keep(open.picture(), "walk-cog-" + theme);

            anotherThemeKeepsWhatCanBeUndone(open);
            openTheWorkingsOf(open, "R-007");
            String value = open.read(
                    () -> open.shell().workings().shown().orElseThrow().value().value());
            assertEquals(language.equals("de") ? "460,0" : "460.0", value, "46 / 10");

            open.act(open.shell()::undo);
            open.await(
                    "undone",
                    () -> open.shell().definition().equals(opened)
                            || open.shell().standing().undo().isEmpty());
            open.settle();
            assertEquals(45, cogs(open).get(cogs(open).size() - 1));

            addARequirementWithAMistake(open);
            approveAClaim(open);
            writeThePdfs(open, project);

            assertEquals(List.of(), open.read(open::problems));
            assertEquals(Optional.empty(), open.events().thrown());
            DiskWatch.Seen seen = disk.end();
            assertFalse(seen.anywhere().isEmpty(), "a watch that sees nothing proves nothing");
            assertEquals(List.of(), seen.onTheEventThread());
            Definition inMemory = open.read(() -> open.shell().definition());
            assertEquals(
                    List.of(),
                    Definition.changes(ProjectFiles.read(project).definition().orElseThrow(), inMemory).stream()
                            .filter(change -> !change.before().equals(change.after()))
                            .toList());
        }
    }

    private static void changeACog(OpenWindow open) {
        open.act(() -> open.shell().go(PlaceName.CONCEPTS));
        open.settle();
        java.awt.Component strip = open.component("strip cogs C-002");
        open.act(() -> ((javax.swing.JComponent) strip).scrollRectToVisible(new java.awt.Rectangle(strip.getSize())));
        open.act(strip::requestFocusInWindow);
        open.await("the row of cogs has the focus", strip::isFocusOwner);
        open.press(KeyEvent.VK_END);
        open.press(KeyEvent.VK_UP);
        open.await("the cog is changed", () -> open.shell().ripple().sentence().contains("46"));
        open.settle();
    }

    private static void typeCogsInAWrongOrder(OpenWindow open) {
        open.act(() -> open.shell().go(PlaceName.CONCEPTS));
        open.settle();
        open.click("teeth C-002");
        JTextComponent field = (JTextComponent) open.component("type cogs C-002");
        open.await("it has the focus", field::isFocusOwner);
        assertTrue(open.read(() -> field.getHeight() > 0 && field.getWidth() > 0));
        open.act(() -> field.setText("10-12-11"));
        String said = open.read(() -> field.getAccessibleContext().getAccessibleDescription());
        assertTrue(said.contains("11"), said);
        open.press(KeyEvent.VK_ESCAPE);
    }

    private static void anotherThemeKeepsWhatCanBeUndone(OpenWindow open) {
        Shell before = open.read(open::shell);
        open.act(() -> open.window().theme(Look.theme()));
        open.await("the window is made anew", () -> open.shell() != before);
        open.settle();
        assertTrue(open.read(() -> open.shell().standing().undo().isPresent()));
        assertTrue(open.foot().contains("45 → 46"), open.foot());
        assertEquals(PlaceName.CONCEPTS, open.read(() -> open.shell().place().name()));
    }

    private static void openTheWorkingsOf(OpenWindow open, String requirement) {
        open.act(() -> open.shell().open(Address.of(Sample.id(requirement))));
        open.settle();
        open.await(
                "its workings are shown",
                () -> open.shell()
                        .workings()
                        .shown()
                        .filter(sheet -> sheet.judged().stream()
                                .anyMatch(judged -> judged.requirement().text().equals(requirement)))
                        .isPresent());
    }

    private static Claim claim(OpenWindow open) {
        return open.shell().definition().get(Sample.id("K-009"), Claim.class).orElseThrow();
    }

    /** K-009 holds: it is taken back with a reason, proposed again and approved again. */
    private static void approveAClaim(OpenWindow open) {
        open.act(() -> open.shell().open(Address.of(Sample.id("K-009"))));
        open.settle();
        int approvals = open.read(() -> claim(open).approvals().size());
        open.click("claims.withdraw");
        answer(open, "to be seen again");
        open.await("it is taken back", () -> claim(open).state() == Claim.State.WITHDRAWN);
        open.settle();
        open.click("claims.propose");
        open.await("it is proposed", () -> claim(open).state() == Claim.State.PROPOSED);
        open.settle();
        open.click("claims.approve");
        answer(open, "marketing lead");
        open.await("it has one approval more", () -> claim(open).approvals().size() == approvals + 1);
        open.settle();
    }

    private static void answer(OpenWindow open, String text) {
        open.component("claims.now");
        open.await("a line asks", () -> open.focusNow() instanceof JTextField);
        open.press(KeyEvent.VK_A, KeyEvent.VK_CONTROL);
        open.type(text);
        open.click("claims.now");
    }

    private static void addARequirementWithAMistake(OpenWindow open) {
        open.act(() -> open.shell().go(PlaceName.REQUIREMENTS));
        open.settle();
        int count = open.read(() -> open.shell().definition().count(RecordKinds.REQUIREMENT));
        open.settle();
        open.click("requirements.add");
        JTextComponent title = field(open, "Title");
        JTextComponent statement = field(open, "Statement");
        JTextComponent weight = field(open, "Weight");
        open.act(() -> {
            title.setText("Quiet at the door");
            statement.setText("The freehub shall stay below 60 dB(A) at 1 m.");
            weight.setText("1o");
            choose(open, "Kind");
            choose(open, "Verification");
        });
        open.click("form.add");
        open.saying("Not a whole number: “1o”");
        assertEquals(count, open.read(() -> open.shell().definition().count(RecordKinds.REQUIREMENT)));
        open.act(() -> weight.setText("6"));
        open.click("form.add");
        open.await("it is added", () -> open.shell().definition().count(RecordKinds.REQUIREMENT) == count + 1);
        open.settle();
    }

    private static void choose(OpenWindow open, String name) {
        Components.all(open.window()).stream()
                .filter(child -> child instanceof JComboBox<?> && child.isShowing())
                .map(child -> (JComboBox<?>) child)
                .filter(box -> name.equals(box.getAccessibleContext().getAccessibleName()))
                .forEach(box -> box.setSelectedIndex(box.getItemCount() - 1));
    }

    private static JTextComponent field(OpenWindow open, String name) {
        open.await("there is a field " + name, () -> find(open, name).isPresent());
        return open.read(() -> find(open, name).orElseThrow());
    }

    private static Optional<JTextComponent> find(OpenWindow open, String name) {
        return Components.all(open.window()).stream()
                .filter(child -> child instanceof JTextComponent && child.isShowing())
                .map(JTextComponent.class::cast)
                .filter(JTextComponent::isEditable)
                .filter(child -> name.equals(child.getAccessibleContext().getAccessibleName()))
                .findFirst();
    }

    private static void writeThePdfs(OpenWindow open, Path project) throws IOException {
        open.act(() -> open.shell().go(PlaceName.DOCUMENTS));
        open.settle();
        open.click("documents.write");
        Path out = project.resolveSibling(project.getFileName() + "-documents");
        open.saying(ProjectDocuments.names().size() + " files written");
        open.settle();
        try (Stream<Path> files = Files.list(out)) {
            assertEquals(
                    List.of(
                            "brief.pdf",
                            "cassette-study.pdf",
                            "claims.pdf",
                            "concepts.pdf",
                            "coverage.pdf",
                            "fit.pdf",
                            "specification.pdf"),
                    files.map(file -> file.getFileName().toString()).sorted().toList());
        }
        byte[] head = Files.readAllBytes(out.resolve("specification.pdf"));
        assertEquals("%PDF", new String(head, 0, 4, java.nio.charset.StandardCharsets.US_ASCII));
    }
}
