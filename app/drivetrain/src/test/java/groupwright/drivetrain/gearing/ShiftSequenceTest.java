package groupwright.drivetrain.gearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.drivetrain.Seeds;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ShiftSequenceTest {
    @Test
    void oneRingGoesDownTheCogs() {
        var sequence = ShiftSequence.of(GearSet.of(Crankset.of(32), Cassette.of(11, 13, 16)));
        assertEquals(List.of(Gear.of(32, 16), Gear.of(32, 13), Gear.of(32, 11)), sequence.gears());
        assertEquals(0, sequence.frontShifts());
        assertEquals(2, sequence.cogsShifted());
        assertEquals(100.0 * 3 / 13, sequence.largestStepPct().orElseThrow(), 1e-12);
        assertEquals(-1, sequence.shifts().get(0).cogsMoved());
    }

    @Test
    void movesOfTwoRings() {
        // ratios: 24/24 1, 24/18 1.33, 36/24 1.5, 24/12 = 36/18 2, 36/12 3: worked by hand
        var sequence = ShiftSequence.of(GearSet.of(Crankset.of(36, 24), Cassette.of(12, 18, 24)));
        assertEquals(
                List.of(
                        Gear.of(24, 24),
                        Gear.of(24, 18),
                        Gear.of(36, 24),
                        Gear.of(36, 18), // equal to 24 x 12, but no front shift
                        Gear.of(24, 12),
                        Gear.of(36, 12)),
                sequence.gears());
        Shift up = sequence.shifts().get(1);
        assertEquals(1, up.ringsMoved());
        assertEquals(1, up.cogsMoved());
        assertEquals(12.5, up.stepPct(), 1e-12);
        assertEquals(0, sequence.shifts().get(3).stepPct());
        assertEquals(3, sequence.frontShifts());
        assertEquals(50, sequence.largestStepPct().orElseThrow(), 1e-12);
    }

    @Test
    void aSingleGearHasNoShift() {
        var sequence = ShiftSequence.of(GearSet.of(Crankset.of(42), Cassette.of(16)));
        assertEquals(List.of(), sequence.shifts());
        assertEquals(OptionalDouble.empty(), sequence.largestStepPct());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void everyGearInUseOnceAndEverHarder(long seed) {
        var set = Seeds.gearSet(new Random(seed));
        var sequence = ShiftSequence.of(set);
        assertEquals(set.gears().size(), sequence.gears().size());
        assertEquals(new HashSet<>(set.gears()), new HashSet<>(sequence.gears()));
        double product = 1;
        for (Shift shift : sequence.shifts()) {
            assertTrue(shift.stepPct() >= 0);
            product *= 1 + shift.stepPct() / 100;
        }
        assertEquals(GearRange.pct(set) / 100, product, 1e-9);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void theMovesLeadFromTheFirstGearToTheLast(long seed) {
        var set = Seeds.gearSet(new Random(seed));
        var sequence = ShiftSequence.of(set);
        int ring = set.crankset().rings().indexOf(sequence.gears().get(0).ring());
        int cog = set.cassette().cogs().indexOf(sequence.gears().get(0).cog());
        for (Shift shift : sequence.shifts()) {
            ring += shift.ringsMoved();
            cog += shift.cogsMoved();
            assertEquals(shift.to().ring(), set.crankset().rings().get(ring));
            assertEquals(shift.to().cog(), set.cassette().cogs().get(cog));
        }
    }
}
