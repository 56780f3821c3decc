package groupwright.drivetrain.wear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.drivetrain.Seeds;
import groupwright.drivetrain.gearing.Gear;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class RelativeWearTest {
    private static final ConditionFactors FACTORS = new ConditionFactors(1, 2, 4, 1.5); // invented

    private static ArticulationEnergy energy(RiddenGears ridden, int links, ChainFriction friction) {
        return ArticulationEnergy.of(ridden, links, 20, friction);
    }

    private static RiddenGears one(int ring, int cog) {
        return new RiddenGears(List.of(new GearWork(Gear.of(ring, cog), 1e4)), 10);
    }

    @Test
    void partByPart() {
        // twice the teeth at the same work: half the angle, and on wheels twice the teeth to share it; half the cold
        ArticulationEnergy small = energy(one(24, 10), 100, ChainFriction.ASSUMED);
        ArticulationEnergy big = energy(one(48, 20), 100, ChainFriction.ASSUMED);
        RelativeWear wear = RelativeWear.of(big, small, 1.5);
        assertEquals(0.75, wear.of(WornPart.CHAIN).orElseThrow(), 1e-12);
        assertEquals(0.375, wear.of(WornPart.RINGS).orElseThrow(), 1e-12);
        assertEquals(OptionalDouble.empty(), wear.of(WornPart.SMALL_COGS)); // only one of both uses them
        assertEquals(OptionalDouble.empty(), wear.of(WornPart.BIG_COGS));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void frictionDropsOutAndFactorsMultiply(long seed) {
        var random = new Random(seed);
        RiddenGears own = ArticulationEnergyTest.ridden(random);
        RiddenGears reference = ArticulationEnergyTest.ridden(random);
        double factor = Seeds.between(random, 0.5, 5);
        var rough = new ChainFriction(0.19, 2.3, 12.7, 3);
        RelativeWear plain = RelativeWear.of(
                energy(own, 110, ChainFriction.ASSUMED), energy(reference, 116, ChainFriction.ASSUMED), 1);
        RelativeWear harsh = RelativeWear.of(energy(own, 110, rough), energy(reference, 116, rough), factor);
        assertEquals(plain.parts().keySet(), harsh.parts().keySet());
        plain.parts()
                .forEach((part, ratio) -> assertEquals(
                        factor * ratio,
                        harsh.of(part).orElseThrow(),
                        1e-9 * harsh.of(part).orElseThrow()));
        energyOfItself(energy(own, 110, rough));
    }

    private static void energyOfItself(ArticulationEnergy energy) {
        RelativeWear.of(energy, energy, 1).parts().forEach((part, ratio) -> assertEquals(1, ratio, 1e-12));
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0, 0, 1",
        "100, 0, 0, 2",
        "0, 100, 0, 4",
        "0, 0, 100, 1.5",
        "20, 10, 20, 1.6",
        "33.3, 33.4, 33.3, 2.5015"
    }) // by hand
    void factorsAreWeightedByShares(double dustPct, double mudPct, double coldPct, double expected) {
        assertEquals(expected, FACTORS.mean(RidingConditions.ofPct(dustPct, mudPct, coldPct)), 1e-12);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void theMeanLiesBetweenTheFactorsEvenIfSharesWereRounded(long seed) {
        var random = new Random(seed);
        double dust = Math.rint(random.nextInt(334)) / 1000;
        double mud = Math.rint(random.nextInt(334)) / 1000;
        double cold = Math.rint(random.nextInt(334)) / 1000;
        double dry = 1 - dust - mud - cold + Seeds.between(random, -0.0009, 0.0019);
        double mean = FACTORS.mean(new RidingConditions(Math.max(0, dry), dust, mud, cold));
        assertTrue(mean >= 1 - 1e-12 && mean <= 4, "mean " + mean);
        assertEquals(3, new ConditionFactors(3, 3, 3, 3).mean(new RidingConditions(0.999, 0, 0, 0)), 1e-12);
    }

    @Test
    void nonsenseIsRefused() {
        var wrong = assertThrows(IllegalArgumentException.class, () -> new RidingConditions(0.5, 0.2, 0.2, 0.2));
        assertTrue(wrong.getMessage().contains("must add up to 1"), wrong.getMessage());
        assertThrows(IllegalArgumentException.class, () -> new RidingConditions(0.9, 0, 0, 0.097));
        assertThrows(IllegalArgumentException.class, () -> new RidingConditions(1.2, -0.2, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new RidingConditions(Double.NaN, 0, 0, 1));
        assertThrows(IllegalArgumentException.class, () -> RidingConditions.ofPct(60, 30, 20));
        assertThrows(IllegalArgumentException.class, () -> RidingConditions.ofPct(-5, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new ConditionFactors(1, 2, 0, 1));
        assertThrows(IllegalArgumentException.class, () -> new RelativeWear(Map.of(WornPart.CHAIN, Double.NaN)));
        ArticulationEnergy energy = energy(one(24, 10), 100, ChainFriction.ASSUMED);
        assertThrows(IllegalArgumentException.class, () -> RelativeWear.of(energy, energy, 0));
    }
}
