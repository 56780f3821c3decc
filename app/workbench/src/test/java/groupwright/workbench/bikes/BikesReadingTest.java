package groupwright.workbench.bikes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.assessment.FitMatrix;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.figure.Quantity;
import groupwright.definition.ledger.Ledger;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Definition;
import groupwright.definition.record.RecordId;
import groupwright.workbench.Sample;
import groupwright.workbench.bikes.BikesSheet.Cell;
import groupwright.workbench.bikes.BikesSheet.Check;
import groupwright.workbench.bikes.BikesSheet.CheckLine;
import groupwright.workbench.bikes.BikesSheet.Number;
import groupwright.workbench.bikes.BikesSheet.Pair;
import groupwright.workbench.bikes.BikesSheet.Place;
import groupwright.workbench.bikes.BikesSheet.Row;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is shown is what the ledger answers about the sample, in words. */
class BikesReadingTest {
    private static final RecordId FIRST = Sample.id("B-001");

    private final Ledger ledger = Sample.ledger();

    private static BikesSheet of(Ledger ledger) {
        return new BikesReading(ledger, Locale.UK).of(Optional.empty(), Optional.empty());
    }

    private BikesSheet sheet() {
        return of(ledger);
    }

    private static Row row(BikesSheet sheet, String bike) {
        return sheet.rows().stream()
                .filter(row -> row.id().equals(Sample.id(bike)))
                .findFirst()
                .orElseThrow();
    }

    private static Cell cell(BikesSheet sheet, String concept, String bike) {
        return row(sheet, bike).cells().stream()
                .filter(cell -> cell.pair().concept().equals(Sample.id(concept)))
                .findFirst()
                .orElseThrow();
    }

    private double asked(String question) {
        return ((Quantity) ledger.ask(Sample.ask(question))).value();
    }

    private static String shown(Number number) {
        return number.value().orElseThrow().value();
    }

    @Test
    void aRowShowsTheEnvelope() {
        Row row = row(sheet(), "B-001"); // as its record says
        assertEquals(List.of("430\u202fmm", "50\u202fmm", "50–56\u202fmm", "36\u202ft"), row.measures());
        assertTrue(row.lacks().isEmpty(), row.name());
    }

    @Test
    void whatABikeLacksLeadsToItsField() {
        BikesSheet.Lack lack = row(sheet(), "B-003").lacks().orElseThrow();
        assertEquals("hanger position missing", lack.words());
        assertEquals("B-003.hangerAngle_deg", lack.input().address().toString());
    }

    @Test
    void theBarShowsTheHeaviestRequirementMeasuredOnBikes() {
        // R-016, weight 8, asks for the pulley gap; R-008, weight 6, for the chain angle
        assertEquals(Sample.id("R-016"), sheet().counted().orElseThrow().requirement());
        assertEquals(
                "gap at least 6\u202fmm; line in mm",
                sheet().counted().orElseThrow().words());
        Definition lighter = Sample.with("R-016.weight", 2);
        BikesSheet other = of(new Ledger(Catalogue.ofServices(), lighter, 500));
        assertEquals(
                "angle at most 3.5°; gap, line in mm",
                other.counted().orElseThrow().words());
        assertEquals("gap", cell(other, "C-002", "B-001").beside().word());
    }

    @ParameterizedTest
    @CsvSource({"C-002, B-001", "C-003, B-004", "C-002, B-006"})
    void cellsShowWhatTheLedgerAnswers(String concept, String bike) {
        Cell cell = cell(sheet(), concept, bike);
        String on = " " + concept + " " + bike;
        assertEquals(String.format(Locale.UK, "%.2f", asked("chain-angle" + on)), shown(cell.beside()));
        assertEquals(Integer.toString((int) asked("chain-links" + on)), shown(cell.links()));
        assertEquals(
                new FitMatrix(ledger)
                        .fits(cell.pair().concept(), cell.pair().bike())
                        .words(),
                cell.fits().words());
    }

    @Test
    void aChainSuppliedTooShortSaysWhatToSupply() {
        // C-003 is supplied with fewer links than B-003 needs
        Number links = cell(sheet(), "C-003", "B-003").links();
        assertEquals(Check.FAILS, links.check());
        assertEquals("supply", links.word());
        assertEquals(Integer.toString((int) asked("chain-links C-003 B-003")), shown(links));
        assertEquals(Check.HOLDS, cell(sheet(), "C-003", "B-001").links().check());
    }

    @Test
    void theWorstBikeIsTheOneTheCriterionNames() {
        BikesSheet sheet = sheet();
        assertEquals(Place.WORST, cell(sheet, "C-002", "B-003").place());
        assertEquals(
                1,
                sheet.rows().stream()
                        .filter(row -> cell(sheet, "C-002", row.id().text()).place() == Place.WORST)
                        .count());
    }

    @Test
    void whereTheConceptItselfLacksAnInputNoBikeIsTheWorst() {
        BikesSheet sheet = sheet();
        assertTrue(sheet.rows().stream()
                .noneMatch(row -> cell(sheet, "C-001", row.id().text()).place() == Place.WORST));
    }

    @Test
    void theRailCountsBikesTheLeadConceptMissesOrCannotBeJudgedOn() {
        // the lead C-002 lacks the hangers of B-003 and B-006 and meets the rest
        assertEquals(2, BikesReading.open(ledger));
        Definition none = Definition.of(Sample.definition().project());
        assertEquals(0, BikesReading.open(new Ledger(Catalogue.ofServices(), none, 500)));
    }

    @Test
    void anOpenedCellListsAllChecks() {
        Pair pair = new Pair(Sample.id("C-003"), Sample.id("B-004"));
        List<CheckLine> checks = new BikesReading(ledger, Locale.UK)
                .of(Optional.empty(), Optional.of(pair))
                .opened()
                .orElseThrow()
                .checks();
        assertEquals(new FitMatrix(ledger).checks(pair.concept(), pair.bike()).size(), checks.size());
        CheckLine angle = checks.stream()
                .filter(check -> check.requirement().equals(Optional.of(Sample.id("R-008"))))
                .findFirst()
                .orElseThrow();
        assertEquals("Chain angle 3.86°, at most 3.5°: misses", angle.sentence());
    }

    @Test
    void anEditOfTheChainstayChangesRowAndVerdict() {
        Definition longer = Sample.with("B-004.chainstay_mm", Amount.of(520));
        BikesSheet after = of(new Ledger(Catalogue.ofServices(), longer, 500));
        assertEquals("520\u202fmm", row(after, "B-004").measures().get(0));
        // the chain is 29.3 mm off over 434 mm, 3.86°; over 519 mm about 3.2°
        assertEquals(Check.FAILS, cell(sheet(), "C-003", "B-004").beside().check());
        assertEquals(Check.HOLDS, cell(after, "C-003", "B-004").beside().check());
    }

    @Test
    void theDrawingIsOfTheBikeTheLeadConceptIsJudgedOnUntilOneIsChosen() {
        BikesSheet sheet = sheet();
        assertEquals(Sample.id("B-003"), sheet.drawing().orElseThrow().bike());
        BikesSheet.Picture chosen = new BikesReading(ledger, Locale.UK)
                .of(Optional.of(FIRST), Optional.empty())
                .drawing()
                .orElseThrow();
        assertEquals(FIRST, chosen.bike());
        assertEquals(2, chosen.above().orElseThrow().entrants().size());
        assertFalse(chosen.lacks().isEmpty());
    }
}
