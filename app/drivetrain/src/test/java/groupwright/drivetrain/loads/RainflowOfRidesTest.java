package groupwright.drivetrain.loads;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.drivetrain.terrain.RideData;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Crank torque of the recorded road rides. The expected figures stand in the README of the resources; a separate program
 * that shares no code with ours computed them.
 */
class RainflowOfRidesTest {
    private static final double POWER_SUM_DIGITS = 5e-7; // seven digits are given

    private record Expected(
            int reversals, int full, int half, double largest, double cubes, double fifths, String classes) {}

    static Stream<Arguments> rides() {
        List<RideData.Sample> hilly = RideData.samples("road_hilly.csv");
        List<RideData.Sample> excerpt = hilly.stream()
                .filter(sample -> sample.timeS() >= 139 && sample.timeS() <= 2838)
                .toList();
        return Stream.of(
                Arguments.of(
                        "road_hilly",
                        hilly,
                        new Expected(
                                3495,
                                1739,
                                16,
                                97.851,
                                1.272899e7,
                                5.322841e10,
                                "0:1444 1:170 2:66 3:24 4:17 5:11 6:4 7:7 8:3 9:1")),
                Arguments.of(
                        "road_hilly_excerpt",
                        excerpt,
                        new Expected(
                                1138,
                                563,
                                11,
                                97.851,
                                6.796688e6,
                                3.594096e10,
                                "0:449.5 1:68 2:26 3:7 4:6 5:4 7:4 8:3 9:1")),
                Arguments.of(
                        "road_cafe_stop",
                        RideData.samples("road_cafe_stop.csv"),
                        new Expected(
                                3226,
                                1610,
                                5,
                                133.308,
                                1.869191e7,
                                1.211497e11,
                                "0:1280 1:202 2:48 3:23 4:20 5:18 6:10.5 7:4 8:3 9:2 11:1 13:1")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rides")
    void referenceFigures(String name, List<RideData.Sample> samples, Expected expected) {
        double[] torque = Histories.torque(samples);
        RangeClasses classes = new RangeClasses(10);
        RainflowSummary summary = Rainflow.count(classes, torque);
        assertEquals(samples.size(), summary.samples());
        assertEquals(expected.reversals(), summary.reversals());
        assertEquals(expected.full(), summary.fullCycles());
        assertEquals(expected.half(), summary.halfCycles());
        assertEquals(expected.largest(), summary.largestRange(), 5e-4);
        LoadSpectrum exact = Rainflow.spectrum(torque);
        assertEquals(expected.cubes(), exact.powerSum(3), expected.cubes() * POWER_SUM_DIGITS);
        assertEquals(expected.fifths(), exact.powerSum(5), expected.fifths() * POWER_SUM_DIGITS);
        Map<Integer, Double> found = new LinkedHashMap<>();
        classes.classes().forEach(of -> found.put((int) Math.rint(of.fromRange() / 10), of.cycles()));
        Map<Integer, Double> wanted = new LinkedHashMap<>();
        for (String of : expected.classes().split(" ")) {
            wanted.put(Integer.valueOf(of.split(":")[0]), Double.valueOf(of.split(":")[1]));
        }
        assertEquals(wanted, found);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rides")
    void constantMemoryCostsLittle(String name, List<RideData.Sample> samples, Expected expected) {
        LoadLevels levels = LoadLevels.between(0, 140, 1401);
        RangeCounts counts = new RangeCounts();
        SteppedRainflow counter = new SteppedRainflow(levels, counts);
        for (double load : Histories.torque(samples)) {
            counter.add(load);
        }
        RainflowSummary summary = counter.finish();
        assertEquals(expected.largest(), summary.largestRange(), levels.step());
        // Rounding by up to half a step each way moves large ranges little, and they make the sums.
        assertEquals(expected.cubes(), counts.spectrum().powerSum(3), expected.cubes() * 2e-3);
        assertEquals(expected.fifths(), counts.spectrum().powerSum(5), expected.fifths() * 2e-3);
        assertTrue(summary.deepest() < 40, "open at a time: " + summary.deepest());
    }
}
