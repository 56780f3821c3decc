package groupwright.documents.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class BarSharesTest {
    private static final double EXACT = 1e-12;

    @Test
    void aMarginOfHalfTheScaleEndsHalfWay() {
        assertEquals(
                0.5,
                BarShares.of(0.075, Optional.empty(), BarShares.USUAL_SCALE).end(),
                EXACT);
        assertEquals(-0.5, BarShares.of(-3, Optional.empty(), 6).end(), EXACT);
    }

    @Test
    void whatLiesBeyondTheScaleIsCutAtItsEnd() {
        BarShares shares = BarShares.of(-0.545, Optional.of(new Band(-0.6, -0.1)), 0.15);
        assertEquals(BarShares.Reach.CUT, shares.reach());
        assertEquals(-1, shares.end(), EXACT);
        assertEquals(-1, shares.whisker().orElseThrow().low(), EXACT);
        assertEquals(
                BarShares.Reach.ON_SCALE,
                BarShares.of(0.15, Optional.empty(), 0.15).reach());
    }

    @Test
    void onlyThePartOfTheBandThatLiesOnTheBarIsInside() {
        BarShares misses = BarShares.of(-0.06, Optional.of(new Band(-0.09, -0.03)), 0.15);
        assertEquals(new BarShares.Whisker(-0.4, -0.2), misses.inside().orElseThrow());
        assertTrue(misses.covers(-0.2));
        assertFalse(misses.covers(-0.6));
        BarShares across = BarShares.of(0.03, Optional.of(new Band(-0.015, 0.075)), 0.15);
        assertEquals(new BarShares.Whisker(0, 0.2), across.inside().orElseThrow());
    }

    @Test
    void aStretchBeyondTheScaleIsNotMarked() {
        assertEquals(OptionalDouble.of(0.5), BarShares.mark(0.05, 0.1));
        assertEquals(OptionalDouble.empty(), BarShares.mark(0.11, 0.1));
    }

    @Test
    void aScaleOfZeroIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> BarShares.of(0, Optional.empty(), 0));
    }
}
