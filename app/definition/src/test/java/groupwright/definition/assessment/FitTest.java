package groupwright.definition.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.figure.Missing;
import groupwright.definition.record.Address;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Entry;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A concept on a bike: each check alone, and the worst of them. */
class FitTest {
    private static final String CONCEPT = """
            "rings": [32], "cogs": [10, 14, 20, 28, 38, 50], "cogSpacing_mm": [8], "frontChainLine_mm": 52,
            "chainSupplied_links": 118,
            "derailleur": {"pivotX_mm": -20, "pivotY_mm": -74, "hangerX_mm": -8, "hangerY_mm": -28, "hangerAngle_deg": 0,
            "pathDirection_deg": -66, "pathSlope_deg": 42, "guideOffset_mm": 38, "guideAngle_deg": -93,
            "pulleyDistance_mm": 100, "guide_teeth": 14, "tension_teeth": 14, "stopForward_deg": -5,
            "stopRearward_deg": -170}""";
    private static final String BIKE = """
            "chainstay_mm": 435, "bottomBracketDrop_mm": 40, "cassetteCentre_mm": 48, "driverSmallest_teeth": 10,
            "chainLineLeast_mm": 50, "chainLineMost_mm": 55, "largestRing_teeth": 34, "largestTyre_mm": 60,
            "hangerX_mm": -8, "hangerY_mm": -28, "hangerAngle_deg": 0""";
    private static final String GAP = Scene.criterion("k1", "pulley-gap", "at-least", 6, "\"unit\": \"mm\"");

    private static Scene scene(Entry... more) {
        List<Entry> records = new ArrayList<>(List.of(more));
        records.add(Scene.record("C-001", CONCEPT));
        records.add(Scene.record("G-001", "\"tyre_mm\": 57"));
        records.add(Scene.record("B-001", BIKE));
        return Scene.of(records.toArray(Entry[]::new));
    }

    private static Entry asks(String id, String more) {
        return Scene.requirement(id, "\"criteria\": [" + GAP + "]" + more);
    }

    private static String fits(Scene scene, String bike) {
        var verdict = scene.verdict("fits C-001 " + bike);
        return verdict.words() + " " + verdict.criterion();
    }

    @Test
    void itFitsWhereNothingSpeaksAgainst() {
        Scene scene = scene(asks("R-001", ""));
        assertEquals("meets", scene.verdict("fits C-001 B-001").words());
        assertEquals(
                List.of(
                        "R-001.k1 meets",
                        "links-to-spare meets",
                        "gears-not-closing meets",
                        "chain-line-room meets",
                        "ring-room meets",
                        "driver-room meets",
                        "tyre-room meets"),
                said(scene, "B-001"));
    }

    private static List<String> said(Scene scene, String bike) {
        return new FitMatrix(scene.ledger())
                .checks(Scene.id("C-001"), Scene.id(bike)).stream()
                        .map(check -> check.name() + " " + check.verdict().words())
                        .toList();
    }

    @Test
    void eachRoomCanBeTheReason() {
        Scene scene = scene();
        assertEquals("misses ring-room", fits(scene.with("B-001.largestRing_teeth", 30), "B-001"));
        assertEquals("misses driver-room", fits(scene.with("B-001.driverSmallest_teeth", 11), "B-001"));
        assertEquals("misses chain-line-room", fits(scene.with("B-001.chainLineMost_mm", 51), "B-001"));
        assertEquals("misses tyre-room", fits(scene.with("B-001.largestTyre_mm", 55), "B-001"));
        assertEquals("misses links-to-spare", fits(scene.with("C-001.chainSupplied_links", 110), "B-001"));
        assertEquals("misses gears-not-closing", fits(scene.with("C-001.derailleur.stopRearward_deg", -90), "B-001"));
    }

    @Test
    void theWidestTyreOfAnyRidersCounts() {
        Scene scene = scene(Scene.record("G-002", "\"tyre_mm\": 62"), Scene.record("G-003", "\"tyre_mm\": 50"));
        assertEquals("misses tyre-room", fits(scene, "B-001"));
        assertEquals("G-002 B-001", scene.verdict("fits C-001 B-001").at().toString());
        assertEquals(
                "meets",
                scene.with("G-002.retired", "gone").verdict("fits C-001 B-001").words());
    }

    @Test
    void aCriterionCountsOnTheBikesItsRequirementNames() {
        Scene scene = scene(
                Scene.record("B-002", BIKE.replace("\"hangerY_mm\": -28", "\"hangerY_mm\": -22")),
                asks("R-001", ", \"bikes\": [\"B-001\"]"));
        assertEquals(
                "meets", scene.verdict("fits C-001 B-002").words()); // its gap is below 6 mm, but nobody asks there
        assertTrue(said(scene, "B-002").stream().noneMatch(said -> said.startsWith("R-001")));
        assertEquals("misses R-002.k1", fits(scene.with(asks("R-002", "")), "B-002"));
        assertEquals(
                "B-002",
                new FitMatrix(scene.with(asks("R-002", "")).ledger())
                        .worstBike(Scene.id("C-001"))
                        .orElseThrow()
                        .toString());
    }

    @Test
    void parkedRequirementsDoNotCount() {
        Scene scene = scene(asks("R-001", ", \"state\": \"parked\"")).with("B-001.hangerY_mm", -22);
        assertEquals("meets", scene.verdict("fits C-001 B-001").words());
    }

    @Test
    void aMissingHangerIsMissingInputAndNoMiss() {
        Scene base = scene(asks("R-001", ""));
        Scene scene =
                base.at(base.definition().with(Address.parse("B-001.hangerX_mm").orElseThrow(), Optional.empty()));
        assertEquals("missing input", scene.verdict("fits C-001 B-001").words());
        assertTrue(scene.verdict("fits C-001 B-001").missing().toString().contains("B-001.hangerX_mm"));
        // but a certain miss says more
        assertEquals("misses ring-room", fits(scene.with("B-001.largestRing_teeth", 30), "B-001"));
    }

    @Test
    void aLimitInsideTheBandIsTooCloseToCall() {
        Scene scene = scene().with("C-001.frontChainLine_mm", new Amount(50.5, 0.8));
        assertEquals("meets, too close to call chain-line-room", fits(scene, "B-001"));
    }

    @Test
    void aCheckThatDoesNotExistIsRefused() {
        Missing refused = (Missing) scene().answer("fit-check C-001 B-001 check=roominess");
        assertTrue(refused.inputs().get(0).remedy().contains("ring-room"), refused.toString());
    }
}
