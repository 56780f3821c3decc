package groupwright.definition.history;

import static org.junit.jupiter.api.Assertions.assertEquals;

import groupwright.definition.assessment.Scene;
import groupwright.definition.ledger.ValueText;
import groupwright.definition.record.Address;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import groupwright.definition.record.Settings;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Which fields differ between two states of a project. */
class RecordDiffTest {
    private static final Entry REQUIREMENT = Scene.requirement("R-001", """
            "rationale": "because", "criteria": [
                {"id": "k1", "figure": "gears", "parameters": {}, "comparator": "at-least", "target": 7},
                {"id": "k2", "figure": "gear-range", "comparator": "at-least", "target": 500, "stretch": 520}],
            "results": [
                {"id": "t1", "concept": "C-001", "quantity": "force", "value": 20},
                {"id": "t2", "concept": "C-001", "quantity": "force", "value": 21}]""");
    private static final Scene BEFORE =
            Scene.of(Scene.record("C-001", """
                    "rings": [30], "cogs": [15, 30], "cogSpacing_mm": [3.9],
                    "derailleur": {"pathSlope_deg": 42, "pulleyDistance_mm": 93}"""), Scene.record("G-001", "\"riderMass_kg\": 80"), REQUIREMENT);

    /** One line for each change, for example {@code C-001.rings: 30 -> 32}; nothing stands for nothing. */
    private static List<String> changes(Scene before, Scene after) {
        return RecordDiff.between(before.definition(), after.definition()).stream()
                .map(change -> change.address() + ": " + text(change.before()) + " -> " + text(change.after()))
                .toList();
    }

    private static String text(Optional<Object> value) {
        return value.map(v -> v instanceof Entry entry ? "the " + entry.id() : ValueText.of(v))
                .orElse("nothing");
    }

    private static void assertChanges(Scene after, String... expected) {
        assertEquals(List.of(expected), changes(BEFORE, after));
    }

    @Test
    void nothingChangedIsNoChange() {
        assertChanges(BEFORE);
        assertChanges(BEFORE.with("C-001.rings", List.of(32)).with("C-001.rings", List.of(30)));
    }

    @Test
    void aListOfNumbersIsOneValue() {
        assertChanges(BEFORE.with("C-001.cogs", List.of(15, 20, 30)), "C-001.cogs: 15, 30 -> 15, 20, 30");
    }

    @Test
    void aBandIsPartOfItsNumber() {
        assertChanges(BEFORE.with("G-001.riderMass_kg", new Amount(80, 2)), "G-001.riderMass_kg: 80 -> 80 ± 2");
    }

    @Test
    void parametersAreOneValue() {
        assertChanges(
                BEFORE.with("R-001.criteria.k1.parameters", Settings.NONE.with("from-teeth", "14")),
                "R-001.criteria.k1.parameters:  -> from-teeth=14");
    }

    @Test
    void fieldsInsideObjectsAreNamedByTheObjectsId() {
        assertChanges(
                BEFORE.with("R-001.criteria.k2.target", 480).with("C-001.derailleur.pathSlope_deg", 40),
                "R-001.criteria.k2.target: 500 -> 480",
                "C-001.derailleur.pathSlope_deg: 42 -> 40");
    }

    @Test
    void optionalFieldsAppearAndVanish() {
        Definition without = BEFORE.definition()
                .with(Address.parse("R-001.criteria.k2.stretch").orElseThrow(), Optional.empty());
        assertChanges(BEFORE.at(without), "R-001.criteria.k2.stretch: 520 -> nothing");
        assertEquals(List.of("R-001.criteria.k2.stretch: nothing -> 520"), changes(BEFORE.at(without), BEFORE));
        Definition bare =
                BEFORE.definition().with(Address.parse("C-001.derailleur").orElseThrow(), Optional.empty());
        List<FieldChange> gone = RecordDiff.between(BEFORE.definition(), bare);
        assertEquals(
                List.of("C-001.derailleur"),
                gone.stream().map(c -> c.address().toString()).toList());
        assertEquals(Optional.empty(), gone.get(0).after());
    }

    @Test
    void objectsInAListComeAndGoByTheirIds() {
        Scene fewer = BEFORE.with(Scene.requirement("R-001", """
                "rationale": "because", "criteria": [
                    {"id": "k2", "figure": "gear-range", "comparator": "at-least", "target": 500, "stretch": 520},
                    {"id": "k3", "figure": "gears", "comparator": "at-most", "target": 9}], "results": [
                {"id": "t1", "concept": "C-001", "quantity": "force", "value": 20},
                {"id": "t2", "concept": "C-001", "quantity": "force", "value": 21}]"""));
        assertChanges(fewer, "R-001.criteria.k1: k1 -> nothing", "R-001.criteria.k3: nothing -> k3");
        assertChanges(
                BEFORE.with("R-001.results", List.of()),
                "R-001.results.t1: t1 -> nothing",
                "R-001.results.t2: t2 -> nothing");
    }

    /** Of equally old results the last in the list counts, so their order is content. */
    @Test
    void anotherOrderOfObjectsIsAChange() {
        Scene turned = BEFORE.with("R-001.results", List.of(value("R-001.results.t2"), value("R-001.results.t1")));
        assertChanges(turned, "R-001.results: t1, t2 -> t2, t1");
        String ask = "test-result C-001 R-001 quantity=force";
        Ripple ripple =
                Ripple.between(BEFORE.ledger(), turned.ledger(), List.of(BEFORE.ask(ask)), List.of(BEFORE.ask(ask)));
        assertEquals(1, ripple.effects().size());
    }

    private static Object value(String address) {
        return BEFORE.definition().value(Address.parse(address).orElseThrow()).orElseThrow();
    }

    @Test
    void aRecordMoreOrLessIsOneChangeAtItsOwnAddress() {
        assertChanges(BEFORE.without("R-001"), "R-001: the R-001 -> nothing");
        assertChanges(
                BEFORE.with(Scene.record("C-002", "\"rings\": [40], \"cogs\": [20]")), "C-002: nothing -> the C-002");
    }

    @Test
    void changesStandInTheOrderOfKindsIdsAndFields() {
        Scene after = BEFORE.with("R-001.title", "Title")
                .with("R-001.rationale", "or not")
                .with("G-001.riderMass_kg", 90)
                .with(Scene.record("project", "\"name\": \"New\", \"leadConcept\": \"C-001\""));
        assertChanges(
                after,
                "project.name: Test -> New",
                "G-001.riderMass_kg: 80 -> 90",
                "R-001.title: R-001 -> Title",
                "R-001.rationale: because -> or not");
    }
}
