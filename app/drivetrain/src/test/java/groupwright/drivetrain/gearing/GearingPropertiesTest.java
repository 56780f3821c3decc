package groupwright.drivetrain.gearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.drivetrain.Seeds;
import groupwright.drivetrain.quantity.Chainring;
import groupwright.drivetrain.quantity.Cog;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold for any set-up of 1 to 3 rings and 5 to 14 cogs. */
class GearingPropertiesTest {
    private static Cassette cassette(Random random) {
        return new Cassette(random.ints(9, 41)
                .distinct()
                .limit(5 + random.nextInt(10))
                .sorted()
                .mapToObj(Cog::new)
                .toList());
    }

    private static Crankset crankset(Random random) {
        return new Crankset(random.ints(20, 57)
                .distinct()
                .limit(1 + random.nextInt(3))
                .mapToObj(Chainring::new)
                .toList());
    }

    private static Cassette doubled(Cassette cassette) {
        return new Cassette(
                cassette.cogs().stream().map(cog -> new Cog(2 * cog.teeth())).toList());
    }

    private static Crankset doubled(Crankset crankset) {
        return new Crankset(crankset.rings().stream()
                .map(ring -> new Chainring(2 * ring.teeth()))
                .toList());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void twiceAllTeethChangesNoRatio(long seed) {
        var random = new Random(seed);
        var set = GearSet.of(crankset(random), cassette(random));
        var twice = GearSet.of(doubled(set.crankset()), doubled(set.cassette()));
        assertEquals(GearRange.pct(set), GearRange.pct(twice), 1e-9);
        assertEquals(
                DistinctGears.of(set, 0.04).size(),
                DistinctGears.of(twice, 0.04).size());
        var sequence = ShiftSequence.of(set);
        var other = ShiftSequence.of(twice);
        assertEquals(sequence.frontShifts(), other.frontShifts());
        assertEquals(sequence.cogsShifted(), other.cogsShifted());
        for (int i = 0; i < sequence.shifts().size(); i++) {
            assertEquals(
                    sequence.shifts().get(i).stepPct(), other.shifts().get(i).stepPct(), 1e-9);
        }
        assertEquals(FrontShifts.madeUp(set).size(), FrontShifts.madeUp(twice).size());
        for (int i = 0; i < Steps.of(set.cassette()).size(); i++) {
            Step step = Steps.of(set.cassette()).get(i);
            Step wide = Steps.of(twice.cassette()).get(i);
            assertEquals(2 * ShiftPositions.likePositions(step), ShiftPositions.likePositions(wide));
            assertEquals(
                    ShiftPositions.phaseMismatchMm(step), ShiftPositions.phaseMismatchMm(wide), 1e-12); // d, g, z alike
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void higherGearsGoFurtherAndTurnSlower(long seed) {
        var random = new Random(seed);
        var set = GearSet.of(crankset(random), cassette(random));
        Wheel wheel = Seeds.wheel(random);
        double speed = Seeds.between(random, 5, 60);
        List<Gear> gears = set.gears();
        for (int i = 1; i < gears.size(); i++) {
            Gear low = gears.get(i - 1);
            Gear high = gears.get(i);
            assertTrue(high.developmentM(wheel) >= low.developmentM(wheel));
            assertTrue(high.cadenceRpm(wheel, speed) <= low.cadenceRpm(wheel, speed));
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void excludingAGearNeverAddsOneAndKeepsTheOthersInOrder(long seed) {
        var random = new Random(seed);
        var set = GearSet.of(crankset(random), cassette(random));
        Gear out = set.gears().get(random.nextInt(set.gears().size()));
        var fewer = new GearSet(set.crankset(), set.cassette(), java.util.Set.of(out));
        assertEquals(set.gears().stream().filter(gear -> !gear.equals(out)).toList(), fewer.gears());
        assertTrue(GearRange.pct(fewer) <= GearRange.pct(set));
        assertTrue(Capacity.usedTeeth(fewer) <= Capacity.usedTeeth(set));
        assertTrue(DistinctGears.of(fewer, 0.04).size() <= set.gears().size() - 1);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void theCadenceAfterEachShiftFollowsTheStep(long seed) {
        var random = new Random(seed);
        var sequence = ShiftSequence.of(GearSet.of(crankset(random), cassette(random)));
        List<Double> after = sequence.cadencesAfterRpm(90);
        assertEquals(sequence.shifts().size(), after.size());
        IntStream.range(0, after.size())
                .forEach(i -> assertEquals(90 / (1 + sequence.shifts().get(i).stepPct() / 100), after.get(i), 1e-9));
    }
}
