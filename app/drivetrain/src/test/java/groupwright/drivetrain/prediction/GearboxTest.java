package groupwright.drivetrain.prediction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.gearing.Crankset;
import groupwright.drivetrain.gearing.GearSet;
import groupwright.drivetrain.gearing.Wheel;
import org.junit.jupiter.api.Test;

/** The choice of gears, worked by hand on a wheel of 1 m, where the development is the ratio. */
class GearboxTest {
    private static final Wheel METRE = new Wheel(1);

    /** Ratios 1, 1.25, 1.5, 2 on one ring. */
    private static Gearbox oneRing(ShiftPolicy policy) {
        return new Gearbox(GearSet.of(Crankset.of(30), Cassette.of(15, 20, 24, 30)), METRE, policy);
    }

    @Test
    void withinTheToleranceTheGearStays() {
        Gearbox box = oneRing(ShiftPolicy.USUAL);
        assertEquals(1, box.next(1, 1.25 * 1.08));
        assertEquals(1, box.next(1, 1.25 / 1.08));
        assertEquals(2, box.next(1, 1.45)); // 16 % off, 1.5 is 3.4 % off
        assertEquals(0, box.next(1, 1.05));
    }

    @Test
    void severalCogsAtOnceAndNoFurtherThanThereAreGears() {
        Gearbox box = oneRing(ShiftPolicy.USUAL);
        assertEquals(3, box.next(0, 9));
        assertEquals(0, box.next(3, 0.1));
        assertEquals(3, box.cogsBetween(0, 3));
        assertEquals(0, box.ringsBetween(0, 3));
        assertEquals(2, box.nearest(1.4));
    }

    @Test
    void aShiftMustGainItsBenefit() {
        // aim 1.12: 1.25 is 11.0 % off, 1 is 11.3 % off; from 1 it gains 0.3 %
        assertEquals(0, oneRing(ShiftPolicy.USUAL).next(0, 1.12));
        assertEquals(1, oneRing(new ShiftPolicy(2, 0.08, 0.1, 0)).next(0, 1.12));
    }

    @Test
    void anotherRingMustBeWorthIt() {
        // ratios 24/24 1, 24/18 1.33, 36/24 1.5, 36/18 2
        GearSet two = GearSet.of(Crankset.of(24, 36), Cassette.of(18, 24));
        Gearbox reluctant = new Gearbox(two, METRE, ShiftPolicy.USUAL);
        Gearbox easy = new Gearbox(two, METRE, new ShiftPolicy(2, 0.08, 0, 0.02));
        assertEquals(2, easy.next(1, 1.49)); // 11.1 % off against 0.7 %
        assertEquals(1, reluctant.next(1, 1.49)); // against 0.7 % + 10 %: less than the benefit
        assertEquals(3, reluctant.next(1, 1.9)); // 35 % off against 5 % + 10 %
    }

    @Test
    void nonsenseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new ShiftPolicy(-1, 0.08, 0.1, 0.02));
        assertThrows(IllegalArgumentException.class, () -> new ShiftPolicy(2, 1.5, 0.1, 0.02));
    }
}
