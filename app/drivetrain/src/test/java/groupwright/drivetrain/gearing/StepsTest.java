package groupwright.drivetrain.gearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.drivetrain.Seeds;
import groupwright.drivetrain.quantity.Cog;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class StepsTest {
    /** Ladder of an invented product; expected values by an independent script. */
    private static final Cassette ELEVEN = Cassette.of(10, 12, 14, 16, 18, 21, 25, 30, 35, 40, 45);

    @Test
    void largestStepFromTeeth() {
        assertEquals(Optional.of(Step.of(10, 12)), Steps.largest(Steps.of(ELEVEN)));
        assertEquals(Optional.of(Step.of(25, 30)), Steps.largest(Steps.of(ELEVEN, 14)));
        assertEquals(20, Step.of(25, 30).pct());
        assertEquals(
                18.75,
                Steps.largest(Steps.of(Cassette.of(12, 14, 16, 19, 22), 14))
                        .orElseThrow()
                        .pct());
    }

    @Test
    void aPairCountsByItsSmallerCog() {
        assertEquals(List.of(Step.of(14, 16), Step.of(16, 18)), Steps.of(Cassette.of(12, 14, 16, 18), 14));
        assertEquals(List.of(), Steps.of(Cassette.of(12, 14), 14));
    }

    @Test
    void meanOfTwoSteps() {
        // 10 -> 11 -> 22: 10 % and 100 %; the even step is sqrt(2.2) - 1, elementary
        var steps = Steps.of(Cassette.of(10, 11, 22));
        assertEquals(55, Steps.meanPct(steps).orElseThrow(), 1e-12);
        assertEquals(48.3239697, Steps.evenStepPct(steps).orElseThrow(), 1e-7);
        // two values deviate from their mean by half their difference: ln(2 / 1.1) / 2
        assertEquals(29.8918500, Steps.unevennessPct(steps).orElseThrow(), 1e-7);
        assertEquals(90, Steps.changePct(steps).orElseThrow(), 1e-12);
    }

    @Test
    void aGeometricLadderIsEven() {
        var steps = Steps.of(Cassette.of(8, 12, 18, 27));
        assertEquals(0, Steps.unevennessPct(steps).orElseThrow(), 1e-6);
        assertEquals(0, Steps.changePct(steps).orElseThrow());
        assertEquals(50, Steps.evenStepPct(steps).orElseThrow(), 1e-12);
    }

    @Test
    void aSingleCogHasNoSteps() {
        var none = Steps.of(Cassette.of(16));
        assertEquals(Optional.empty(), Steps.largest(none));
        assertEquals(OptionalDouble.empty(), Steps.meanPct(none));
        assertEquals(OptionalDouble.empty(), Steps.evenStepPct(none));
        assertEquals(OptionalDouble.empty(), Steps.unevennessPct(none));
        assertEquals(OptionalDouble.empty(), Steps.changePct(none));
        assertEquals(OptionalDouble.empty(), Steps.changePct(List.of(Step.of(12, 14))));
    }

    @Test
    void aStepGoesUp() {
        assertThrows(IllegalArgumentException.class, () -> Step.of(14, 14));
        assertThrows(IllegalArgumentException.class, () -> Step.of(14, 12));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void theProductOfTheStepsIsTheRange(long seed) {
        var random = new Random(seed);
        var cassette = Seeds.cassette(random);
        var steps = Steps.of(cassette);
        double product =
                steps.stream().mapToDouble(step -> 1 + step.pct() / 100).reduce(1, (a, b) -> a * b);
        double range = GearRange.pct(GearSet.of(Crankset.of(32), cassette)) / 100;
        assertEquals(range, product, 1e-9);
        Steps.evenStepPct(steps).ifPresent(even -> {
            assertEquals(range, Math.pow(1 + even / 100, steps.size()), 1e-9);
            assertTrue(even <= Steps.meanPct(steps).orElseThrow() + 1e-9);
            assertTrue(Steps.meanPct(steps).orElseThrow()
                    <= Steps.largest(steps).orElseThrow().pct() + 1e-9);
        });
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void twiceTheTeethAreTheSameSteps(long seed) {
        var random = new Random(seed);
        var cassette = new Cassette(random.ints(9, 40)
                .distinct()
                .limit(9)
                .sorted()
                .mapToObj(Cog::new)
                .toList());
        var doubled = new Cassette(
                cassette.cogs().stream().map(cog -> new Cog(2 * cog.teeth())).toList());
        assertEquals(Steps.unevennessPct(Steps.of(cassette)), Steps.unevennessPct(Steps.of(doubled)));
        assertEquals(Steps.changePct(Steps.of(cassette)), Steps.changePct(Steps.of(doubled)));
    }
}
