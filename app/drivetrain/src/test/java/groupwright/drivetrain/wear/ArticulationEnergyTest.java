package groupwright.drivetrain.wear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import groupwright.drivetrain.Seeds;
import groupwright.drivetrain.gearing.Gear;
import groupwright.drivetrain.gearing.GearSet;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ArticulationEnergyTest {
    private static final ChainFriction CHAIN = ChainFriction.ASSUMED;
    private static final int BIG_FROM = 20;

    static RiddenGears ridden(Random random) {
        GearSet gears = Seeds.gearSet(random);
        List<GearWork> use = new ArrayList<>();
        for (Gear gear : gears.gears()) {
            use.add(new GearWork(gear, random.nextInt(4) == 0 ? 0 : Seeds.between(random, 1, 1e5)));
        }
        return new RiddenGears(use, Seeds.between(random, 1, 200));
    }

    private static int usedCogTeeth(RiddenGears ridden, int from, int below) {
        return ridden.use().stream()
                .filter(use -> use.workJ() > 0)
                .mapToInt(use -> use.gear().cog().teeth())
                .filter(teeth -> teeth >= from && teeth < below)
                .distinct()
                .sum();
    }

    private static int usedRingTeeth(RiddenGears ridden) {
        return ridden.use().stream()
                .filter(use -> use.workJ() > 0)
                .mapToInt(use -> use.gear().ring().teeth())
                .distinct()
                .sum();
    }

    @Test
    void threeGearsByHand() {
        // friction 0.127 and radius 1 mm on 12.7 mm make mu r / p = 0.01; energies in units of 0.01 · 2 pi J
        var chain = new ChainFriction(0.127, 1, 12.7, 10);
        var ridden = new RiddenGears(
                List.of(
                        new GearWork(Gear.of(40, 10), 1000), // cog 100, ring 25
                        new GearWork(Gear.of(40, 20), 2000), // cog 100, ring 50
                        new GearWork(Gear.of(30, 20), 600), // cog 30, ring 20
                        new GearWork(Gear.of(30, 50), 0)),
                2);
        double unit = 0.01 * 2 * Math.PI;
        ArticulationEnergy energy = ArticulationEnergy.of(ridden, 100, BIG_FROM, chain);
        assertEquals(unit * 325 / 100 / 2, energy.chainJ(), 1e-12);
        assertEquals(unit * 100 / 10 / 2, energy.smallCogsJ().orElseThrow(), 1e-12);
        assertEquals(unit * 130 / 20 / 2, energy.bigCogsJ().orElseThrow(), 1e-12); // the cog of 50 was not used
        assertEquals(unit * 95 / 70 / 2, energy.ringsJ().orElseThrow(), 1e-12);
    }

    /** The work is what the links rub on their way, however fast they went. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void speedDropsOut(long seed) {
        var random = new Random(seed);
        Gear gear = Gear.of(22 + random.nextInt(35), 10 + random.nextInt(42));
        double power = Seeds.between(random, 50, 400);
        double seconds = Seeds.between(random, 60, 6000);
        double speed = Seeds.between(random, 0.2, 2); // of the chain, in m/s
        double linksPassing = speed * seconds / 0.0127;
        double rubbed = linksPassing
                * (Articulation.workJ(CHAIN, power / speed, gear.cog().teeth())
                        + Articulation.workJ(CHAIN, power / speed, gear.ring().teeth()));
        var ridden = new RiddenGears(List.of(new GearWork(gear, power * seconds)), 7);
        double energy = ArticulationEnergy.of(ridden, 114, BIG_FROM, CHAIN).chainJ();
        assertEquals(rubbed / 114 / 7, energy, 1e-9 * energy);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void allPinsRubAsMuchAsAllTeeth(long seed) {
        RiddenGears ridden = ridden(new Random(seed));
        ArticulationEnergy energy = ArticulationEnergy.of(ridden, 110, BIG_FROM, CHAIN);
        double onTeeth = energy.smallCogsJ().orElse(0) * usedCogTeeth(ridden, 0, BIG_FROM)
                + energy.bigCogsJ().orElse(0) * usedCogTeeth(ridden, BIG_FROM, 100)
                + energy.ringsJ().orElse(0) * usedRingTeeth(ridden);
        assertEquals(110 * energy.chainJ(), onTeeth, 1e-9 * onTeeth);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void scaling(long seed) {
        var random = new Random(seed);
        RiddenGears ridden = ridden(random);
        ArticulationEnergy once = ArticulationEnergy.of(ridden, 60, BIG_FROM, CHAIN);
        ArticulationEnergy longChain = ArticulationEnergy.of(ridden, 120, BIG_FROM, CHAIN);
        assertEquals(once.chainJ() / 2, longChain.chainJ(), 1e-12 * once.chainJ());
        assertEquals(once.ringsJ(), longChain.ringsJ()); // each tooth meets the same links more rarely
        List<GearWork> twiceThere = new ArrayList<>(ridden.use());
        twiceThere.addAll(ridden.use());
        Collections.shuffle(twiceThere, random);
        ArticulationEnergy twice =
                ArticulationEnergy.of(new RiddenGears(twiceThere, 2 * ridden.km()), 60, BIG_FROM, CHAIN);
        for (WornPart part : WornPart.values()) {
            double expected = once.of(part).orElse(-1);
            assertEquals(expected, twice.of(part).orElse(-1), 1e-9 * Math.abs(expected));
        }
        assertEquals(2 * ridden.workJ(), new RiddenGears(twiceThere, 1).workJ(), 1e-9 * ridden.workJ());
    }

    @Test
    void partsNotUsedHaveNoEnergy() {
        var coasted = new RiddenGears(List.of(new GearWork(Gear.of(40, 10), 0)), 5);
        ArticulationEnergy energy = ArticulationEnergy.of(coasted, 110, BIG_FROM, CHAIN);
        assertEquals(
                new ArticulationEnergy(0, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty()),
                energy);
    }

    @Test
    void nonsenseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new GearWork(Gear.of(40, 10), -1));
        assertThrows(IllegalArgumentException.class, () -> new GearWork(Gear.of(40, 10), Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new RiddenGears(List.of(), 0));
        var ridden = new RiddenGears(List.of(), 1);
        assertThrows(IllegalArgumentException.class, () -> ArticulationEnergy.of(ridden, 0, BIG_FROM, CHAIN));
    }
}
