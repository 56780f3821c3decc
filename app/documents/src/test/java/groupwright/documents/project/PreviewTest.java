package groupwright.documents.project;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.ledger.Ledger;
import groupwright.definition.project.NewProject;
import groupwright.definition.project.ProjectFiles;
import groupwright.documents.numbers.Reader;
import groupwright.documents.pages.PaintedNumber;
import groupwright.documents.trace.Use;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Documents of a real project before they are written. */
class PreviewTest {
    private static final Path SAMPLE = Path.of("..", "..", "samples", "tarnbeck");
    private static final Optional<LocalDate> DAY = Optional.of(LocalDate.of(2026, 3, 9));

    @TempDir
    Path folder;

    private Path project;

    @BeforeEach
    void copySample() throws IOException {
        project = folder.resolve("project");
        try (Stream<Path> all = Files.walk(SAMPLE)) {
            for (Path file : all.toList()) {
                Path target = project.resolve(SAMPLE.relativize(file).toString());
                Files.createDirectories(target.getParent());
                if (Files.isRegularFile(file)) {
                    Files.copy(file, target);
                }
            }
        }
    }

    private static ProjectDocuments documents(Path project) {
        ProjectFiles files = ProjectFiles.read(project);
        Ledger ledger = new Ledger(Catalogue.ofServices(), files.definition().orElseThrow(), 1000);
        return new ProjectDocuments(ledger, files, project, new Reader(Locale.ENGLISH));
    }

    private Preview.Ready preview(String name) {
        return (Preview.Ready) documents(project).preview(name, DAY);
    }

    private Numbers.Read numbers(String name) {
        return (Numbers.Read) documents(project).numbers(name);
    }

    private void template(String text) throws IOException {
        Files.createDirectories(project.resolve("templates"));
        Files.writeString(project.resolve("templates/claims.md"), text);
    }

    private void swapLargestCog() throws IOException {
        Path concept = project.resolve("concepts/C-002.json");
        Files.writeString(concept, Files.readString(concept).replace("40, 45]", "40, 42]"));
    }

    private static Set<String> questions(List<Numbers.Shown> numbers) {
        return numbers.stream().map(number -> number.ask().toString()).collect(Collectors.toSet());
    }

    @Test
    void aPreviewHasThePagesOfTheFileAndKnowsItsQuestions() throws IOException {
        Preview.Ready ready = preview("specification");
        documents(project).write(List.of("specification"), DAY, folder.resolve("out"), Set.of(Format.PDF));
        try (PDDocument pdf =
                Loader.loadPDF(folder.resolve("out/specification.pdf").toFile())) {
            assertEquals(pdf.getNumberOfPages(), ready.document().pageCount());
        }
        for (int page = 0; page < ready.document().pageCount(); page++) {
            for (PaintedNumber number : ready.document().numbersOn(page)) {
                assertEquals(
                        number.entry().entry().id(), ready.ask(number.use()).toString());
            }
        }
        assertTrue(ready.asks().size() > 50, "asks " + ready.asks().size());
    }

    @Test
    void afterAnEditTheNumbersThatFollowAreMarkedAndOthersAreNot() throws IOException {
        template("{{ gear-range C-002 }} {{ gear-range C-001 }} {{ gear-range C-002 }}\n");
        Preview.Ready before = preview("claims");
        swapLargestCog();
        Preview.Ready after = preview("claims");
        // 450 % with a largest cog of 45 teeth and 420 % with 42, the smallest having 10 (by hand)
        assertEquals(Set.of(new Use(1, 1), new Use(1, 2)), after.document().changedSince(before.document()));
        assertTrue(after.document().numbersOn(0).get(0).shown().startsWith("420.0"));
    }

    @Test
    void numbersOfADocumentTellWhatChangedWithoutPages() throws IOException {
        Numbers.Read before = numbers("specification");
        assertEquals(List.of(), numbers("specification").changedSince(before));
        swapLargestCog();
        Set<String> changed = questions(numbers("specification").changedSince(before));
        assertTrue(changed.contains("gear-range C-002"), changed.toString());
        assertFalse(changed.contains("gear-range C-001"), changed.toString());
        assertFalse(changed.contains("gears C-002"), changed.toString());
    }

    @Test
    void numbersAreThoseInTheText() throws IOException {
        template("{{ gear-range C-002 }} and {{ largest-step lead from-teeth=14 }}\n");
        assertEquals(
                List.of("gear-range C-002 450.0\u202F%", "largest-step C-002 from-teeth=14 20.0\u202F% (25-30)"),
                numbers("claims").all().stream()
                        .map(number -> number.ask() + " " + number.shown())
                        .toList());
    }

    @Test
    void aBrokenTemplateIsRefusedWithItsPlaces() throws IOException {
        template("One.\n\nTwo {{ gear-rnage lead }}.\n");
        Obstacle expected = new Obstacle(
                "templates/claims.md:3:5: nothing is called \"gear-rnage\"; did you mean \"gear-range\"?",
                Optional.of(new Obstacle.Place(3, 5)));
        assertEquals(new Preview.Refused(List.of(expected)), documents(project).preview("claims", DAY));
        assertEquals(new Numbers.Refused(List.of(expected)), documents(project).numbers("claims"));
    }

    @Test
    void aProjectWithoutADateIsRefusedWithoutAPlace() {
        Path undated = folder.resolve("undated");
        assertEquals(Optional.empty(), NewProject.start(undated, "Undated", "EUR", Optional.empty()));
        Preview.Refused refused = (Preview.Refused) documents(undated).preview("claims", Optional.empty());
        assertEquals(Optional.empty(), refused.obstacles().get(0).place());
        assertTrue(refused.obstacles().get(0).sentence().contains("date"));
    }

    @Test
    void oneFormatLeavesFilesOfTheOtherAlone() throws IOException {
        Path out = folder.resolve("out");
        documents(project).write(List.of("claims"), DAY, out, Set.of(Format.MARKDOWN));
        assertFalse(Files.exists(out.resolve("claims.pdf")));
        Files.writeString(out.resolve("claims.md"), "mine");
        ProjectDocuments.Outcome pdfOnly = documents(project).write(List.of("claims"), DAY, out, Set.of(Format.PDF));
        assertEquals(List.of(out.resolve("claims.pdf")), pdfOnly.written());
        assertEquals("mine", Files.readString(out.resolve("claims.md")));
        byte[] alone = Files.readAllBytes(out.resolve("claims.pdf"));
        assertEquals(
                List.of(out.resolve("claims.md"), out.resolve("claims.html"), out.resolve("claims.pdf")),
                documents(project).write(List.of("claims"), DAY, out).written());
        assertArrayEquals(alone, Files.readAllBytes(out.resolve("claims.pdf")));
    }
}
