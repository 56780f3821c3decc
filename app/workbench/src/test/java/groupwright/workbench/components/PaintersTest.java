package groupwright.workbench.components;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.assessment.Rung;
import groupwright.documents.content.Verdict;
import groupwright.workbench.look.Contrast;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Theme;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the shapes say, in both themes and at several scales. */
class PaintersTest {
    private static final int WIDTH = 160;
    private static final int HEIGHT = 24;
    private static final double TARGET = 80;

    private static final String THEMES_AND_SCALES = """
            LIGHT, 1.0
            DARK,  1.0
            LIGHT, 1.5
            DARK,  2.0
            """;

    @AfterAll
    static void usualAgain() {
        Look.setUp(Theme.LIGHT, 1, Contrast.USUAL);
    }

    private static Shot bar(Bar bar) {
        return Shot.of(CriterionBar.ALONE, bar, WIDTH, HEIGHT);
    }

    private static Shot mark(Mark mark) {
        return Shot.of(new VerdictMark(Locale.ENGLISH), mark, 12, 12);
    }

    @ParameterizedTest
    @CsvSource(textBlock = THEMES_AND_SCALES)
    void theHalfDiscOfMeetsLiesRightOfItsUpright(Theme theme, double scale) {
        Look.setUp(theme, scale, Contrast.USUAL);
        Shot shot = mark(Mark.MEETS);
        assertEquals(Token.MEETS.colour(), shot.at(3, 0.7));
        assertEquals(Token.MEETS.colour(), shot.at(7, 6));
        assertEquals(0, shot.area(Token.MEETS, 0, 0, 1, 12));
    }

    @ParameterizedTest
    @CsvSource(textBlock = THEMES_AND_SCALES)
    void theWedgeOfMissesPointsLeftFromItsUpright(Theme theme, double scale) {
        Look.setUp(theme, scale, Contrast.USUAL);
        Shot shot = mark(Mark.MISSES);
        assertEquals(Token.MISSES.colour(), shot.at(9, 0.7));
        assertEquals(0, shot.area(Token.MISSES, 10.5, 0, 12, 12));
        assertTrue(shot.area(Token.MISSES, 5, 0, 7, 12) > 2 * shot.area(Token.MISSES, 0, 0, 3, 12));
    }

    @ParameterizedTest
    @CsvSource(textBlock = THEMES_AND_SCALES)
    void theRingOfMissingInputSitsInABrokenUpright(Theme theme, double scale) {
        Look.setUp(theme, scale, Contrast.USUAL);
        Shot shot = mark(Mark.MISSING);
        assertEquals(Token.RAISED.colour(), shot.at(6, 6));
        assertEquals(Token.MISSING.colour(), shot.at(6, 1));
        assertEquals(Token.MISSING.colour(), shot.at(6, 11));
    }

    @ParameterizedTest
    @CsvSource(textBlock = THEMES_AND_SCALES)
    void goodIsRightOfTheTargetAndShortIsLeft(Theme theme, double scale) {
        Look.setUp(theme, scale, Contrast.USUAL);
        Shot meets = bar(ComponentGallery.bar(0.075, Verdict.MEETS, 0)); // half the scale
        assertEquals(40 * 8, meets.area(Token.MEETS, TARGET, 0, WIDTH, HEIGHT), 25);
        assertEquals(0, meets.area(Token.MEETS, 0, 0, TARGET, HEIGHT));
        Shot misses = bar(ComponentGallery.bar(-0.075, Verdict.MISSES, 0));
        assertEquals(40 * 8, misses.area(Token.MISSES, 0, 0, TARGET, HEIGHT), 25);
        assertEquals(0, misses.area(Token.MISSES, TARGET + 1, 0, WIDTH, HEIGHT));
        assertEquals(Token.INK.colour(), misses.at(TARGET + 0.3, 1));
        assertEquals(Token.INK.colour(), misses.at(TARGET + 0.3, HEIGHT - 1));
    }

    @ParameterizedTest
    @CsvSource(textBlock = THEMES_AND_SCALES)
    void aTargetInsideTheBandLeavesTheBarHollowAndWithoutHue(Theme theme, double scale) {
        Look.setUp(theme, scale, Contrast.USUAL);
        Shot shot = bar(ComponentGallery.bar(0.03, Verdict.MEETS_CLOSE, 0.045));
        assertEquals(0, shot.area(Token.MEETS) + shot.area(Token.MISSES));
        assertEquals(Token.RAISED.colour(), shot.at(TARGET + 8, 10.3));
        assertTrue(shot.area(Token.CLOSE, 70, 0, TARGET, HEIGHT) > 8, "the whisker crosses the upright");
    }

    @ParameterizedTest
    @CsvSource(textBlock = THEMES_AND_SCALES)
    void theWhiskerIsKnockedOutInsideTheBarAndInkOutside(Theme theme, double scale) {
        Look.setUp(theme, scale, Contrast.USUAL);
        Shot shot = bar(ComponentGallery.bar(0.075, Verdict.MEETS, 0.0375)); // from 100 to 140, the bar ends at 120
        assertEquals(Token.RAISED.colour(), shot.at(110, 12.4));
        assertEquals(Token.INK.colour(), shot.at(130, 12.4));
        assertEquals(Token.MEETS.colour(), shot.at(90, 12.4));
    }

    @ParameterizedTest
    @CsvSource(textBlock = THEMES_AND_SCALES)
    void aBarBeyondTheScaleIsCutByTwoSlashes(Theme theme, double scale) {
        Look.setUp(theme, scale, Contrast.USUAL);
        double whole = bar(ComponentGallery.bar(-0.15, Verdict.MISSES, 0)).area(Token.MISSES, 0, 0, 14, HEIGHT);
        double cut = bar(ComponentGallery.bar(-0.545, Verdict.MISSES, 0)).area(Token.MISSES, 0, 0, 14, HEIGHT);
        assertTrue(cut < whole - 20, cut + " of " + whole);
    }

    @ParameterizedTest
    @CsvSource(textBlock = THEMES_AND_SCALES)
    void aStretchTargetIsATickOffTheUpright(Theme theme, double scale) {
        Look.setUp(theme, scale, Contrast.USUAL);
        Bar bar = ComponentGallery.bar(0.04, Verdict.MEETS, 0);
        assertEquals(0, bar(bar).area(Token.EDGE, 115, 0, 125, HEIGHT));
        assertTrue(bar(bar.withStretch(0.075)).area(Token.EDGE, 115, 0, 125, HEIGHT) > 6);
    }

    @ParameterizedTest
    @CsvSource(textBlock = THEMES_AND_SCALES)
    void aFailedRungHangsInTheColourOfMisses(Theme theme, double scale) {
        Look.setUp(theme, scale, Contrast.USUAL);
        Ladder fails = Ladder.of(Rung.MEASURABLE, Ladder.Step.FAILS, Locale.ENGLISH);
        Shot shot = Shot.of(LadderMark.IN_ROW, fails, 16, 16);
        assertTrue(shot.area(Token.MISSES, 0, 0, 8, 8) > 4, "held at the left");
        assertEquals(0, shot.area(Token.MISSES, 12.5, 0, 16, 16), "free at the right");
        assertEquals("measurable; not calculated to meet", fails.name());
        Shot close = Shot.of(LadderMark.IN_ROW, Ladder.upTo(Rung.MEASURABLE, Locale.ENGLISH), 16, 16);
        assertEquals(0, close.area(Token.MISSES));
        assertEquals(0, close.area(Token.INK, 2, 0, 14, 7), "an open rung is an empty place");
        assertEquals(48, close.area(Token.INK), 14);
    }

    @ParameterizedTest
    @CsvSource(textBlock = THEMES_AND_SCALES)
    void chipsShowWhetherTheyAreChangedOrSelected(Theme theme, double scale) {
        Look.setUp(theme, scale, Contrast.USUAL);
        Chip chip = ComponentGallery.chip();
        Shot rest = chip(chip);
        assertEquals(0, rest.area(Token.CHANGED) + rest.area(Token.EDGE, 0, 19, 64, 26));
        assertTrue(rest.area(Token.WASH) < 40, "only edges of letters come near it");
        Shot changed = chip(chip.changed());
        assertTrue(changed.area(Token.CHANGED) > 400);
        assertTrue(changed.area(Token.INK, 0, 20, 56, 26) > 60, "the doubled line");
        Shot selected = chip(chip.at(Chip.Line.SELECTED));
        assertTrue(selected.area(Token.WASH) > 400);
        assertEquals(2 * 56, selected.area(Token.ACCENT), 30);
        assertTrue(chip(chip.at(Chip.Line.SHOWN)).area(Token.EDGE, 0, 19, 64, 26) > 30);
    }

    private static Shot chip(Chip chip) {
        return Shot.of(ChipPainter.ALONE, chip, 64, 26);
    }

    @ParameterizedTest
    @CsvSource(textBlock = THEMES_AND_SCALES)
    void numbersOfAColumnEndWhereTheUnitsBegin(Theme theme, double scale) {
        Look.setUp(theme, scale, Contrast.USUAL);
        Chip chip = Chip.of("8", "rpm", "8 rpm", "8 rpm");
        Shot shot = Shot.of(ChipPainter.IN_COLUMN, chip, 120, 28);
        double end = 120 - 36;
        assertTrue(shot.area(Token.RAISED, end - 9, 0, end, 28) < 9 * 28 - 20, "the number");
        assertEquals((end - 9) * 28, shot.area(Token.RAISED, 0, 0, end - 9, 28), 20, "nothing before it");
        assertTrue(shot.area(Token.RAISED, end, 0, 120, 28) < 36 * 28 - 30, "the unit");
        Chip degrees = Chip.of("8", "°", "8 degrees", "8°");
        double without = ChipPainter.ALONE.extent(degrees).width();
        assertEquals(
                8 + Type.TABLE.width("8", degrees.weight()) + Type.CAPTION.width("°", degrees.weight()), without, 1e-9);
    }

    @ParameterizedTest
    @CsvSource(textBlock = THEMES_AND_SCALES)
    void theDotAndTheTargetStandWhereTheyLieInTheBand(Theme theme, double scale) {
        Look.setUp(theme, scale, Contrast.USUAL);
        Known known = new Known(40, 60, 50, Optional.of(new Known.Target(40, "")), "40", "60", "40 to 60");
        Shot shot = Shot.of(CriterionBand.PLAIN, known, 150, 46); // spans 20, shows 30: 5 a unit
        assertEquals(Token.INK.colour(), shot.at(75, 21));
        assertTrue(shot.area(Token.INK, 24, 8, 27, 20) > 6, "the target upright at the low end");
        assertTrue(shot.area(Token.CLOSE, 28, 21, 70, 24) > 60, "the band");
        assertEquals(0, shot.area(Token.CLOSE, 0, 21, 23, 24) + shot.area(Token.CLOSE, 127, 21, 150, 24));
    }
}
