package groupwright.definition.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.figure.MissingInput;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Series;
import groupwright.definition.record.Entry;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Chain length and the chain's way through the derailleur, asked in the figure grammar. */
class ChainPathFiguresTest {
    /**
     * An invented mechanism, computed by three independent programs that agree: ring 32, cogs 10 to 50 at 3.65 mm, pulleys of
     * 14, cage pivot (-20, -74) moving 0.9 mm per mm along (0.45, -1), guide 38 mm at the cage angle - 93°, pulleys 100 mm
     * apart.
     */
    private static final String MECHANISM = """
            "pivotX_mm": -20, "pivotY_mm": -74, "hangerX_mm": -8, "hangerY_mm": -28, "hangerAngle_deg": 0,
            "pathDirection_deg": -65.77225468, "pathSlope_deg": 41.98721249,
            "guideOffset_mm": 38, "guideAngle_deg": -93, "pulleyDistance_mm": 100,
            "guide_teeth": 14, "tension_teeth": 14, "stopForward_deg": -5, "stopRearward_deg": -170""";

    private static final String BIKE = """
            "chainstay_mm": 435, "bottomBracketDrop_mm": 40,
            "hangerX_mm": -8, "hangerY_mm": -28, "hangerAngle_deg": 0""";

    private static Entry concept(String derailleur, String more) {
        return Asking.record("C-001", """
                "rings": [32], "cogs": [10, 12, 14, 16, 18, 21, 24, 28, 32, 38, 44, 50], "cogSpacing_mm": [3.65],
                "derailleur": {%s}%s""".formatted(derailleur, more));
    }

    private static Asking of(String derailleur, String bike) {
        return Asking.about(concept(derailleur, ""), Asking.record("B-001", bike));
    }

    private static double at(Asking asking, String text, String position) {
        return ((Series) asking.answer(text))
                .values().stream()
                        .filter(at -> at.at().equals(position))
                        .findFirst()
                        .orElseThrow()
                        .value();
    }

    @ParameterizedTest(name = "{0} links, {1} teeth")
    @CsvSource({
        "116, 10, -137.585, 13.685, 96.2, 176.8",
        "116, 24, -94.614, 22.896, 113.9, 164.3",
        "116, 50, -29.112, 11.766, 156.2, 153.4",
        "114, 10, -117.801, 26.715, ,",
        "114, 24, -81.323, 30.691, ,",
        "114, 50, -15.775, 14.319, ,",
    })
    void threeIndependentProgramsAgree(
            int links, int cog, double cageDeg, double gapMm, Double wrapCogDeg, Double wrapRingDeg) {
        Asking asking = of(MECHANISM, BIKE);
        String gear = "32/" + cog;
        assertEquals(cageDeg, at(asking, "cage-angles C-001 B-001 links=" + links, gear), 0.002);
        assertEquals(gapMm, at(asking, "pulley-gaps C-001 B-001 between=pitch-circles links=" + links, gear), 0.002);
        if (wrapCogDeg != null) {
            assertEquals(
                    cog * wrapCogDeg / 360, at(asking, "contact-teeth-each C-001 B-001 links=" + links, gear), 0.01);
            assertEquals(
                    32 * wrapRingDeg / 360,
                    at(asking, "contact-teeth-each C-001 B-001 on=ring links=" + links, gear),
                    0.01);
        }
    }

    @Test
    void aMechanismHangsOnEachBikeAsOnItsOwnHanger() {
        // hanger, pivot and axle of the mechanism's own bike moved to another place: the guide pulley moves along
        String moved = MECHANISM
                .replace("\"hangerX_mm\": -8", "\"hangerX_mm\": -5")
                .replace("\"hangerY_mm\": -28", "\"hangerY_mm\": -30")
                .replace("\"pivotX_mm\": -20", "\"pivotX_mm\": -17")
                .replace("\"pivotY_mm\": -74", "\"pivotY_mm\": -76");
        assertEquals(
                of(MECHANISM, BIKE).value("pulley-gap C-001 B-001 links=116"),
                of(moved, BIKE).value("pulley-gap C-001 B-001 links=116"),
                1e-9);
        double lower = of(MECHANISM, BIKE.replace("-28", "-30")).value("pulley-gap C-001 B-001 links=116");
        assertTrue(lower > of(MECHANISM, BIKE).value("pulley-gap C-001 B-001 links=116"));
    }

    @Test
    void theLeastGapIsNamedWithItsGear() {
        Asking asking = of(MECHANISM, BIKE);
        Quantity gap = asking.quantity("pulley-gap C-001 B-001 between=pitch-circles links=116");
        assertEquals(11.766, gap.value(), 0.002);
        assertEquals("32/50", gap.remark());
        assertEquals(137.585 - 29.112, asking.value("cage-angle C-001 B-001 of=spread links=116"), 0.004);
    }

    @Test
    void theLengthIsThatOfTheHandbook() {
        // Bhandari, Design of Machine Elements, Example 14.3: p 12.7, a 500, 21 and 63 teeth: 121.875097 by the series,
        // which
        // stays below the exact length by less than 0.005 pitch on bicycles; here with wheels three times as far apart
        // in size
        Asking asking = Asking.about(
                Asking.record("C-001", "\"rings\": [63], \"cogs\": [21], \"chainReserve_links\": 0"),
                Asking.record("B-001", "\"chainstay_mm\": 500"));
        assertEquals(121.875097, asking.value("chain-length C-001 B-001"), 0.02);
        assertEquals(122, asking.value("chain-links C-001 B-001"));
    }

    @Test
    void theLongestPointOfTheTravelDecidesTheLinks() {
        String grows = BIKE + ", \"chainGrowth_mm\": 13";
        // 13 mm more are 2 · 13 / 12.7 = 2.05 links more
        double more = of(MECHANISM, grows).value("chain-length C-001 B-001")
                - of(MECHANISM, BIKE).value("chain-length C-001 B-001");
        assertEquals(2 * 13 / 12.7, more, 0.01);
        assertTrue(of(MECHANISM, grows).value("cage-swing C-001 B-001") > 5);
        assertEquals(0, of(MECHANISM, BIKE).value("cage-swing C-001 B-001"));
        assertEquals(
                "32/50", of(MECHANISM, grows).quantity("pulley-gap C-001 B-001").remark());
    }

    @Test
    void theChainAsSuppliedMayBeTooShort() {
        Asking asking =
                Asking.about(concept(MECHANISM, ", \"chainSupplied_links\": 110"), Asking.record("B-001", BIKE));
        assertEquals(110 - asking.value("chain-links C-001 B-001"), asking.value("links-to-spare C-001 B-001"));
    }

    @Test
    void aChainTooShortToCloseSaysHowMuchLacks() {
        Asking asking = of(MECHANISM, BIKE);
        Quantity open = asking.quantity("gears-not-closing C-001 B-001 links=108");
        assertTrue(open.value() > 0, open.toString());
        assertTrue(open.remark().contains("lacks"), open.remark());
        Quantity over = asking.quantity("chain-left-over C-001 B-001 gear=largest links=108");
        assertTrue(over.value() < 0 && over.remark().equals("32/50 too tight"), over.toString());
        assertEquals(
                "32/10 closes",
                asking.quantity("chain-left-over C-001 B-001 links=112").remark());
    }

    @Test
    void aChainTooLongHangs() {
        String stopped = MECHANISM.replace("-170", "-130");
        Quantity over = of(stopped, BIKE).quantity("chain-left-over C-001 B-001 links=118");
        assertTrue(over.value() > 0 && over.remark().equals("32/10 hangs slack"), over.toString());
    }

    @Test
    void aChainMuchTooLongLetsThePulleyDownOnTheCog() {
        List<MissingInput> missing = of(MECHANISM, BIKE).missing("chain-left-over C-001 B-001 links=130");
        assertTrue(missing.get(0).remedy().startsWith("32/10 has the guide pulley on the cog"), missing.toString());
    }

    @Test
    void pulleysInOnePlaceAreRefusedWithAReason() {
        List<MissingInput> missing = of(
                        MECHANISM.replace("\"pulleyDistance_mm\": 100", "\"pulleyDistance_mm\": 20"), BIKE)
                .missing("pulley-gap C-001 B-001");
        assertEquals("C-001.derailleur", missing.get(0).address().toString());
        assertTrue(missing.get(0).remedy().startsWith("pulleys of 14 and 14 teeth overlap"), missing.toString());
    }

    @Test
    void aPathThatDrivesThePulleyIntoTheCogLeavesNoGap() {
        Asking asking = of(MECHANISM.replace("\"pathSlope_deg\": 41.98721249", "\"pathSlope_deg\": 0"), BIKE);
        Quantity gap = asking.quantity("pulley-gap C-001 B-001");
        assertTrue(gap.value() <= 0, gap.toString());
        assertTrue(gap.remark().contains("guide pulley on the cog"), gap.remark());
        assertTrue(asking.value("gears-not-closing C-001 B-001") > 0);
    }

    @Test
    void whatIsMissingIsNamedAtOnce() {
        Asking asking =
                of(MECHANISM.replace("\"pivotY_mm\": -74, ", ""), "\"bottomBracketDrop_mm\": 40, \"hangerX_mm\": -8");
        assertEquals(
                List.of(
                        "B-001.chainstay_mm",
                        "B-001.hangerAngle_deg",
                        "B-001.hangerY_mm",
                        "C-001.derailleur.pivotY_mm"),
                asking.missing("pulley-gap C-001 B-001").stream()
                        .map(input -> input.address().toString())
                        .toList());
    }

    @Test
    void aCogThatTouchesTheRingIsSaidSo() {
        Asking asking = Asking.about(
                Asking.record(
                        "C-001",
                        "\"rings\": [80], \"cogs\": [12, 80], \"cogSpacing_mm\": [4], \"derailleur\": {" + MECHANISM
                                + "}"),
                Asking.record("B-001", BIKE.replace("435", "310")));
        assertEquals(
                "B-001.chainstay_mm",
                asking.missing("chain-links C-001 B-001").get(0).address().toString());
        assertTrue(asking.missing("pulley-gap C-001 B-001").get(0).remedy().contains("touch"));
    }
}
