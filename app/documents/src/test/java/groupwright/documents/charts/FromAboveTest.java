package groupwright.documents.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.documents.charts.ConceptSign.Standing;
import groupwright.documents.numbers.Reader;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** Two invented concepts on an invented bike; places are counted by hand from its lines. */
class FromAboveTest {
    private static final double WIDTH = 900;
    private static final FromAbove.Wheel RING = new FromAbove.Wheel(32, 50);
    private static final FromAbove.Wheel LARGEST = new FromAbove.Wheel(45, 30);
    private static final FromAbove ABOVE = new FromAbove(
            "B-004",
            435,
            46,
            List.of(
                    entrant(3, Standing.OTHER, new FromAbove.Wheel(34, 55), new FromAbove.Wheel(50, 28), "misses"),
                    entrant(2, Standing.LEAD, RING, LARGEST, "meets")),
            List.of("C-001"),
            new Reader(Locale.ENGLISH));
    private static final FromAboveLayout LAYOUT = FromAboveLayout.of(ABOVE, Painted.LETTERING, WIDTH);
    private static final Painted PAINTED = new Painted(ABOVE, WIDTH);

    private static FromAbove.Entrant entrant(
            int place, Standing standing, FromAbove.Wheel ring, FromAbove.Wheel cog, String verdict) {
        return new FromAbove.Entrant(
                new ConceptSign(place, standing),
                "C-00" + place,
                List.of(ring),
                List.of(new FromAbove.Wheel(10, 64), cog),
                ring,
                cog,
                place + ".00°",
                verdict);
    }

    @Test
    void acrossIsDrawnFourTimesLarger() {
        assertEquals(435 * LAYOUT.perMm(), LAYOUT.axleX() - LAYOUT.bracketX(), 1e-9);
        assertEquals(4 * 20 * LAYOUT.perMm(), LAYOUT.y(30) - LAYOUT.y(50), 1e-9);
        assertTrue(ABOVE.caption().contains("across drawn 4 × larger"), ABOVE.caption());
    }

    @Test
    void aWheelIsAsWideAsItsPitchCircle() {
        double y = LAYOUT.y(RING.lineMm());
        double half = RING.radiusMm() * LAYOUT.perMm();
        // 32 teeth of 12.7 mm: 12.7 / (2 sin(180° / 32)) = 64.784 mm, by hand
        assertEquals(64.784, RING.radiusMm(), 0.001);
        PAINTED.assertColour(Palette.PAPER.concept(2), LAYOUT.bracketX() - half + 2, y, "left end of the ring");
        PAINTED.assertColour(Palette.PAPER.surface(), LAYOUT.bracketX() + half + 4, y - 1, "beyond its right end");
    }

    @Test
    void theChainRunsFromTheRingToTheLargestCog() {
        double x = LAYOUT.bracketX() + 0.5 * (LAYOUT.axleX() - LAYOUT.bracketX());
        double y = LAYOUT.y((RING.lineMm() + LARGEST.lineMm()) / 2);
        assertTrue(PAINTED.has(Palette.PAPER.concept(2), x - 10, y - 3, x + 10, y + 3), "half way");
        assertFalse(PAINTED.has(Palette.PAPER.concept(2), x - 10, y - 30, x + 10, y - 8), "above it");
    }

    @Test
    void textsAtTheEndDoNotLieOverEachOther() {
        List<FromAboveLayout.Standing<FromAbove.Entrant>> placed =
                LAYOUT.apart(ABOVE.entrants(), entrant -> LAYOUT.y(entrant.cog().lineMm()));
        assertTrue(placed.get(1).y() - placed.get(0).y() >= FromAboveLayout.LINE, placed.toString());
        assertTrue(placed.get(1).y() <= LAYOUT.height(), placed.toString());
    }

    @Test
    void whatCannotBeDrawnIsSaid() {
        assertTrue(ABOVE.caption().endsWith("; C-001 cannot be drawn yet"), ABOVE.caption());
        assertTrue(ABOVE.description().contains("C-003 in its lowest gear 34/50"), ABOVE.description());
        assertTrue(ABOVE.description().contains("chain angle 3.00°, misses"), ABOVE.description());
    }

    @Test
    void theNumbersStandInATable() {
        assertEquals(
                List.of("C-002", "32/45", "meets", "50.0", "30.0", "2.00°"),
                ABOVE.table().rows().get(1));
    }

    @Test
    void itGrowsWhereItCouldNotBeRead() {
        ChartSize narrow = ABOVE.size(Painted.LETTERING, 200);
        assertTrue(narrow.width() > 400, "was " + narrow.width());
    }

    @Test
    void aGearIsMadeOfItsOwnWheels() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new FromAbove.Entrant(
                        new ConceptSign(1, Standing.LEAD),
                        "C-001",
                        List.of(RING),
                        List.of(LARGEST),
                        LARGEST,
                        LARGEST,
                        "",
                        ""));
    }
}
