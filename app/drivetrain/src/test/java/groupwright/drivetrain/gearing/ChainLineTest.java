package groupwright.drivetrain.gearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.drivetrain.Seeds;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ChainLineTest {
    @Test
    void anglesByHand() {
        // one ring in line with the middle of three cogs, 4 mm apart, 400 mm span: atan(4 / 400)
        var line = new ChainLine(45, 0, 45, 4, 400);
        var set = GearSet.of(Crankset.of(32), Cassette.of(12, 16, 20));
        assertEquals(0, line.angleDeg(set, Gear.of(32, 16)), 1e-12);
        assertEquals(Math.toDegrees(Math.atan(0.01)), line.angleDeg(set, Gear.of(32, 12)), 1e-12);
        assertEquals(Math.toDegrees(Math.atan(0.01)), line.angleDeg(set, Gear.of(32, 20)), 1e-12);
        // a ring set 3 mm out: 1 mm to the smallest cog at 49, 7 mm to the largest at 41
        var out = new ChainLine(48, 0, 45, 4, 400);
        assertEquals(Math.toDegrees(Math.atan(1 / 400.0)), out.angleDeg(set, Gear.of(32, 12)), 1e-12);
        assertEquals(Math.toDegrees(Math.atan(7 / 400.0)), out.angleDeg(set, Gear.of(32, 20)), 1e-12);
    }

    @Test
    void aLimitTakesTheCrossedGearsOutOfUse() {
        var set = GearSet.of(Crankset.of(24, 36), Cassette.of(12, 16, 20));
        var line = new ChainLine(45, 8, 45, 4, 400); // rings at 41 and 49, cogs at 49, 45, 41
        assertEquals(0, line.angleDeg(set, Gear.of(36, 12)), 1e-12);
        var used = line.within(set, 1); // atan(8 / 400) is 1.15 degrees
        assertEquals(4, used.gears().size());
        assertTrue(used.excluded().contains(Gear.of(36, 20)));
        assertTrue(used.excluded().contains(Gear.of(24, 12)));
        assertThrows(IllegalArgumentException.class, () -> new ChainLine(80, 0, 45, 4, 400).within(set, 1));
        assertThrows(IllegalArgumentException.class, () -> line.angleDeg(set, Gear.of(30, 12)));
        assertThrows(IllegalArgumentException.class, () -> new ChainLine(45, 8, 45, 4, 0));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void aTighterLimitLeavesFewerGearsAndOnlyStraighterOnes(long seed) {
        var random = new Random(seed);
        var set = Seeds.gearSet(random);
        var line = new ChainLine(
                Seeds.between(random, 40, 55), Seeds.between(random, 5, 9), 44, Seeds.between(random, 3, 6), 420);
        double least = set.gears().stream()
                .mapToDouble(gear -> line.angleDeg(set, gear))
                .min()
                .orElseThrow();
        double limit = least + Seeds.between(random, 0.1, 2);
        var used = line.within(set, limit);
        assertTrue(used.gears().stream().allMatch(gear -> line.angleDeg(set, gear) <= limit));
        assertTrue(line.within(set, limit - 0.1).gears().size() <= used.gears().size());
        assertTrue(set.gears().containsAll(used.gears()));
        assertEquals(
                set.gears().stream()
                        .filter(gear -> line.angleDeg(set, gear) <= limit)
                        .toList(),
                used.gears());
    }
}
