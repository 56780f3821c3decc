package groupwright.documents.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.documents.charts.ConceptSign.Standing;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class GearLadderTest {
    private static final double WIDTH = 720;
    private static final Palette PAPER = Palette.PAPER;
    private static final GearLadder LADDER = SampleCharts.ladder();
    private static final GearLadderLayout LAYOUT = GearLadderLayout.of(LADDER, Painted.LETTERING, WIDTH);
    private static final Painted PAINTED = new Painted(LADDER, WIDTH);

    private static double x(int lane, int gear) {
        return LAYOUT.scale().position(LADDER.lanes().get(lane).developmentsM().get(gear));
    }

    @Test
    void equalStepsAreEqualLengthsInAllLanes() {
        // 32/40 to 32/35 and 24/32 to 24/28 are both a step of 8/7
        double inLead = x(2, 2) - x(2, 1);
        double inOther = x(1, 2) - x(1, 1);
        assertEquals(inLead, inOther, 1e-9);
        // from 32/45 to 32/10 is ln 4.5, the whole axis ln(7.86 / 1.46) with 5 % beyond each end
        double whole = LAYOUT.scale().right() - LAYOUT.scale().left();
        double ends = Math.log((34.0 / 10) / (24.0 / 38) * 1.05 * 1.05);
        assertEquals(whole * Math.log(4.5) / ends, x(2, 10) - x(2, 0), 1e-9);
    }

    @Test
    void theLeadIsFilledAndOthersAreHollow() {
        for (int lane = 0; lane < 4; lane++) {
            boolean lead = lane == 2;
            Color hue = PAPER.concepts().get(Math.max(0, lane - 1));
            double y = LAYOUT.laneY(lane);
            for (int gear = 0; gear < LADDER.lanes().get(lane).developmentsM().size(); gear++) {
                PAINTED.assertColour(lead ? hue : PAPER.surface(), x(lane, gear), y - 0.5, "middle of a sign");
                assertTrue(PAINTED.has(hue, x(lane, gear) - 5.5, y - 3, x(lane, gear) - 1, y + 3.5), "its outline");
            }
        }
    }

    @Test
    void shapesDifferByPlaceAndBeginAgainAtTheFifth() {
        List<Double> areas = new ArrayList<>();
        for (int place = 1; place <= 5; place++) {
            Painted one = new Painted(lone(place), WIDTH);
            Color hue = PAPER.concepts().get((place - 1) % 4);
            // the sign at the name: upper left corner filled only for the square, lower left for square and triangle
            double y =
                    GearLadderLayout.of(lone(place), Painted.LETTERING, WIDTH).laneY(0);
            areas.add(one.count(hue, 0, y - 6, 12, y + 6));
            assertEquals(place == 2, one.has(hue, 2, y - 4, 2.3, y - 3.7), "upper left corner of place " + place);
            assertEquals(
                    place == 2 || place == 3, one.has(hue, 2, y + 3.7, 2.3, y + 4), "lower left corner of " + place);
        }
        assertEquals(areas.get(0), areas.get(4), "place 5 is a disc in the first hue again");
        assertNotEquals(areas.get(0), areas.get(3));
    }

    private static GearLadder lone(int place) {
        GearLadder.Lane lane =
                new GearLadder.Lane(new ConceptSign(place, Standing.LEAD), "C-00" + place, 32, List.of(2.0));
        return new GearLadder("G-001", List.of(lane), List.of(), Locale.ENGLISH);
    }

    @Test
    void needsStandThroughAllLanes() {
        for (GearLadderLayout.Upright upright : LAYOUT.uprights()) {
            double x = Pen.sharp(LAYOUT.scale().position(upright.need().developmentM()));
            PAINTED.assertColour(PAPER.ink(), x, LAYOUT.uprightTop(upright) + 2, "top of the upright");
            PAINTED.assertColour(PAPER.ink(), x, LAYOUT.bottom() - 2, "foot of the upright");
        }
    }

    @Test
    void sentencesNeitherOverlapNorAreCrossed() {
        List<GearLadder.Need> close = List.of(
                new GearLadder.Need(1.58, "first sentence of some length"),
                new GearLadder.Need(1.67, "second sentence of some length"),
                new GearLadder.Need(1.74, "third sentence of some length"));
        GearLadder ladder = new GearLadder("G-003", LADDER.lanes(), close, Locale.ENGLISH);
        GearLadderLayout layout = GearLadderLayout.of(ladder, Painted.LETTERING, WIDTH);
        assertEquals(3, layout.floors());
        for (GearLadderLayout.Upright text : layout.uprights()) {
            for (GearLadderLayout.Upright line : layout.uprights()) {
                boolean behind = line.x() > text.left() && line.x() < text.right();
                assertTrue(!behind || line.floor() < text.floor(), line + " crosses " + text);
            }
        }
    }

    @Test
    void theSentenceOfAHighNeedStandsLeftOfItsLine() {
        GearLadderLayout.Upright high = LAYOUT.uprights().get(0);
        assertEquals(7.54, high.need().developmentM());
        assertTrue(high.right() < high.x());
        assertTrue(LAYOUT.uprights().get(1).left() > LAYOUT.uprights().get(1).x());
    }

    @Test
    void aNarrowPlaceGetsTheLeastReadableWidth() {
        assertEquals(360, LADDER.size(Painted.LETTERING, 100).width());
        assertEquals(WIDTH, LADDER.size(Painted.LETTERING, WIDTH).width());
    }

    @Test
    void itSaysItselfInOneSentence() {
        assertEquals(
                "Metres per crank turn on the wheel of G-003: C-001 with the ring of 36 teeth from 2.60 to 7.57\u202Fm; "
                        + "C-001 with the ring of 24 teeth from 1.46 to 5.04\u202Fm; "
                        + "C-002 with the ring of 32 teeth from 1.64 to 7.40\u202Fm; "
                        + "C-003 with the ring of 34 teeth from 1.57 to 7.86\u202Fm; "
                        + "R-003 needs 1.58 m or less; R-004 needs 7.54 m or more.",
                LADDER.description());
    }

    @Test
    void theTableHoldsEveryGearOnce() {
        ChartTable table = LADDER.table();
        assertEquals(List.of("Concept", "Ring", "Gear 1, m", "2"), table.heads().subList(0, 4));
        assertEquals(14, table.heads().size(), "twelve gears at most");
        // 2.312 · 32 / 45 = 1.644, 2.312 · 32 / 40 = 1.850 (by hand)
        assertEquals(List.of("C-002", "32", "1.64", "1.85"), table.rows().get(2).subList(0, 4));
        assertEquals("", table.rows().get(2).get(13), "eleven cogs leave the twelfth cell empty");
    }

    @Test
    void theFirstTickSaysTheUnit() {
        assertEquals(List.of("2\u202Fm", "3", "2.5"), new GearLadderWords(LADDER).ticks(List.of(2.0, 3.0, 2.5)));
    }

    @Test
    void impossibleValuesAreRefused() {
        assertThrows(
                IllegalArgumentException.class, () -> new GearLadder.Lane(SampleCharts.LEAD, "C-002", 32, List.of()));
        assertThrows(
                IllegalArgumentException.class,
                () -> new GearLadder.Lane(SampleCharts.LEAD, "C-002", 32, List.of(Double.NaN)));
        assertThrows(IllegalArgumentException.class, () -> new GearLadder.Need(0, "none"));
        assertThrows(
                IllegalArgumentException.class, () -> new GearLadder("G-001", List.of(), List.of(), Locale.ENGLISH));
    }
}
