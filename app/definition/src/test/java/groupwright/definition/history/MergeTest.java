package groupwright.definition.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import groupwright.definition.assessment.Scene;
import groupwright.definition.ledger.ValueText;
import groupwright.definition.record.Address;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What becomes of two people's changes of one project. */
class MergeTest {
    private static final String K1 = criterion("k1", 7, "");
    private static final String K2 = criterion("k2", 8, "");
    private static final String K3 = criterion("k3", 9, "");
    private static final Scene BASE =
            Scene.of(Scene.record("C-001", """
                    "rings": [30], "cogs": [15, 30], "cogSpacing_mm": [3.9],
                    "derailleur": {"pathSlope_deg": 42, "pulleyDistance_mm": 93}"""), Scene.record("G-001", "\"riderMass_kg\": 80"), criteria(K1, K2, K3));

    private static String criterion(String id, int target, String more) {
        return "{\"id\": \"%s\", \"figure\": \"gears\", \"comparator\": \"at-least\", \"target\": %d%s}"
                .formatted(id, target, more);
    }

    private static Entry criteria(String... criteria) {
        return Scene.requirement("R-001", "\"criteria\": [" + String.join(", ", criteria) + "]");
    }

    private static Merge merge(Scene ours, Scene theirs) {
        return Merge.of(BASE.definition(), ours.definition(), theirs.definition());
    }

    /** One line for each conflict: the address, then base, ours and theirs. */
    private static List<String> conflicts(Merge merge) {
        return merge.conflicts().stream()
                .map(c -> c.address() + ": " + text(c.base()) + ", " + text(c.ours()) + ", " + text(c.theirs()))
                .toList();
    }

    private static String text(Optional<Object> value) {
        return value.map(v -> v instanceof Entry entry ? "the " + entry.id() : ValueText.of(v))
                .orElse("nothing");
    }

    private static String value(Merge merge, String address) {
        return text(merge.merged().value(Address.parse(address).orElseThrow()));
    }

    @Test
    void twoFieldsOfOneObjectAreBothTaken() {
        Merge merge = merge(
                BASE.with("C-001.derailleur.pathSlope_deg", 40), BASE.with("C-001.derailleur.pulleyDistance_mm", 90));
        assertEquals(List.of(), conflicts(merge));
        assertEquals("40", value(merge, "C-001.derailleur.pathSlope_deg"));
        assertEquals("90", value(merge, "C-001.derailleur.pulleyDistance_mm"));
        assertEquals("30", value(merge, "C-001.rings"));
    }

    @Test
    void theSameFieldChangedDifferentlyIsAConflictAndOursIsKept() {
        Merge merge = merge(
                BASE.with("R-001.criteria.k2.target", 18),
                BASE.with("R-001.criteria.k2.target", 19).with("R-001.title", "New"));
        assertEquals(List.of("R-001.criteria.k2.target: 8, 18, 19"), conflicts(merge));
        assertEquals("18", value(merge, "R-001.criteria.k2.target"));
        assertEquals("New", value(merge, "R-001.title")); // beside the conflict
    }

    @Test
    void aListOfNumbersIsOneValueAndSoIsANumberWithItsBand() {
        assertEquals(
                List.of("C-001.cogs: 15, 30, 15, 20, 30, 15, 32"),
                conflicts(
                        merge(BASE.with("C-001.cogs", List.of(15, 20, 30)), BASE.with("C-001.cogs", List.of(15, 32)))));
        assertEquals(
                List.of("G-001.riderMass_kg: 80, 85, 80 ± 2"),
                conflicts(merge(
                        BASE.with("G-001.riderMass_kg", 85), BASE.with("G-001.riderMass_kg", new Amount(80, 2)))));
    }

    @Test
    void bothSayingTheSameIsNoConflict() {
        Scene both = BASE.with("R-001.criteria.k2.target", 18).with(Scene.record("G-002", "\"riderMass_kg\": 70"));
        assertEquals(List.of(), conflicts(merge(both, both.with("R-001.criteria.k2.target", 18))));
    }

    @Test
    void anEmptiedFieldThatTheOtherChangedIsAConflict() {
        Address derailleur = Address.parse("C-001.derailleur").orElseThrow();
        Definition bare = BASE.definition().with(derailleur, Optional.empty());
        Merge merge = merge(BASE.at(bare), BASE.with("C-001.derailleur.pathSlope_deg", 40));
        assertEquals(
                List.of(derailleur),
                merge.conflicts().stream().map(Conflict::address).toList());
        assertEquals(Optional.empty(), merge.merged().value(derailleur));
        assertEquals(List.of(), conflicts(merge(BASE.at(bare), BASE.with("C-001.title", "T"))));
    }

    @Test
    void addedObjectsStandBehindTheOneTheyFollowed() {
        Merge merge = merge(
                BASE.with(criteria(criterion("a", 1, ""), K1, K2, K3)),
                BASE.with(criteria(K1, criterion("b", 2, ""), K2, K3)));
        assertEquals("a, k1, b, k2, k3", value(merge, "R-001.criteria"));
        assertEquals(List.of(), conflicts(merge));
    }

    @Test
    void atOnePlaceTheyStandInTheOrderOfTheirIdsWhoeverAddedThem() {
        Scene one = BASE.with(criteria(K1, criterion("a", 1, ""), K2, K3));
        Scene other = BASE.with(criteria(K1, criterion("b", 2, ""), K2, K3));
        assertEquals("k1, a, b, k2, k3", value(merge(one, other), "R-001.criteria"));
        assertEquals("k1, a, b, k2, k3", value(merge(other, one), "R-001.criteria"));
    }

    @Test
    void objectsOneSideTookOutAreGone() {
        Merge merge = merge(BASE.with(criteria(K1, K3)), BASE.with(criteria(K1, K2, criterion("b", 2, ""), K3)));
        assertEquals("k1, b, k3", value(merge, "R-001.criteria"));
        assertEquals(List.of(), conflicts(merge));
    }

    @Test
    void takingOutWhatTheOtherEditedIsAConflict() {
        Scene without = BASE.with(criteria(K1, K3));
        Scene edited = BASE.with("R-001.criteria.k2.target", 18);
        assertEquals(List.of("R-001.criteria.k2: k2, nothing, k2"), conflicts(merge(without, edited)));
        assertEquals("k1, k3", value(merge(without, edited), "R-001.criteria"));
        assertEquals("k1, k2, k3", value(merge(edited, without), "R-001.criteria"));
    }

    @Test
    void anotherOrderOnOneSideIsTakenAndTheOthersEditsWithIt() {
        Merge merge = merge(BASE.with("R-001.criteria.k2.target", 18), BASE.with(criteria(K3, K2, K1)));
        assertEquals(List.of(), conflicts(merge));
        assertEquals("k3, k2, k1", value(merge, "R-001.criteria"));
        assertEquals("18", value(merge, "R-001.criteria.k2.target"));
    }

    @Test
    void anotherOrderOnBothSidesIsAConflictAtTheList() {
        Merge merge = merge(BASE.with(criteria(K2, K1, K3)), BASE.with(criteria(K3, K1, K2)));
        assertEquals(List.of("R-001.criteria: k1, k2, k3, k2, k1, k3, k3, k1, k2"), conflicts(merge));
        assertEquals("k2, k1, k3", value(merge, "R-001.criteria"));
    }

    @Test
    void recordsComeAndGoAndDeletionAgainstEditIsAConflict() {
        Scene edited = BASE.with("G-001.riderMass_kg", 85);
        assertEquals(List.of("G-001: the G-001, nothing, the G-001"), conflicts(merge(BASE.without("G-001"), edited)));
        assertEquals(List.of("G-001: the G-001, the G-001, nothing"), conflicts(merge(edited, BASE.without("G-001"))));
        Merge merge = merge(BASE.without("G-001"), BASE.with(Scene.record("G-002", "\"riderMass_kg\": 70")));
        assertEquals("nothing", value(merge, "G-001"));
        assertEquals("70", value(merge, "G-002.riderMass_kg"));
    }

    @Test
    void oneNewIdForTwoThingsIsAConflictAtTheRecord() {
        Merge merge = merge(
                BASE.with(Scene.record("G-002", "\"riderMass_kg\": 60")),
                BASE.with(Scene.record("G-002", "\"riderMass_kg\": 70")));
        assertEquals(List.of("G-002: nothing, the G-002, the G-002"), conflicts(merge));
        assertEquals("60", value(merge, "G-002.riderMass_kg"));
    }

    /** Cogs must ascend and every excluded gear must name one: one side took the cog out, the other excluded it. */
    @Test
    void whatIsFineApartAndWrongTogetherIsAConflictAtTheRecord() {
        Scene without = BASE.with("C-001.cogs", List.of(15, 32));
        Entry excluding = Scene.record("C-001", """
                "rings": [30], "cogs": [15, 30], "cogSpacing_mm": [3.9], "excludedGears": [{"id": "e", "ring": 30, "cog": 30}],
                "derailleur": {"pathSlope_deg": 42, "pulleyDistance_mm": 93}""");
        Merge merge = merge(without, BASE.with(excluding));
        assertEquals(List.of("C-001: the C-001, the C-001, the C-001"), conflicts(merge));
        assertSame(
                without.definition().get(Scene.id("C-001")).orElseThrow(),
                merge.merged().get(Scene.id("C-001")).orElseThrow());
    }

    /** Both together are fine on each side, but neither can be taken without the other: then the record is decided whole. */
    @Test
    void conflictsThatARuleTiesTogetherAreOneConflict() {
        Scene between = BASE.with(criteria(K1.replace("at-least", "between").replace("7", "7, \"upper\": 9"), K2, K3));
        Scene other = BASE.with(criteria(K1.replace("at-least", "at-most"), K2, K3));
        assertEquals(List.of("R-001: the R-001, the R-001, the R-001"), conflicts(merge(between, other)));
    }

    private static Definition taking(Scene into, Scene from, String address) {
        return Merge.taking(
                into.definition(), from.definition(), Address.parse(address).orElseThrow());
    }

    @Test
    void takingTakesOneAddressAndNothingElse() {
        Scene from = BASE.with("C-001.derailleur.pathSlope_deg", 40).with("C-001.title", "T");
        assertEquals(
                List.of(Address.parse("C-001.derailleur.pathSlope_deg").orElseThrow()),
                RecordDiff.between(BASE.definition(), taking(BASE, from, "C-001.derailleur.pathSlope_deg")).stream()
                        .map(FieldChange::address)
                        .toList());
    }

    @Test
    void takingBringsObjectsAndRecordsAndTheirAbsence() {
        Scene fewer = BASE.with(criteria(K3, K1)).without("G-001");
        assertEquals("k1, k3", text(taking(BASE, fewer, "R-001.criteria.k2").value(at("R-001.criteria"))));
        assertEquals("k3, k1, k2", text(taking(fewer, BASE, "R-001.criteria.k2").value(at("R-001.criteria"))));
        assertEquals(
                "k3, k1, k2",
                text(taking(BASE, BASE.with(criteria(K3, K1, K2)), "R-001.criteria")
                        .value(at("R-001.criteria"))));
        assertEquals(Optional.empty(), taking(BASE, fewer, "G-001").value(at("G-001")));
        assertEquals("80", text(taking(fewer, BASE, "G-001").value(at("G-001.riderMass_kg"))));
    }

    private static Address at(String address) {
        return Address.parse(address).orElseThrow();
    }
}
