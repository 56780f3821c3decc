package groupwright.documents.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class StepBarsTest {
    private static final double WIDTH = 520;
    private static final Palette PAPER = Palette.PAPER;
    private static final StepBars BARS = SampleCharts.bars();
    private static final StepBarsLayout LAYOUT = StepBarsLayout.of(BARS, Painted.LETTERING, WIDTH);
    private static final Painted PAINTED = new Painted(BARS, WIDTH);
    private static final int UNJUDGED = 0; // 10 to 12 teeth, 20 %
    private static final int WITHIN = 2; // 14 to 16 teeth, 14.3 %
    private static final int ABOVE = 6; // 25 to 30 teeth, 20 %
    private static final int SINGLE = 5; // 21 to 25 teeth, one like position

    private static double left(int step) {
        return Math.rint(LAYOUT.barX(step) - LAYOUT.barWidth() / 2);
    }

    @Test
    void barsStandOnZeroAndTheLargestIsTheHighest() {
        assertEquals(StepBarsLayout.BASE, LAYOUT.y(0));
        // 20 % are 56 high, so 10 % are 28 and 18 % are 50.4 (by hand)
        assertEquals(StepBarsLayout.BASE - 28, LAYOUT.y(10), 1e-9);
        assertEquals(StepBarsLayout.BASE - 50.4, LAYOUT.y(18), 1e-9);
        assertEquals(56, BARS.topPct() * LAYOUT.perPct(), 1e-9);
    }

    @Test
    void cogsStandBetweenTheBars() {
        assertEquals((LAYOUT.cogX(3) + LAYOUT.cogX(4)) / 2, LAYOUT.barX(3), 1e-9);
    }

    @Test
    void aBarWithinTheLimitIsFilled() {
        double x = LAYOUT.barX(WITHIN);
        PAINTED.assertColour(PAPER.concepts().get(1), x, LAYOUT.y(7), "middle of the bar");
        PAINTED.assertColour(PAPER.concepts().get(1), x, LAYOUT.y(14), "just below its top");
        PAINTED.assertColour(PAPER.surface(), x, LAYOUT.y(15), "just above its top");
    }

    @Test
    void aBarBeforeTheLimitIsHollowInEdge() {
        PAINTED.assertColour(PAPER.surface(), LAYOUT.barX(UNJUDGED), LAYOUT.y(10), "middle of the bar");
        PAINTED.assertColour(PAPER.edge(), left(UNJUDGED) + 0.5, LAYOUT.y(10), "its left side");
        assertFalse(PAINTED.has(PAPER.misses(), left(UNJUDGED), 16, left(UNJUDGED) + 20, 73), "no verdict");
    }

    @Test
    void whatExceedsTheLimitIsHollowWithAnOutline() {
        double x = LAYOUT.barX(ABOVE);
        PAINTED.assertColour(PAPER.concepts().get(1), x, LAYOUT.y(17), "below the limit");
        PAINTED.assertColour(PAPER.surface(), x, LAYOUT.y(19), "above the limit");
        PAINTED.assertColour(PAPER.misses(), left(ABOVE) + 0.7, LAYOUT.y(19), "its left side");
        PAINTED.assertColour(PAPER.misses(), x, LAYOUT.y(20) + 0.7, "its top");
        assertFalse(PAINTED.has(PAPER.misses(), left(WITHIN) - 5, 16, left(WITHIN) + 20, 73), "a bar within");
    }

    @Test
    void theNumberOfWhatExceedsIsHeavier() {
        double heavy = PAINTED.count(PAPER.ink(), LAYOUT.barX(ABOVE) - 15, 0, LAYOUT.barX(ABOVE) + 15, 13);
        Painted without = new Painted(
                StepBars.of(SampleCharts.LEAD, "C-002", BARS.steps(), Optional.empty(), Locale.ENGLISH), WIDTH);
        double pitch = StepBarsLayout.of(
                        StepBars.of(SampleCharts.LEAD, "C-002", BARS.steps(), Optional.empty(), Locale.ENGLISH),
                        Painted.LETTERING,
                        WIDTH)
                .barX(ABOVE);
        double light = without.count(PAPER.ink(), pitch - 15, 0, pitch + 15, 13);
        assertTrue(heavy > 1.15 * light, heavy + " against " + light);
    }

    @Test
    void theLimitIsDottedFromTheCogWhereItBegins() {
        double y = LAYOUT.y(18);
        double start = LAYOUT.cogX(2); // 14 teeth
        assertTrue(PAINTED.has(PAPER.ink(), start, y - 1, start + 5, y + 1.5), "after the cog");
        assertFalse(PAINTED.has(PAPER.ink(), 0, y - 1, start - 0.5, y + 1.5), "before the cog");
        double inked = PAINTED.count(PAPER.ink(), start, Math.floor(y), left(WITHIN), Math.floor(y) + 1);
        assertEquals(0.4, inked / (left(WITHIN) - start), 0.15, "two dots in five");
    }

    @Test
    void likePositionsAreDotsAndASingleOneIsRinged() {
        double y = StepBarsLayout.DOTS;
        double dot = Math.PI * 1.6 * 1.6;
        for (int i = 0; i < BARS.steps().size(); i++) {
            double x = LAYOUT.barX(i);
            double dots = PAINTED.count(PAPER.ink(), x - 12, y - 5, x + 12, y + 5) / dot;
            assertEquals(BARS.steps().get(i).likePositions(), dots, 0.25 * dots, "step " + i);
            assertEquals(i == SINGLE, PAINTED.has(PAPER.misses(), x - 6, y - 6, x + 6, y + 6), "ring at step " + i);
        }
    }

    @Test
    void sixPositionsAreANumberAndOneDot() {
        StepBars six =
                StepBars.of(SampleCharts.LEAD, "C-009", SampleCharts.steps(12, 18), Optional.empty(), Locale.ENGLISH);
        Painted painted = new Painted(six, WIDTH);
        double middle = StepBarsLayout.of(six, Painted.LETTERING, WIDTH).barX(0);
        double dot = Math.PI * 1.6 * 1.6;
        double right = painted.count(PAPER.ink(), middle + 1.5, 92, middle + 8, 104);
        assertEquals(dot, right, 0.25 * dot, "one dot");
        assertTrue(painted.has(PAPER.ink(), middle - 6, 92, middle, 104), "the number before it");
    }

    @Test
    void theLimitIsWrittenBelowWhereThereIsNoRoomBeside() {
        assertEquals(StepBarsLayout.Sentence.BESIDE, LAYOUT.sentence());
        StepBarsLayout narrow = StepBarsLayout.of(BARS, Painted.LETTERING, 290);
        assertEquals(StepBarsLayout.Sentence.BELOW, narrow.sentence());
        assertTrue(narrow.height() > LAYOUT.height());
        assertEquals(11 * 24, StepBarsLayout.of(BARS, Painted.LETTERING, 10).width(), "eleven cogs");
    }

    @Test
    void itSaysItselfInOneSentence() {
        // 21 to 25 teeth are 19.05 %, 25 to 30 are 20 %; gcd(21, 25) = 1 (by hand)
        assertEquals(
                "The steps between the cogs of C-002 go from 12.5 to 20.0\u202F%; the limit, at most 18\u202F% from 14"
                        + " teeth, is missed by 21–25, 25–30; a single like position a turn has 21–25.",
                BARS.description());
    }

    @Test
    void theTableHoldsEveryStep() {
        ChartTable table = BARS.table();
        assertEquals(List.of("Cogs", "at most 18\u202F% from 14 teeth", "Step, %", "Like positions"), table.heads());
        assertEquals(List.of("10–12", "", "20.0", "2"), table.rows().get(UNJUDGED));
        assertEquals(List.of("14–16", "meets", "14.3", "2"), table.rows().get(WITHIN));
        assertEquals(List.of("25–30", "misses", "20.0", "5"), table.rows().get(ABOVE));
    }

    @Test
    void stepsThatDoNotFollowEachOtherAreRefused() {
        List<StepBars.Step> gap = List.of(new StepBars.Step(10, 12, 20, 2), new StepBars.Step(14, 16, 14.3, 2));
        assertThrows(
                IllegalArgumentException.class,
                () -> StepBars.of(SampleCharts.LEAD, "C-002", gap, Optional.empty(), Locale.ENGLISH));
        assertThrows(IllegalArgumentException.class, () -> new StepBars.Step(12, 10, 20, 2));
        assertThrows(IllegalArgumentException.class, () -> new StepBars.Limit(0, Double.NaN));
    }
}
