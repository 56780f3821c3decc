package groupwright.drivetrain.gearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.drivetrain.Seeds;
import groupwright.drivetrain.chain.ChainDrive;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CapacityTest {
    @Test
    void ringsAndCogsAddUp() {
        assertEquals(35, Capacity.totalTeeth(GearSet.of(Crankset.of(32), Cassette.of(10, 21, 45))));
        assertEquals(39, Capacity.totalTeeth(GearSet.of(Crankset.of(36, 24), Cassette.of(11, 21, 38))));
        assertEquals(0, Capacity.totalTeeth(GearSet.of(Crankset.of(42), Cassette.of(16))));
        assertEquals(-3, Capacity.marginTeeth(36, 39));
    }

    @Test
    void excludedGearsNeedNoCapacity() {
        // sums in use: 24+21, 24+38, 36+11, 36+21: 45 to 62
        var set = new GearSet(Crankset.of(36, 24), Cassette.of(11, 21, 38), Set.of(Gear.of(36, 38), Gear.of(24, 11)));
        assertEquals(17, Capacity.usedTeeth(set));
        assertEquals(39, Capacity.totalTeeth(set));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void gearsInUseNeedAtMostTheTotal(long seed) {
        var set = Seeds.gearSet(new Random(seed));
        var all = GearSet.of(set.crankset(), set.cassette());
        assertEquals(Capacity.totalTeeth(all), Capacity.usedTeeth(all));
        assertTrue(Capacity.usedTeeth(set) <= Capacity.totalTeeth(set));
        assertTrue(Capacity.usedTeeth(set) >= 0);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void slackAgreesWithTheExactChainLength(long seed) {
        var random = new Random(seed);
        int ring = 28 + random.nextInt(8);
        int small = 9 + random.nextInt(5);
        int large = 25 + random.nextInt(27);
        var high = new ChainDrive(12.7, ring, small);
        var low = new ChainDrive(12.7, ring, large);
        double exactMm = 12.7 * (low.exactLengthPitches(430) - high.exactLengthPitches(430));
        assertEquals(exactMm, Capacity.slackMm(large - small), 12.7); // one pitch, as documented
    }
}
