package groupwright.drivetrain.gearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.drivetrain.Seeds;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DistinctGearsTest {
    @Test
    void aGearOnTheThresholdCounts() {
        var set = GearSet.of(Crankset.of(30), Cassette.of(25, 26, 27));
        // from 30/27: 27/26 is 3.8 %, 27/25 is 8 %; from 30/26 on its own 26/25 is 4 % exactly
        assertEquals(List.of(Gear.of(30, 27), Gear.of(30, 25)), DistinctGears.of(set, 0.04));
        var pair = GearSet.of(Crankset.of(30), Cassette.of(25, 26));
        assertEquals(2, DistinctGears.of(pair, 0.04).size());
        assertEquals(1, DistinctGears.of(pair, 0.0401).size());
    }

    @Test
    void theLastKeptGearIsTheMeasureNotTheLastSeen() {
        // steps of 50:49:48:47, each about 2 %: every second gear is kept
        var set = GearSet.of(Crankset.of(30), Cassette.of(46, 47, 48, 49, 50));
        assertEquals(List.of(Gear.of(30, 50), Gear.of(30, 48), Gear.of(30, 46)), DistinctGears.of(set, 0.04));
    }

    @Test
    void equalRatiosAreOneGear() {
        var set = GearSet.of(Crankset.of(24, 36), Cassette.of(12, 18));
        assertEquals(3, DistinctGears.of(set, 0.04).size());
        assertEquals(4, DistinctGears.of(set, 0).size());
        assertThrows(IllegalArgumentException.class, () -> DistinctGears.of(set, -0.01));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void keptGearsAreApartAndTheOthersAreNot(long seed) {
        var set = Seeds.gearSet(new Random(seed));
        double threshold = DistinctGears.DEFAULT_THRESHOLD_SHARE;
        List<Gear> kept = DistinctGears.of(set, threshold);
        assertEquals(set.lowest(), kept.get(0));
        for (int i = 1; i < kept.size(); i++) {
            assertTrue(kept.get(i).ratio() / kept.get(i - 1).ratio() >= 1 + threshold - 1e-9);
        }
        for (Gear gear : set.gears()) {
            assertTrue(kept.contains(gear)
                    || kept.stream()
                            .anyMatch(other ->
                                    other.ratio() <= gear.ratio() && gear.ratio() < other.ratio() * (1 + threshold)));
        }
    }
}
