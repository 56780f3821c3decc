package groupwright.documents.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.assessment.FitMatrix;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.figure.Series;
import groupwright.definition.ledger.Ledger;
import groupwright.definition.project.ProjectFiles;
import groupwright.definition.record.Address;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Bike;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.documents.content.BlockAnswer;
import groupwright.documents.content.Inline;
import groupwright.documents.content.Unanswered;
import groupwright.documents.numbers.Reader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The document on fit, its blocks, and the choice of bikes. */
class FitBlocksTest {
    private static final Path SAMPLE = Path.of("..", "..", "samples", "tarnbeck");
    private static final RecordId B_001 = new RecordId("B-001");
    private static final RecordId B_002 = new RecordId("B-002");
    private static final RecordId B_004 = new RecordId("B-004");
    private static final RecordId C_002 = new RecordId("C-002");
    private static final RecordId C_003 = new RecordId("C-003");

    @TempDir
    Path out;

    private static ProjectContent about(Definition definition, RecordId... bikes) {
        return new ProjectContent(
                new Ledger(Catalogue.ofServices(), definition, 1000),
                new Reader(Locale.ENGLISH),
                BikeChoice.of(definition, List.of(bikes)));
    }

    private static List<List<String>> rows(Definition definition, String block, String arguments) {
        return SampleProject.rows(SampleProject.content(definition).block(block, arguments));
    }

    private static String words(Definition definition, String block, String arguments) {
        BlockAnswer answer = SampleProject.content(definition).block(block, arguments);
        return ((Inline.Plain) ((BlockAnswer.Paragraph) answer).phrase().parts().get(0)).text();
    }

    private static List<String> row(List<List<String>> rows, String head) {
        return rows.stream()
                .filter(row -> row.contains(head))
                .findFirst()
                .orElseThrow(() -> new AssertionError(head + " is not in " + rows));
    }

    private static Definition with(RecordId record, String field, Object value) {
        return SampleProject.DEFINITION.with(Address.of(record, field), Optional.of(value));
    }

    private static Definition without(RecordId bike, String field) {
        return SampleProject.DEFINITION.with(Address.of(bike, field), Optional.empty());
    }

    @Test
    void aShortChainIsSuppliedLonger() {
        // 112 links for C-002 on B-001 by its chain-links; 110 are too few
        Definition shorter = with(C_002, "chainSupplied_links", new Amount(110, 0));
        String cell =
                row(rows(shorter, "fit-matrix", ""), "B-001 Marathon hardtail").get(2);
        assertEquals("MISSES; supply 112\u202Flinks", cell);
        assertTrue(
                words(shorter, "fit-in-short", "lead")
                        .contains("C-002 does not fit B-001 Marathon hardtail: chain too short."),
                words(shorter, "fit-in-short", "lead"));
    }

    @Test
    void aRingThatTouchesIsNamed() {
        Definition tight = with(B_001, "largestRing_teeth", new Amount(30, 0));
        assertTrue(row(rows(tight, "fit-matrix", ""), "B-001 Marathon hardtail")
                .get(2)
                .startsWith("MISSES: room for the ring; "));
        List<String> ring = row(rows(tight, "fit-checks", "B-001"), "Room for the ring");
        assertEquals(List.of("Room for the ring", "—", "at least 0\u202Fteeth"), ring.subList(0, 3));
        assertEquals("−2 MISSES", ring.get(4), "30 less 32 of C-002");
        assertEquals(
                "MISSES", row(rows(tight, "fit-checks", "B-001"), "All checks").get(4));
    }

    @Test
    void theCountAgreesWithTheMatrixAndTheWorstBikeIsNamed() {
        List<List<String>> rows = rows(SampleProject.DEFINITION, "fit-matrix", "");
        FitMatrix fit = new FitMatrix(new Ledger(Catalogue.ofServices(), SampleProject.DEFINITION, 1000));
        int bikes = fit.bikes().size();
        for (int i = 0; i < fit.concepts().size(); i++) {
            int column = i + 1;
            List<String> cells =
                    rows.subList(0, bikes).stream().map(row -> row.get(column)).toList();
            long meets = cells.stream().filter(cell -> cell.startsWith("MEETS")).count();
            long open =
                    cells.stream().filter(cell -> cell.startsWith("MISSING")).count();
            assertEquals(
                    meets + " of " + bikes + (open == 0 ? "" : ", " + open + " not known yet"),
                    row(rows, "Fits").get(column));
            String worst = row(rows, "Worst bike").get(column);
            assertEquals(fit.worstBike(fit.concepts().get(i).id()).orElseThrow().text(), worst);
        }
    }

    @Test
    void gearPathsShowEachGearInUseWithTheAnswersOfTheLedger() {
        Ledger ledger = new Ledger(Catalogue.ofServices(), SampleProject.DEFINITION, 1000);
        Series gaps = (Series) Bench.of(SampleProject.DEFINITION)
                .ledger()
                .ask(groupwright.definition.figure.FigureText.parse("pulley-gaps C-002 B-001")
                        .resolve(ledger.catalogue(), Optional.empty()));
        List<List<String>> rows = rows(SampleProject.DEFINITION, "gear-paths", "lead B-001");
        assertEquals(gaps.values().size() + 1, rows.size());
        Reader reader = new Reader(Locale.ENGLISH);
        for (Series.At gap : gaps.values()) {
            assertEquals(
                    reader.number(gap.value(), 1),
                    row(rows, gap.at().replace("/", " / ")).get(2));
        }
        Series.At least = gaps.values().stream()
                .min(java.util.Comparator.comparingDouble(Series.At::value))
                .orElseThrow();
        assertTrue(row(rows, least.at().replace("/", " / ")).get(6).contains("least gap"), rows.toString());
        assertEquals(reader.number(least.value(), 1), row(rows, "Worst").get(2));
        assertEquals(
                1, rows.stream().filter(row -> row.get(6).contains("least gap")).count());
    }

    @Test
    void gearsThatDoNotCloseSayWhy() {
        // stops so near each other that most gears lie beyond one or the other
        Definition stiff = SampleProject.DEFINITION
                .with(Address.of(C_002, "derailleur", "stopForward_deg"), Optional.of(new Amount(-60, 0)))
                .with(Address.of(C_002, "derailleur", "stopRearward_deg"), Optional.of(new Amount(-90, 0)));
        List<List<String>> rows = rows(stiff, "gear-paths", "C-002 B-001");
        assertTrue(
                row(rows, "32 / 10").get(6).startsWith("does not close, hangs slack by "),
                row(rows, "32 / 10").get(6));
        assertTrue(
                row(rows, "32 / 45").get(6).startsWith("does not close, too short by "),
                row(rows, "32 / 45").get(6));
    }

    @Test
    void aSprungBikeIsLookedAtOverItsTravel() {
        assertEquals(
                "Worst of travel",
                rows(SampleProject.DEFINITION, "gear-paths", "lead B-002").stream()
                        .reduce((one, next) -> next)
                        .orElseThrow()
                        .get(0));
    }

    @Test
    void missingInputNamesTheFieldAndWhoCanTell() {
        Definition unknown = without(B_001, "hangerX_mm");
        assertTrue(
                words(unknown, "gear-paths", "lead B-001")
                        .contains("hanger position (B-001.hangerX_mm): write how far"),
                words(unknown, "gear-paths", "lead B-001"));
        String item = SampleProject.items(about(unknown, B_001).block("fit-missing", "")).stream()
                .filter(text -> text.startsWith("B-001 "))
                .findFirst()
                .orElseThrow();
        assertTrue(item.contains("(hangerX_mm): "), item);
        assertTrue(
                item.endsWith("Needed from the maker of the bike; so far we have: Maker's drawing, 4 March 2026."),
                item);
        assertEquals(
                "MISSING_INPUT: hanger position",
                row(rows(unknown, "fit-checks", "B-001"), "Guide-pulley gap").get(4));
    }

    @Test
    void withoutBikesOrConceptsThatIsSaid() {
        Definition none = SampleProject.DEFINITION;
        for (Bike bike : none.all(RecordKinds.BIKE)) {
            none = none.with(Address.of(bike.id(), "retired"), Optional.of("sold"));
        }
        String noBike = "No bike is on the list yet; add one with its geometry and where it comes from.";
        assertEquals(noBike, words(none, "fit-matrix", ""));
        assertEquals(noBike, words(none, "fit-in-short", "lead"));
        assertEquals("Nothing is missing.", words(none, "fit-missing", ""));
        Definition parked = SampleProject.DEFINITION;
        for (Concept concept : parked.all(RecordKinds.CONCEPT)) {
            parked = parked.with(Address.of(concept.id(), "state"), Optional.of(Concept.State.PARKED));
        }
        assertEquals("None.", words(parked, "fit-matrix", ""));
        assertEquals("None.", words(parked, "fit-checks", "B-001"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', textBlock = """
            fit-matrix   ~ most=2      ~ fit-matrix has no setting most; leave it out
            fit-checks   ~ ''          ~ fit-checks names no bike; write for example fit-checks B-001
            fit-checks   ~ B-099       ~ there is no bike B-099; name one of the project
            fit-checks   ~ C-002       ~ there is no bike C-002; name one of the project
            gear-paths   ~ lead        ~ gear-paths names no bike; write for example gear-paths lead B-001
            gear-paths   ~ R-001 B-001 ~ gear-paths takes a concept and a bike, not R-001; name those
            gear-paths   ~ lead bike   ~ "bike" stands for no record here; put this into a block "each bike"
            """)
    void anAskThatMakesNoSenseIsOneSentence(String block, String arguments, String sentence) {
        assertEquals(
                new Unanswered(sentence),
                SampleProject.content(SampleProject.DEFINITION).block(block, arguments));
    }

    @Test
    void textOfRecordsIsNoMarkup() {
        Definition nasty = with(B_001, "title", "a | b {{ gear-range lead }} <b>*c*</b>")
                .with(Address.of(B_001, "source"), Optional.of("| # x {{ lead.id }}"));
        String body = Bench.of(nasty).body("```fit-matrix\nx\n```\n");
        assertTrue(body.contains("B-001 a | b {{ gear-range lead }}"), body);
        assertEquals(
                6,
                body.lines()
                                .filter(line -> line.startsWith("| "))
                                .findFirst()
                                .orElseThrow()
                                .split("\\|")
                                .length
                        + 1,
                "a bike and three concepts");
    }

    @Test
    void aChoiceOfBikesNarrowsBlocksAndLoops() {
        ProjectContent one = about(SampleProject.DEFINITION, B_004);
        List<List<String>> matrix = SampleProject.rows(one.block("fit-matrix", ""));
        assertEquals(
                List.of("B-004 Steel tourer"),
                matrix.stream().map(row -> row.get(0)).toList());
        assertEquals(1, SampleProject.rows(one.block("bikes", "")).size());
        assertEquals(
                1, ((BlockAnswer.Repeated) one.block("each", "bike")).contents().size());
        assertEquals(
                "C-003",
                ((BlockAnswer.Repeated) one.block("each", "concept")).contents().isEmpty() ? "" : C_003.text(),
                "other kinds stay");
        assertFalse(
                SampleProject.items(one.block("fit-missing", "")).stream().anyMatch(item -> item.startsWith("B-003")));
    }

    @Test
    void onlyBikesOnTheListCanBeChosen() {
        Definition retired = with(B_004, "retired", "sold");
        assertEquals(
                "the bike B-004 has left the list (sold); name one that is on it, or empty its field retired",
                assertThrows(Invalid.class, () -> BikeChoice.of(retired, List.of(B_004)))
                        .getMessage());
        assertEquals(
                "there is no bike B-099; name one of the project",
                assertThrows(Invalid.class, () -> BikeChoice.of(retired, List.of(new RecordId("B-099"))))
                        .getMessage());
        assertEquals(new BikeChoice(List.of(B_001, B_002)), BikeChoice.of(retired, List.of(B_002, B_001, B_002)));
    }

    @Test
    void aNarrowedDocumentSaysSoInTitleAnnexAndFileName() throws IOException {
        ProjectFiles files = ProjectFiles.read(SAMPLE);
        Definition definition = files.definition().orElseThrow();
        ProjectDocuments.Outcome outcome = new ProjectDocuments(
                        new Ledger(Catalogue.ofServices(), definition, 1000), files, SAMPLE, new Reader(Locale.ENGLISH))
                .about(BikeChoice.of(definition, List.of(B_004)))
                .write(List.of("fit"), Optional.empty(), out, Set.of(Format.MARKDOWN));
        assertEquals(List.of(out.resolve("fit-B-004.md")), outcome.written());
        String text = Files.readString(out.resolve("fit-B-004.md")).replace("\\", "");
        assertTrue(text.startsWith("# Fit, B-004\n"), text.substring(0, 40));
        assertTrue(text.contains("- About: B-004 Steel tourer\n"));
        assertTrue(text.contains("The document speaks of B-004 Steel tourer only."));
        assertTrue(text.contains("# 2 B-004 Steel tourer") && !text.contains("Marathon hardtail"));
    }
}
