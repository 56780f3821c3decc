package groupwright.drivetrain.gearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.drivetrain.Seeds;
import groupwright.drivetrain.quantity.Cog;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class ChainLineTest {
    /** Pitch radius of a cog whose half step is 30 degrees, sine exactly 1/2: 12.7 mm. */
    private static final double SIX_TEETH_MM = 12.7;

    @Test
    void anglesByHand() {
        // ring and middle cog alike, so that the span is the chainstay; cogs 4 mm apart, 1 mm inside the ring
        var line = ChainLine.even(46, 0, 45, 4, 3, 400);
        var set = GearSet.of(Crankset.of(32), Cassette.of(6, 32, 33));
        assertEquals(Math.toDegrees(Math.atan(1 / 400.0)), line.angleDeg(set, Gear.of(32, 32)), 1e-12);
        // smallest cog at 49 mm; a right triangle with the difference of the radii
        double down = 12.7 / (2 * Math.sin(Math.PI / 32)) - SIX_TEETH_MM;
        double span = Math.sqrt(400 * 400 - down * down);
        assertEquals(Math.toDegrees(Math.atan(3 / span)), line.angleDeg(set, Gear.of(32, 6)), 1e-12);
    }

    /** Own arithmetic, two decimals. */
    @ParameterizedTest
    @CsvSource({"52.5, 32, 3.93, 11, 45, 3.38", "56, 34, 3.60, 12, 50, 3.86"})
    void theLargestCogOfABoostRearEnd(
            double front, int ring, double spacing, int count, int largest, double expectedDeg) {
        List<Cog> cogs = IntStream.rangeClosed(largest - count + 1, largest)
                .mapToObj(Cog::new)
                .toList();
        var set = GearSet.of(Crankset.of(ring), new Cassette(cogs));
        var line = ChainLine.even(front, 0, 46.5, spacing, count, 435);
        assertEquals(expectedDeg, line.angleDeg(set, Gear.of(ring, largest)), 0.005);
    }

    @Test
    void theMiddleOfTheCassetteIsHalfWayBetweenTheOutermostCogs() {
        // spacings 2 and 6: cogs at 49, 47, 41 mm
        var line = new ChainLine(41, 0, 45, List.of(2.0, 6.0), 400);
        var set = GearSet.of(Crankset.of(20), Cassette.of(19, 20, 21));
        assertEquals(0, line.angleDeg(set, Gear.of(20, 21)), 1e-12);
        assertEquals(Math.toDegrees(Math.atan(6 / 400.0)), line.angleDeg(set, Gear.of(20, 20)), 1e-12);
    }

    @Test
    void whatCannotBeIsRefused() {
        var set = GearSet.of(Crankset.of(32), Cassette.of(12, 16, 20));
        assertRefused(
                "2 spacings",
                () -> ChainLine.even(45, 0, 45, 4, 3, 400)
                        .angleDeg(GearSet.of(Crankset.of(32), Cassette.of(12, 16)), Gear.of(32, 16)));
        assertRefused(
                "touch on a chainstay",
                () -> ChainLine.even(45, 0, 45, 4, 3, 90).angleDeg(set, Gear.of(32, 20)));
        assertRefused(
                "is not on this", () -> ChainLine.even(45, 0, 45, 4, 3, 400).angleDeg(set, Gear.of(30, 12)));
        assertRefused("spacing of two cogs", () -> ChainLine.even(45, 0, 45, -1, 3, 400));
        assertRefused("chainstay", () -> ChainLine.even(45, 0, 45, 4, 3, 0));
        assertRefused("number of cogs", () -> ChainLine.even(45, 0, 45, 4, 0, 400));
    }

    private static void assertRefused(String word, Executable refused) {
        String message = assertThrows(IllegalArgumentException.class, refused).getMessage();
        assertTrue(message.contains(word), message);
    }

    @Test
    void aLimitTakesTheCrossedGearsOutOfUse() {
        var set = GearSet.of(Crankset.of(24, 36), Cassette.of(12, 16, 20));
        var line = ChainLine.even(45, 8, 45, 4, 3, 400); // rings at 41 and 49, cogs at 49, 45, 41
        assertEquals(0, line.angleDeg(set, Gear.of(36, 12)), 1e-12);
        var used = line.within(set, 1); // atan(8 / 400) is 1.15 degrees
        assertEquals(4, used.gears().size());
        assertTrue(used.excluded().contains(Gear.of(36, 20)));
        assertTrue(used.excluded().contains(Gear.of(24, 12)));
        assertThrows(
                IllegalArgumentException.class,
                () -> ChainLine.even(80, 0, 45, 4, 3, 400).within(set, 1));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void aTighterLimitLeavesFewerGearsAndOnlyStraighterOnes(long seed) {
        var random = new Random(seed);
        var set = Seeds.gearSet(random);
        var line = ChainLine.even(
                Seeds.between(random, 40, 55),
                Seeds.between(random, 5, 9),
                44,
                Seeds.between(random, 3, 6),
                set.cassette().cogs().size(),
                420);
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
