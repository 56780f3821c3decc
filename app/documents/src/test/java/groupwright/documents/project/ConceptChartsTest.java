package groupwright.documents.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.ledger.Ledger;
import groupwright.definition.project.ProjectFiles;
import groupwright.definition.record.Address;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Definition;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.documents.charts.StepBars;
import groupwright.documents.numbers.Reader;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Charts of the invented sample's concepts; expected numbers follow from its tooth counts by hand. */
class ConceptChartsTest {
    private static final Definition SAMPLE = ProjectFiles.read(Path.of("..", "..", "samples", "tarnbeck"))
            .definition()
            .orElseThrow();
    private static final RecordId LOADED = RecordId.of("G", 3);

    private static ConceptCharts charts(Definition definition) {
        return new ConceptCharts(new Ledger(Catalogue.ofServices(), definition, 500), new Reader(Locale.ENGLISH));
    }

    private static List<Concept> concepts(int... numbers) {
        return SAMPLE.all(RecordKinds.CONCEPT).stream()
                .filter(concept -> java.util.Arrays.stream(numbers)
                        .anyMatch(n -> n == concept.id().number()))
                .toList();
    }

    @Test
    void theLadderShowsTheWheelOfTheChosenRiders() {
        // measured roll-out of 2000 mm: 32 / 45 · 2.000 m = 1.422 m in the lowest gear
        Definition measured = SAMPLE.with(
                Address.of(LOADED, "rollOut_mm"), Optional.of(groupwright.definition.record.Amount.of(2000)));
        var ladder = charts(measured).gearLadder(concepts(2), LOADED).chart().orElseThrow();
        assertEquals("G-003", ladder.riders());
        assertEquals(1.4222, ladder.lanes().get(0).developmentsM().get(0), 0.00005);
    }

    @Test
    void whatTheWheelLacksIsToldForEachConcept() {
        Definition lacking = SAMPLE.with(Address.of(LOADED, "tyre_mm"), Optional.empty());
        ConceptCharts.Ladder ladder = charts(lacking).gearLadder(concepts(2, 3), LOADED);
        assertTrue(ladder.chart().isEmpty());
        assertEquals(2, ladder.missing().size());
        assertEquals(
                "G-003.tyre_mm",
                ladder.missing().get(0).inputs().get(0).address().toString());
    }

    @Test
    void stepsSideBySideReachTheSameTop() {
        // alone, C-001 reaches 18.75 % (32 to 38); C-002 reaches 20 % (10 to 12, 25 to 30)
        ConceptCharts charts = charts(SAMPLE);
        assertEquals(
                18.75,
                charts.stepBars(concepts(1).get(0), Optional.empty())
                        .orElseThrow()
                        .topPct(),
                1e-9);
        var both = charts.stepBarsSideBySide(concepts(1, 2), Optional.empty());
        assertEquals(
                List.of(20.0),
                both.values().stream()
                        .map(StepBars::topPct)
                        .map(Math::rint)
                        .distinct()
                        .toList());
    }

    @Test
    void theLimitIsThatOfTheAgreedRequirement() {
        assertEquals(Optional.of(new StepBars.Limit(14, 18)), charts(SAMPLE).requiredLimit());
    }
}
