package groupwright.drivetrain.gearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.drivetrain.Seeds;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class GearSetTest {
    @Test
    void cogsMustAscend() {
        var error = assertThrows(IllegalArgumentException.class, () -> Cassette.of(10, 12, 12, 14));
        assertEquals(
                "the cogs of a cassette must ascend from the smallest, but 12 is followed by 12", error.getMessage());
        assertThrows(IllegalArgumentException.class, () -> Cassette.of(14, 12));
        assertThrows(IllegalArgumentException.class, Cassette::of);
    }

    @Test
    void ringsComeInAnyOrder() {
        assertEquals(Crankset.of(24, 36), Crankset.of(36, 24));
        assertThrows(IllegalArgumentException.class, () -> Crankset.of(36, 36));
        assertThrows(IllegalArgumentException.class, Crankset::of);
        assertThrows(IllegalArgumentException.class, () -> Crankset.of(22, 32, 42, 52));
    }

    @Test
    void excludedGearsMustExistAndLeaveOne() {
        var crankset = Crankset.of(32);
        var cassette = Cassette.of(11, 13);
        var foreign = assertThrows(
                IllegalArgumentException.class, () -> new GearSet(crankset, cassette, Set.of(Gear.of(32, 12))));
        assertEquals("excluded gear 32 x 12 is not on this crankset and cassette", foreign.getMessage());
        var all = Set.of(Gear.of(32, 11), Gear.of(32, 13));
        assertThrows(IllegalArgumentException.class, () -> new GearSet(crankset, cassette, all));
    }

    @Test
    void excludedGearsAreNotUsed() {
        var set = new GearSet(Crankset.of(24, 36), Cassette.of(11, 19, 38), Set.of(Gear.of(36, 38), Gear.of(24, 11)));
        assertEquals(List.of(Gear.of(24, 38), Gear.of(24, 19), Gear.of(36, 19), Gear.of(36, 11)), set.gears());
        assertEquals(
                List.of(Gear.of(36, 19), Gear.of(36, 11)),
                set.gearsOn(set.crankset().largest()));
    }

    @ParameterizedTest(name = "{0}-{1}")
    @CsvSource(textBlock = """
            # Common practice, no source; exact because both counts are whole
            10, 51, 510
            10, 42, 420
            9, 36, 400
            10, 52, 520
            """)
    void rangeOfTheOutermostCogs(int smallest, int largest, double pct) {
        assertEquals(pct, GearRange.pct(GearSet.of(Crankset.of(32), Cassette.of(smallest, largest))));
    }

    @Test
    void rangeCountsOnlyGearsInUse() {
        var crankset = Crankset.of(24, 36);
        var cassette = Cassette.of(12, 24, 36);
        assertEquals(450, GearRange.pct(GearSet.of(crankset, cassette)), 1e-12);
        var excluded = Set.of(Gear.of(36, 12), Gear.of(24, 36), Gear.of(24, 12));
        // left: 24/24, 36/24, 36/36
        assertEquals(150, GearRange.pct(new GearSet(crankset, cassette, excluded)), 1e-12);
    }

    @Test
    void rangeWithoutTheSmallestCog() {
        var set = GearSet.of(Crankset.of(32), Cassette.of(10, 12, 48));
        assertEquals(OptionalDouble.of(400), GearRange.withoutSmallestCogPct(set));
        var single = GearSet.of(Crankset.of(32, 44), Cassette.of(16));
        assertEquals(OptionalDouble.empty(), GearRange.withoutSmallestCogPct(single));
        assertEquals(137.5, GearRange.pct(single), 1e-12);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void rangeIsTheRatioOfHighestAndLowestDevelopment(long seed) {
        var random = new Random(seed);
        var set = Seeds.gearSet(random);
        var wheel = Seeds.wheel(random);
        double low = Double.MAX_VALUE;
        double high = 0;
        for (Gear gear : set.gears()) {
            low = Math.min(low, gear.developmentM(wheel));
            high = Math.max(high, gear.developmentM(wheel));
        }
        assertEquals(100 * high / low, GearRange.pct(set), 1e-9);
        assertEquals(low, set.lowest().developmentM(wheel), 1e-12);
        assertEquals(high, set.highest().developmentM(wheel), 1e-12);
        GearRange.withoutSmallestCogPct(set).ifPresent(pct -> assertTrue(pct <= GearRange.pct(set) && pct >= 100));
    }
}
