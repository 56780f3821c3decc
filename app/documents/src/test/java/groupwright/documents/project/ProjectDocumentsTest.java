package groupwright.documents.project;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.assessment.Assessment;
import groupwright.definition.assessment.ClaimState;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.figure.FigureText;
import groupwright.definition.figure.Quantity;
import groupwright.definition.ledger.Ledger;
import groupwright.definition.project.NewProject;
import groupwright.definition.project.ProjectFiles;
import groupwright.documents.numbers.Reader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Documents of real projects, written to a folder and read back. */
class ProjectDocumentsTest {
    private static final Path SAMPLE = Path.of("..", "..", "samples", "tarnbeck");
    private static final Optional<LocalDate> DAY = Optional.of(LocalDate.of(2026, 3, 9));

    @TempDir
    Path folder;

    private static Ledger ledger(ProjectFiles files) {
        return new Ledger(Catalogue.ofServices(), files.definition().orElseThrow(), 1000);
    }

    private static ProjectDocuments documents(Path project) {
        ProjectFiles files = ProjectFiles.read(project);
        return new ProjectDocuments(ledger(files), files, project, new Reader(Locale.ENGLISH));
    }

    private Path copyOfSample() throws IOException {
        Path copy = folder.resolve("project");
        try (Stream<Path> all = Files.walk(SAMPLE)) {
            for (Path file : all.toList()) {
                Path target = copy.resolve(SAMPLE.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(file, target);
                }
            }
        }
        return copy;
    }

    private ProjectDocuments.Outcome write(Path project, String... names) {
        ProjectDocuments.Outcome outcome = documents(project).write(List.of(names), DAY, folder.resolve("out"));
        assertEquals(List.of(), outcome.problems());
        return outcome;
    }

    private String markdown(Path project, String name) throws IOException {
        write(project, name);
        return Files.readString(folder.resolve("out").resolve(name + ".md")).replaceAll("<a id=\"[^\"]*\"></a>", "");
    }

    @Test
    void theSpecificationSaysWhatTheLedgerSays() throws IOException {
        String text = markdown(SAMPLE, "specification");
        Ledger ledger = ledger(ProjectFiles.read(SAMPLE));
        double range = ((Quantity)
                        ledger.ask(FigureText.parse("gear-range C-002").resolve(ledger.catalogue(), Optional.empty())))
                .value();
        assertTrue(text.contains("The gears of C-002 span " + (int) range + ".0"), "range in words");
        assertTrue(text.contains("| R-005 |"), "a requirement");
        assertTrue(text.contains("Where the numbers come from"), "the last chapter");
        assertTrue(text.contains("`C-002.cogs`"), "an address behind a number");
        // climb-cadence of R-001: rolling resistance, drag area and efficiency state bands
        assertTrue(text.replace("\\", "").contains("How well known: 49.78 to 51.66"), "a band");
        assertTrue(text.contains("How well known: exact"), "whole teeth have no band");
    }

    @Test
    void theCautionStandsInBothDocuments() throws IOException {
        for (String name : ProjectDocuments.names()) {
            String text = markdown(SAMPLE, name);
            assertTrue(text.contains("no proof of"), name);
            assertTrue(text.contains("ISO 4210"), name);
        }
    }

    @Test
    void aChangedCogChangesTheVerdictOnThePage() throws IOException {
        Path project = copyOfSample();
        String before = row(markdown(project, "specification"), "R-001");
        Path concept = project.resolve("concepts/C-002.json");
        Files.writeString(concept, Files.readString(concept).replace("40, 45]", "40, 42]"));
        String after = row(markdown(project, "specification"), "R-001");
        assertTrue(before.contains("meets"), before);
        assertTrue(after.contains("misses"), after);
    }

    /** The first table row of a requirement that holds a verdict. */
    private static String row(String text, String id) {
        return text.lines()
                .filter(line -> line.startsWith("| " + id + " |"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aClaimIsQuotedOnlyWhileItHolds() throws IOException {
        String text = markdown(SAMPLE, "claims");
        int holding = 0;
        for (Assessment.ClaimStanding standing : new Assessment(ledger(ProjectFiles.read(SAMPLE))).claims()) {
            String words = standing.claim().wording().replaceAll("\\{\\{.*?}}", "\u0000");
            String longest = Stream.of(words.split("\u0000"))
                    .map(String::strip)
                    .reduce("", (a, b) -> a.length() >= b.length() ? a : b);
            boolean holds = standing.state() == ClaimState.HOLDS;
            holding += holds ? 1 : 0;
            // signs that mean something in Markdown are escaped there
            String plain = text.replace("\\", "");
            assertEquals(holds, plain.contains(longest), standing.claim().id() + ": " + longest);
        }
        assertEquals(5, holding, "the sample has five claims that hold");
    }

    @Test
    void thePdfReadsLikeTheMarkdown() throws IOException {
        write(SAMPLE, "specification");
        try (PDDocument pdf =
                Loader.loadPDF(folder.resolve("out/specification.pdf").toFile())) {
            String text = new PDFTextStripper().getText(pdf);
            assertTrue(text.contains("The gears of C-002 span"), "prose");
            assertTrue(text.contains("too close to call"), "a verdict with its certainty");
            assertTrue(text.contains("C-002.cogs"), "an address");
            assertEquals("Fellmark Components", pdf.getDocumentInformation().getAuthor());
        }
    }

    private String claims(Path project, String template) throws IOException {
        Files.createDirectories(project.resolve("templates"));
        Files.writeString(project.resolve("templates/claims.md"), template);
        ProjectDocuments.Outcome outcome = documents(project).write(List.of("claims"), DAY, folder.resolve("out"));
        return outcome.problems().isEmpty()
                ? Files.readString(folder.resolve("out/claims.md"))
                : String.join("\n", outcome.problems());
    }

    @Test
    void theLadderShowsTheConceptsWorkedOnAndWhatTheRidersNeed() throws IOException {
        Path project = copyOfSample();
        String text = claims(project, "```gear-ladder G-003\n```\n");
        assertTrue(text.contains("| C-001 | 36 |") && text.contains("| C-003 | 34 |"), text);
        assertFalse(text.contains("C-000"), "a parked concept is not shown");
        // 150 W loaded give 52 rpm at 8 % with 1.58 m a turn; the lowest gear of C-002, 1.644 m, gives 50.0 rpm,
        // and 1.644 · 50.0 / 52 = 1.58 (by hand)
        assertTrue(text.contains("R-003 needs 1.58\u202Fm or less for 52\u202Frpm at 8\u202F%"), text);
        assertTrue(text.contains("R-033 needs 1.67\u202Fm or less"), text);
        // 43 km/h at 95 rpm: 43000 / 60 / 95 = 7.544 m (by hand)
        String racers = claims(project, "```gear-ladder\n```\n");
        assertTrue(racers.contains("wheel of G-001"), "the most important riders where none are named");
        assertTrue(racers.contains("R-004 needs 7.54\u202Fm or more for 43\u202Fkm/h"), racers);
    }

    @Test
    void stepBarsTakeTheLimitOfTheRequirementOrTheirOwn() throws IOException {
        Path project = copyOfSample();
        String required = claims(project, "```step-bars lead\n```\n");
        assertTrue(required.contains("at most 18\u202F% from 14 teeth, is missed by 21–25, 25–30"), required);
        String own = claims(project, "```step-bars C-003 from-teeth=18 at-most=16\n```\n");
        assertTrue(own.contains("| 18–21 | misses | 16.7 | 3 |"), own);
        assertTrue(own.contains("| 14–16 |  | 14.3 | 2 |") || own.contains("| 14–16 || 14.3 | 2 |"), own);
    }

    @Test
    void aBlockThatMakesNoSenseIsNamed() throws IOException {
        Path project = copyOfSample();
        assertTrue(claims(project, "```gear-ladder G-009\n```\n").contains("there is no rider group G-009"));
        assertTrue(claims(project, "```gear-ladder riders\n```\n").contains("\"riders\" is no rider group"));
        assertTrue(claims(project, "```step-bars C-009\n```\n").contains("there is no concept C-009"));
        assertTrue(claims(project, "```step-bars at-least=3\n```\n").contains("no parameter at-least"));
        assertTrue(claims(project, "```step-bars from-teeth=14\n```\n").contains("without a limit"));
        assertTrue(claims(project, "```step-bars at-most=many\n```\n").contains("at-most is \"many\""));
    }

    @Test
    void aLadderWithoutAWheelSaysWhatIsMissing() throws IOException {
        Path project = copyOfSample();
        Path riders = project.resolve("riders/G-003.json");
        Files.writeString(riders, Files.readString(riders).replaceAll("\\s*\"(beadSeat|tyre)_mm\": \\d+,", ""));
        String text = claims(project, "```gear-ladder G-003\n```\n");
        assertTrue(text.contains("missing: G-003."), text);
    }

    @Test
    void theSpecificationDrawsItsCharts() throws IOException {
        String text = markdown(SAMPLE, "specification");
        assertTrue(text.contains("**Figure 3-1** Gear ladder: metres per crank turn on the wheel of G-001"), text);
        assertTrue(text.contains("**Figure 3-2** Steps between the cogs of C-002"), text);
    }

    @Test
    void theSameProjectGivesTheSameBytes() throws IOException {
        for (String out : List.of("one", "two")) {
            documents(SAMPLE).write(ProjectDocuments.names(), DAY, folder.resolve(out));
        }
        for (String name : ProjectDocuments.names()) {
            for (String ending : List.of(".md", ".html", ".pdf")) {
                assertArrayEquals(
                        Files.readAllBytes(folder.resolve("one").resolve(name + ending)),
                        Files.readAllBytes(folder.resolve("two").resolve(name + ending)),
                        name + ending);
            }
        }
    }

    @Test
    void theProjectsOwnTemplateGoesBeforeOurs() throws IOException {
        Path project = copyOfSample();
        Files.createDirectories(project.resolve("templates"));
        Files.writeString(project.resolve("templates/claims.md"), "Only {{ gear-range lead }} here.\n");
        assertTrue(markdown(project, "claims").contains("Only 450.0"));
    }

    @Test
    void aBrokenTemplateLeavesNothingBehindAndSaysWhere() throws IOException {
        Path project = copyOfSample();
        Files.createDirectories(project.resolve("templates"));
        Files.writeString(project.resolve("templates/claims.md"), "One.\n\nTwo {{ gear-rnage lead }}.\n");
        ProjectDocuments.Outcome outcome =
                documents(project).write(ProjectDocuments.names(), DAY, folder.resolve("none"));
        assertEquals(
                List.of("templates/claims.md:3:5: nothing is called \"gear-rnage\"; did you mean \"gear-range\"?"),
                outcome.problems());
        assertFalse(Files.exists(folder.resolve("none")));
    }

    @Test
    void aTemplateBehindALinkIsRefused() throws IOException {
        Path project = copyOfSample();
        Path outside = Files.writeString(folder.resolve("outside.md"), "secret");
        Files.createDirectories(project.resolve("templates"));
        Files.createSymbolicLink(project.resolve("templates/claims.md"), outside.toAbsolutePath());
        ProjectDocuments.Outcome outcome = documents(project).write(List.of("claims"), DAY, folder.resolve("none"));
        assertEquals(
                List.of("templates/claims.md: is a link or lies behind one; copy the file itself there."),
                outcome.problems());
    }

    @Test
    void aFolderThatCannotBeMadeIsNamed() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "in the way");
        ProjectDocuments.Outcome outcome = documents(SAMPLE).write(List.of("claims"), DAY, file.resolve("out"));
        assertEquals(1, outcome.problems().size());
        assertTrue(
                outcome.problems().get(0).contains("nothing was written"),
                outcome.problems().get(0));
    }

    @Test
    void anEmptyProjectStillHasDocuments() throws IOException {
        Path project = folder.resolve("empty");
        assertEquals(Optional.empty(), NewProject.start(project, "Empty", "EUR", DAY));
        ProjectDocuments documents = documents(project);
        ProjectDocuments.Outcome outcome = documents.write(documents.available(), DAY, folder.resolve("out"));
        assertEquals(List.of(), outcome.problems());
        assertEquals(List.of(), outcome.warnings());
        assertEquals(
                Format.values().length * documents.available().size(),
                outcome.written().size());
        String specification = Files.readString(folder.resolve("out/specification.md"));
        assertTrue(specification.contains("The project names no lead concept yet."), specification);
        assertFalse(specification.contains("The gears of"), specification);
    }

    @Test
    void aRecordThatCannotBeReadIsNamedOnTheDocument() throws IOException {
        Path project = folder.resolve("broken");
        try (Stream<Path> all = Files.walk(SAMPLE)) {
            for (Path file : all.toList()) {
                Path target = project.resolve(SAMPLE.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(file, target);
                }
            }
        }
        Files.writeString(project.resolve("requirements/R-005.json"), "{");
        ProjectDocuments.Outcome outcome = documents(project).write(List.of("brief"), DAY, folder.resolve("out"));
        assertEquals(List.of(), outcome.problems());
        String brief = Files.readString(folder.resolve("out/brief.md"));
        assertTrue(
                brief.contains("- State: draft without requirements/R-005.json, which cannot be read"),
                brief.substring(0, 400));
    }

    @Test
    void withoutADateNothingIsWritten() {
        Path project = folder.resolve("undated");
        assertEquals(Optional.empty(), NewProject.start(project, "Undated", "EUR", Optional.empty()));
        ProjectDocuments.Outcome outcome =
                documents(project).write(List.of("claims"), Optional.empty(), folder.resolve("none"));
        assertTrue(outcome.problems().get(0).contains("--date"));
    }

    @Test
    void recordTextIsPrintedAsWrittenAndNeverRead() throws IOException {
        Path project = copyOfSample();
        Path need = project.resolve("needs/N-001.json");
        String hostile = "| {{ gear-range lead }} <b>*x*</b> [y](http://z)";
        Files.writeString(
                need, Files.readString(need).replaceAll("(?m)\"words\": \".*\"", "\"words\": \"" + hostile + "\""));
        write(project, "specification");
        try (PDDocument pdf =
                Loader.loadPDF(folder.resolve("out/specification.pdf").toFile())) {
            String text = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
            assertTrue(text.contains("{{ gear-range lead }} <b>*x*</b> [y](http://z)"));
        }
    }
}
