package groupwright.drivetrain.gearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.drivetrain.Seeds;
import groupwright.drivetrain.quantity.Chainring;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FrontShiftsTest {
    @Test
    void oneAndAHalfTimesTheRingIsMadeUpByOneAndAHalfTimesTheCog() {
        // 36/24 = 1.5 and each cog 1.5 times the one before: one rear shift undoes the front shift exactly
        var set = GearSet.of(Crankset.of(24, 36), Cassette.of(8, 12, 18, 27));
        List<Shift> shifts = FrontShifts.madeUp(set);
        assertEquals(3, shifts.size()); // 24 x 27 is below all of the 36
        for (Shift shift : shifts) {
            assertEquals(1, shift.ringsMoved());
            assertEquals(1, shift.cogsMoved());
            assertEquals(0, shift.stepPct());
        }
    }

    @Test
    void ofTwoEquallyNearGearsTheOneWithFewerCogsToMoveIsTaken() {
        // 24/16 = 1.5 lies as far below 36/18 = 2 as above 36/32 = 1.125: 4/3 either way
        var set = GearSet.of(Crankset.of(24, 36), Cassette.of(16, 18, 32));
        Shift shift = FrontShifts.madeUp(set).stream()
                .filter(made -> made.from().equals(Gear.of(24, 16)))
                .findFirst()
                .orElseThrow();
        assertEquals(Gear.of(36, 18), shift.to());
    }

    @Test
    void overlapAndGap() {
        var one = new Chainring(24);
        var other = new Chainring(36);
        var wide = GearSet.of(Crankset.of(24, 36), Cassette.of(12, 18, 24)); // 24/12 over 36/24: 2 / 1.5
        assertEquals(100.0 / 3, FrontShifts.overlapPct(wide, one, other).orElseThrow(), 1e-9);
        assertEquals(FrontShifts.overlapPct(wide, one, other), FrontShifts.overlapPct(wide, other, one));
        var narrow = GearSet.of(Crankset.of(24, 36), Cassette.of(16, 20)); // 1.5 over 1.8
        assertEquals(-100.0 / 6, FrontShifts.overlapPct(narrow, one, other).orElseThrow(), 1e-9);
        assertEquals(List.of(), FrontShifts.madeUp(narrow));
    }

    @Test
    void aRingOutOfUseHasNoOverlap() {
        var set = new GearSet(Crankset.of(24, 36), Cassette.of(16), Set.of(Gear.of(24, 16)));
        assertEquals(OptionalDouble.empty(), FrontShifts.overlapPct(set, new Chainring(24), new Chainring(36)));
        assertEquals(List.of(), FrontShifts.madeUp(set));
        assertEquals(List.of(), FrontShifts.madeUp(GearSet.of(Crankset.of(32), Cassette.of(11, 13))));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void noOtherGearInUseIsNearer(long seed) {
        var set = Seeds.gearSet(new Random(seed));
        for (Shift shift : FrontShifts.madeUp(set)) {
            double distance = distance(shift.from(), shift.to());
            assertEquals(1, shift.ringsMoved());
            assertTrue(set.gears().contains(shift.to()));
            for (Gear gear : set.gearsOn(shift.to().ring())) {
                assertTrue(distance(shift.from(), gear) >= distance - 1e-9);
            }
        }
    }

    private static double distance(Gear a, Gear b) {
        return Math.abs(Math.log(a.ratio() / b.ratio()));
    }
}
