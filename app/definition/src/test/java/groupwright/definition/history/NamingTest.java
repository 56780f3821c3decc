package groupwright.definition.history;

import static org.junit.jupiter.api.Assertions.assertEquals;

import groupwright.definition.assessment.Scene;
import groupwright.definition.record.Address;
import groupwright.definition.record.Amount;
import groupwright.definition.record.RecordId;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What edits are called. */
class NamingTest {
    private static final Scene START = Scene.of(
            Scene.record("C-001", "\"rings\": [30], \"cogs\": [15, 30], \"derailleur\": {\"pathSlope_deg\": 42}"),
            Scene.record("G-001", "\"riderMass_kg\": 80"),
            Scene.record("P-001", "\"title\": \"Chain\", \"unitCost_minor\": 1250"),
            Scene.requirement("R-005", "\"criteria\": [" + criterion("k1", "18") + ", " + criterion("k2", "4") + "]"),
            Scene.record("project", "\"name\": \"Test\", \"leadConcept\": \"C-003\""));

    private static String criterion(String id, String target) {
        return ("{\"id\": \"%s\", \"figure\": \"largest-step\", \"comparator\": \"at-most\", \"target\": %s,"
                        + " \"unit\": \"%%\"}")
                .formatted(id, target);
    }

    private static void assertName(String expected, Scene after) {
        assertEquals(
                expected.replace('_', '\u202f'),
                Naming.between(START.definition(), after.definition()).text());
    }

    @Test
    void aShortValueIsSaidBeforeAndAfter() {
        assertName("R-005 target 18 → 20_%", START.with("R-005.criteria.k1.target", 20));
        assertName("G-001 rider mass 80 → 80 ± 2_kg", START.with("G-001.riderMass_kg", new Amount(80, 2)));
        assertName("C-001 path slope 42 → 40°", START.with("C-001.derailleur.pathSlope_deg", 40));
        assertName("C-001 ring spacing none → 8_mm", START.with("C-001.ringSpacing_mm", 8));
        assertName("R-005 title R-005 → Steps", START.with("R-005.title", "Steps"));
        assertName("project date none → 2026-03-09", START.with("project.date", LocalDate.of(2026, 3, 9)));
        assertName("lead concept C-003 → C-001", START.with("project.leadConcept", new RecordId("C-001")));
    }

    @Test
    void moneyIsSaidInWholeUnitsOfTheProjectsCurrency() {
        assertName("P-001 unit cost 12.5 → 13.05_EUR", START.with("P-001.unitCost_minor", 1305));
    }

    @Test
    void aLongValueIsOnlyNamed() {
        assertName("C-001 cogs", START.with("C-001.cogs", List.of(15, 32)));
        assertName("R-005 statement", START.with("R-005.statement", "The chain shall stay on. ".repeat(3)));
    }

    @Test
    void recordsAndObjectsComeAndGo() {
        assertName("add G-002", START.with(Scene.record("G-002", "\"riderMass_kg\": 70")));
        assertName("remove G-001", START.without("G-001"));
        assertName("retire G-001", START.with("G-001.retired", "merged with G-002"));
        assertEquals(
                "use G-001 again",
                Naming.between(START.with("G-001.retired", "gone").definition(), START.definition())
                        .text());
        assertName(
                "R-005 criteria: remove k2",
                START.with(Scene.requirement("R-005", "\"criteria\": [" + criterion("k1", "18") + "]")));
        assertName(
                "R-005 criteria: other order",
                START.with(Scene.requirement(
                        "R-005", "\"criteria\": [" + criterion("k2", "4") + ", " + criterion("k1", "18") + "]")));
    }

    @Test
    void ofSeveralTheWeightiestIsNamedAndTheOthersCounted() {
        Scene two = START.with("C-001.cogs", List.of(15, 32)).with("C-001.title", "T");
        assertName("C-001 title and 1 more", two);
        assertName("retire G-001 and 2 more", two.with("G-001.retired", "gone"));
        assertName("remove P-001 and 2 more", two.without("P-001"));
    }

    @Test
    void nothingIsNothingAndALabelStandsForAll() {
        assertName("nothing", START);
        assertEquals(
                "approve K-001",
                Naming.between(
                                START.definition(),
                                START.with("G-001.riderMass_kg", 81).definition())
                        .called("approve K-001")
                        .text());
    }

    @Test
    void thePartsCanBeShownInTheReadersOwnWay() {
        EditName name = Naming.between(
                START.definition(), START.with("R-005.criteria.k1.target", 18.5).definition());
        assertEquals(
                "R-005 target 18 → 18,5\u202f%",
                name.text(v -> v instanceof Amount a && a.value() == 18.5 ? "18,5" : "18"));
        assertEquals(Optional.of(Address.parse("R-005.criteria.k1.target").orElseThrow()), name.address());
        assertEquals("%", name.unit());
    }
}
