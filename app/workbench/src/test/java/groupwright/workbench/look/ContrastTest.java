package groupwright.workbench.look;

import static groupwright.workbench.look.Token.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Contrast as WCAG 2.1 defines it: 4.5 for text (success criterion 1.4.3), 3 for marks and edges (1.4.11). */
class ContrastTest {
    private static final double TEXT_NEEDS = 4.5;
    private static final double MARKS_NEED = 3;
    private static final List<Token> GROUNDS = List.of(GROUND, SURFACE, RAISED, WASH);
    private static final List<Token> TEXTS = List.of(INK, MUTED, ACCENT);
    private static final List<Token> MARKS =
            List.of(EDGE, MEETS, MISSES, CLOSE, MISSING, CONCEPT_1, CONCEPT_2, CONCEPT_3, CONCEPT_4);

    @ParameterizedTest
    @EnumSource
    void textAndMarksCanBeReadOnEveryGround(Theme theme) {
        Look.setUp(theme, 1, Contrast.USUAL);
        for (Token ground : GROUNDS) {
            TEXTS.forEach(text -> assertContrast(TEXT_NEEDS, text, ground));
            MARKS.forEach(mark -> assertContrast(MARKS_NEED, mark, ground));
        }
        assertContrast(TEXT_NEEDS, ON_ACCENT, ACCENT);
        assertContrast(TEXT_NEEDS, ON_ACCENT, ACCENT_OVER);
        assertContrast(TEXT_NEEDS, CHANGED_INK, CHANGED);
        assertContrast(TEXT_NEEDS, INK, IDLE_SELECTION);
        assertContrast(TEXT_NEEDS, SURFACE, INK); // tips
    }

    /** Too close to call and missing input have no hue; they differ in shape, and in lightness by 1.7 to 1. */
    @ParameterizedTest
    @EnumSource
    void closeAndMissingDifferInLightness(Theme theme) {
        Look.setUp(theme, 1, Contrast.USUAL);
        assertTrue(contrast(CLOSE.colour(), MISSING.colour()) > 1.7, "" + contrast(CLOSE.colour(), MISSING.colour()));
    }

    private static void assertContrast(double least, Token above, Token ground) {
        double contrast = contrast(above.colour(), ground.colour());
        assertTrue(contrast >= least, above + " on " + ground + " has " + contrast + " in " + Look.theme());
    }

    /** WCAG 2.1, definition of contrast ratio: white on black is 21, a colour on itself 1. */
    @Test
    void contrastRunsFromOneToTwentyOne() {
        assertEquals(21, contrast(Color.WHITE, Color.BLACK), 1e-9);
        assertEquals(1, contrast(Color.ORANGE, Color.ORANGE), 0);
    }

    private static double contrast(Color one, Color other) {
        double lighter = Math.max(luminance(one), luminance(other));
        double darker = Math.min(luminance(one), luminance(other));
        return (lighter + 0.05) / (darker + 0.05);
    }

    /** WCAG 2.1, definition of relative luminance. */
    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
