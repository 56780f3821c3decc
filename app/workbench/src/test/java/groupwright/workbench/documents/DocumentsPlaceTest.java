package groupwright.workbench.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.project.ProjectFiles;
import groupwright.definition.record.Address;
import groupwright.definition.record.Definition;
import groupwright.documents.numbers.Measures;
import groupwright.documents.pages.PaperSize;
import groupwright.documents.project.Format;
import groupwright.documents.project.ProjectDocuments;
import groupwright.workbench.Components;
import groupwright.workbench.LedgerBench;
import groupwright.workbench.Sample;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Theme;
import groupwright.workbench.start.DocumentChoices;
import java.awt.event.ActionEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The place of documents on the sample, without a display: all happens at once on one thread. */
class DocumentsPlaceTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-05-01T00:00:00Z"), ZoneOffset.UTC);

    @TempDir
    Path folder;

    private Path project;
    private LedgerBench bench;
    private Keeping keeping;
    private DocumentsPlace place;

    private static final class Keeping implements DocumentsKeeping {
        private final Path folder;
        private DocumentChoices choices = DocumentChoices.USUAL;

        Keeping(Path folder) {
            this.folder = folder;
        }

        @Override
        public Path folder() {
            return folder;
        }

        @Override
        public DocumentChoices choices() {
            return choices;
        }

        @Override
        public void choose(DocumentChoices next) {
            choices = next;
        }
    }

    @BeforeEach
    void open() throws IOException {
        Look.setUp(Theme.LIGHT, 1);
        project = Files.createDirectories(folder.resolve("project"));
        keeping = new Keeping(folder.resolve("data"));
        start(Sample.definition());
    }

    private void start(Definition definition) {
        bench = new LedgerBench(Locale.ENGLISH, definition);
        ProjectFiles files = ProjectFiles.read(Sample.FOLDER);
        place = bench.show(new DocumentsPlace(bench, () -> new Whereabouts(project, files), CLOCK, keeping));
        place.component().setSize(1000, 700);
    }

    private <T extends JComponent> T named(String name, Class<T> type) {
        return Components.named(place.component(), name).map(type::cast).orElseThrow();
    }

    private boolean isThere(String name) {
        return Components.named(place.component(), name).isPresent();
    }

    private List<String> states() {
        JList<?> list = named("documents.list", JList.class);
        return IntStream.range(0, list.getModel().getSize())
                .mapToObj(i -> (DocumentsPanel.Row) list.getModel().getElementAt(i))
                .map(row -> row.value().title() + ": " + row.value().state())
                .toList();
    }

    private String state(String title) {
        return states().stream()
                .filter(state -> state.startsWith(title + ": "))
                .findFirst()
                .orElseThrow()
                .substring(title.length() + 2);
    }

    private void press(String name) {
        named(name, javax.swing.AbstractButton.class).doClick();
    }

    private void key(JComponent component, String stroke) {
        Object name = component.getInputMap().get(KeyStroke.getKeyStroke(stroke));
        component.getActionMap().get(name).actionPerformed(new ActionEvent(component, 0, stroke));
    }

    private TemplateText text() {
        press("documents.side.TEMPLATE");
        return named("documents.template", TemplateText.class);
    }

    /** What the writing in the window does, at once. */
    private void write() {
        ProjectFiles files = ProjectFiles.read(Sample.FOLDER);
        Writing writing = new Writing(
                groupwright.workbench.look.Words.of(Writing.class, Locale.ENGLISH),
                bench.definition(),
                new DocumentsReading.Wish(
                        new Whereabouts(project, files),
                        keeping.choices().as(EnumSet.of(Format.MARKDOWN)),
                        Locale.ENGLISH,
                        LocalDate.now(CLOCK)),
                keeping.folder());
        try {
            assertEquals(List.of(), writing.with(Bench.Progress.NONE).problems());
        } catch (InterruptedException interrupted) {
            throw new IllegalStateException(interrupted);
        }
    }

    private static Definition otherCogs() {
        return Sample.with("C-002.cogs", List.of(10, 12, 14, 16, 18, 21, 25, 30, 35, 40, 46));
    }

    @Test
    void theListCountsPagesAndSaysWhatWasNeverWritten() {
        JList<?> list = named("documents.list", JList.class);
        assertEquals(ProjectDocuments.names().size(), list.getModel().getSize());
        DocumentsPanel.Row brief = (DocumentsPanel.Row) list.getModel().getElementAt(0);
        assertTrue(
                brief.value().pages().matches("[1-9][0-9]* pages?"),
                brief.value().pages());
        assertTrue(state("Specification").contains("not yet written")
                || state("Specification").contains("missing input"));
    }

    @Test
    void whatChangedSinceTheLastWritingIsMarkedAtTheNextStart() {
        write();
        start(Sample.definition());
        assertFalse(state("Specification").contains("changed"), state("Specification"));
        start(otherCogs());
        assertTrue(state("Specification").contains("changed"), state("Specification"));
        assertTrue(isThere("documents.nextChange"));
        write();
        start(otherCogs());
        assertFalse(state("Specification").contains("changed"), state("Specification"));
    }

    @Test
    void anotherLanguageAndOtherMeasuresChangeNoNumber() {
        write();
        keeping.choose(keeping.choices().in("de").with(Measures.IMPERIAL));
        start(Sample.definition());
        states().forEach(state -> assertFalse(state.contains("changed"), state));
        start(otherCogs());
        assertTrue(state("Specification").contains("changed"), state("Specification"));
    }

    @Test
    void theProgramsTemplateIsReadOnlyUntilItIsCopied() {
        place.choose("brief");
        TemplateText text = text();
        assertTrue(text.getText().contains("# Who it is for"));
        assertFalse(text.isEditable());
        press("documents.copy");
        assertTrue(text.isEditable());
        assertTrue(Files.exists(project.resolve("templates/brief.md")));
        assertTrue(isThere("documents.back"));
    }

    @Test
    void whatIsTypedIsADraftUntilItIsSavedAndThePageFollows() throws IOException {
        place.choose("brief");
        TemplateText text = text();
        press("documents.copy");
        text.setCaretPosition(0);
        text.replaceSelection("# Typed\n\n");
        assertTrue(state("Brief").contains("template not saved"), state("Brief"));
        assertFalse(Files.readString(project.resolve("templates/brief.md")).contains("Typed"));
        key(text, "ctrl S");
        assertTrue(Files.readString(project.resolve("templates/brief.md")).startsWith("# Typed\n\n"));
        assertFalse(state("Brief").contains("not saved"), state("Brief"));
        press("documents.side.PAGE");
        assertTrue(named("pages", PagesView.class).document().orElseThrow().outline().stream()
                .anyMatch(entry -> entry.title().endsWith("Typed")));
        key(text, "ctrl Z");
        assertFalse(text.getText().contains("Typed"));
        assertTrue(state("Brief").contains("template not saved"), state("Brief"));
    }

    @Test
    void draftsOutliveOtherDocumentsAndTheWindow() throws IOException {
        place.choose("brief");
        press("documents.side.TEMPLATE");
        press("documents.copy");
        text().setText("mine");
        place.choose("claims");
        assertFalse(text().getText().contains("mine"));
        place.choose("brief");
        assertEquals("mine", text().getText());
        start(Sample.definition());
        place.choose("brief");
        assertEquals("mine", text().getText());
        assertTrue(isThere("documents.save"));
        press("documents.save");
        assertEquals("mine", Files.readString(project.resolve("templates/brief.md")));
        start(Sample.definition());
        assertFalse(state("Brief").contains("not saved"));
    }

    @Test
    void aFileThatChangedMeanwhileAsksAndKeepsBoth() throws IOException {
        Path file = project.resolve("templates/brief.md");
        place.choose("brief");
        text();
        press("documents.copy");
        text().setText("mine");
        Files.writeString(file, "theirs");
        key(text(), "ctrl S");
        assertEquals("theirs", Files.readString(file));
        assertEquals("mine", text().getText());
        press("documents.keepMine");
        assertEquals("mine", Files.readString(file));
        text().setText("mine again");
        Files.writeString(file, "theirs again");
        bench.refresh();
        press("documents.loadAgain");
        assertEquals("theirs again", text().getText());
        assertEquals("theirs again", Files.readString(file));
        key(text(), "ctrl Z");
        assertEquals("mine again", text().getText(), "even this choice can be undone");
    }

    @Test
    void theProblemOfATemplateLeadsToItsLine() throws IOException {
        Files.createDirectories(project.resolve("templates"));
        Files.writeString(project.resolve("templates/brief.md"), "# One\n\nfine\n\n{{ gear-rage lead }}\n");
        bench.refresh();
        place.choose("brief");
        assertTrue(isThere("documents.refused"));
        assertEquals("The template needs a mend", state("Brief"));
        key(named("documents.obstacle.5", JComponent.class), "ENTER");
        assertEquals(5, text().line());
    }

    @Test
    void headingAndTemplateLineLeadToEachOther() {
        place.choose("brief");
        PagesView pages = named("pages", PagesView.class);
        key(pages, "DOWN");
        key(pages, "DOWN");
        key(pages, "ENTER");
        TemplateText text = named("documents.template", TemplateText.class);
        int line = text.line();
        String[] lines = text.getText().split("\n");
        assertEquals("# What they said", lines[line - 1]);
        text.setCaretPosition(text.start(line + 2));
        key(text, "ctrl ENTER");
        assertTrue(isThere("pages"));
        String stands = pages.getAccessibleContext().getAccessibleName();
        assertTrue(stands.endsWith("What they said"), stands);
    }

    @Test
    void aNewTemplateIsListedAndShown() {
        press("documents.add");
        named("documents.newName", javax.swing.JTextField.class).setText("Plan");
        press("documents.addNow");
        assertTrue(isThere("documents.newName.refusal"));
        named("documents.newName", javax.swing.JTextField.class).setText("test-plan");
        press("documents.addNow");
        assertFalse(isThere("documents.newName"));
        assertTrue(states().get(ProjectDocuments.names().size()).startsWith("Test plan: "), states().toString());
        assertTrue(named("documents.template", TemplateText.class).getText().startsWith("# What this document says"));
        assertTrue(named("documents.template", TemplateText.class).isEditable());
    }

    @Test
    void backToTheProgramsOwnKeepsTheCopy() {
        place.choose("brief");
        text();
        press("documents.copy");
        press("documents.back");
        assertTrue(Files.exists(project.resolve("templates/brief.md.bak")));
        assertFalse(text().isEditable());
        assertTrue(Components.names((java.awt.Container) named("documents.strip", JComponent.class)).stream()
                .anyMatch(name -> name.contains("brief.md.bak")));
    }

    @Test
    void thePageFollowsTheChosenPaperAndMeasures() {
        place.choose("specification");
        PagesView pages = named("pages", PagesView.class);
        double a4 = pages.document().orElseThrow().pageHeight();
        List<String> metric = shown(pages);
        named("documents.paper", JComboBox.class).setSelectedIndex(1);
        named("documents.measures", JComboBox.class).setSelectedIndex(1);
        assertTrue(pages.document().orElseThrow().pageHeight() < a4);
        assertFalse(shown(pages).equals(metric));
        assertEquals(PaperSize.LETTER, keeping.choices().paper());
    }

    private static List<String> shown(PagesView pages) {
        return pages.document().orElseThrow().trace().entries().stream()
                .map(entry -> entry.entry().shown().text())
                .toList();
    }

    @Test
    void noFormatNoWriting() {
        press("documents.format.PDF");
        assertFalse(named("documents.write", JComponent.class).isEnabled());
        press("documents.format.MARKDOWN");
        assertEquals(EnumSet.of(Format.MARKDOWN), keeping.choices().formats());
        assertTrue(named("documents.write", JComponent.class).isEnabled());
    }

    @Test
    void withoutALeadThereAreNoPages() {
        start(Sample.definition().with(Address.parse("project.leadConcept").orElseThrow(), Optional.empty()));
        assertTrue(isThere("documents.refused"));
    }
}
