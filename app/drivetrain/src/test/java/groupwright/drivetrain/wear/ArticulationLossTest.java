package groupwright.drivetrain.wear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.drivetrain.Seeds;
import groupwright.drivetrain.gearing.Gear;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class ArticulationLossTest {
    private static final Pulleys PULLEYS = new Pulleys(12, 14);
    private static final ChainFriction CHAIN = ChainFriction.ASSUMED;

    private static double efficiency(int ring, int cog, double powerW) {
        return ArticulationLoss.of(Gear.of(ring, cog), PULLEYS, CHAIN, powerW, 80)
                .efficiency();
    }

    private static Gear gear(Random random) {
        return Gear.of(22 + random.nextInt(35), 10 + random.nextInt(42));
    }

    private static Pulleys pulleys(Random random) {
        return new Pulleys(10 + random.nextInt(10), 10 + random.nextInt(10));
    }

    private static ChainFriction chain(Random random) {
        return new ChainFriction(
                Seeds.between(random, 0.03, 0.2), Seeds.between(random, 1, 3), 12.7, Seeds.between(random, 1, 20));
    }

    @Test
    void withoutSlackTensionTheLossIsAFixedShare() {
        // by hand: 0.1 · 2 / 12.7 · 2 pi (1 / 40 + 1 / 20) = 0.0157480 · 0.4712389 = 0.00742108 of 200 W
        var chain = new ChainFriction(0.1, 2, 12.7, 0);
        ArticulationLoss loss = ArticulationLoss.of(Gear.of(40, 20), new Pulleys(10, 10), chain, 200, 90);
        assertEquals(1.484217, loss.tightW(), 1e-6);
        assertEquals(0, loss.slackW());
        assertEquals(1 - 0.00742108, loss.efficiency(), 1e-8);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void theLossIsTheWorkOfEightBendsTimesLinksASecond(long seed) {
        var random = new Random(seed);
        Gear gear = gear(random);
        Pulleys pulleys = pulleys(random);
        ChainFriction chain = chain(random);
        double power = Seeds.between(random, 30, 500);
        double rpm = Seeds.between(random, 40, 120);
        double slack = chain.slackTensionN();
        double links = gear.ring().teeth() * rpm / 60;
        double tight = power / (links * 0.0127) + slack;
        double perLink = Articulation.workJ(chain, tight, gear.cog().teeth())
                + Articulation.workJ(chain, tight, gear.ring().teeth())
                + Articulation.workJ(chain, slack, gear.ring().teeth())
                + 2 * Articulation.workJ(chain, slack, pulleys.tensionTeeth())
                + 2 * Articulation.workJ(chain, slack, pulleys.guideTeeth())
                + Articulation.workJ(chain, slack, gear.cog().teeth());
        ArticulationLoss loss = ArticulationLoss.of(gear, pulleys, chain, power, rpm);
        assertEquals(links * perLink, loss.lossW(), 1e-9 * loss.lossW());
    }

    /**
     * Trends of the table for a chain drive in Wilson, Bicycling Science, 3rd ed. 2004, p. 343 (24, 19, 13 teeth at 50 to
     * 400 W): efficiency rises with power, the larger cogs lie above the smallest. Levels are not compared: the table
     * includes losses that the model leaves out.
     */
    @ParameterizedTest
    @ValueSource(ints = {24, 19, 13})
    void efficiencyRisesWithPower(int cog) {
        double[] powers = {50, 100, 200, 400};
        for (int i = 0; i < powers.length; i++) {
            double efficiency = efficiency(42, cog, powers[i]);
            assertTrue(efficiency < 1);
            assertTrue(i == 0 || efficiency > efficiency(42, cog, powers[i - 1]));
            assertTrue(cog == 13 || efficiency > efficiency(42, 13, powers[i]));
        }
    }

    @Test
    void theLargerCogLosesLess() {
        // Spicer et al., Journal of Mechanical Design 123(4), 2001: 52-21 is more efficient than 52-11, by 2 to 5
        // points
        double points = 100 * (efficiency(52, 21, 150) - efficiency(52, 11, 150));
        assertTrue(points > 0 && points < 1, "less than measured, as the docstring says: " + points);
    }

    /** Spicer et al. 2001: efficiency falls linearly with the reciprocal of the tension. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void efficiencyIsLinearInTheReciprocalOfTheTension(long seed) {
        var random = new Random(seed);
        Gear gear = gear(random);
        Pulleys pulleys = pulleys(random);
        ChainFriction chain = chain(random);
        double speed = gear.ring().teeth() * 0.0127 * 80 / 60;
        double[] reciprocal = {1 / 1000.0, 1 / 400.0, 1 / 50.0};
        double[] efficiency = new double[3];
        for (int i = 0; i < 3; i++) {
            efficiency[i] = ArticulationLoss.of(gear, pulleys, chain, speed / reciprocal[i], 80)
                    .efficiency();
        }
        double first = (efficiency[1] - efficiency[0]) / (reciprocal[1] - reciprocal[0]);
        double second = (efficiency[2] - efficiency[1]) / (reciprocal[2] - reciprocal[1]);
        assertTrue(first < 0);
        assertEquals(first, second, 1e-8 * Math.abs(first));
    }

    /** At the same tension: Spicer et al. 2001, larger sprockets are more efficient. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void moreTeethAtTheSameTensionLoseLess(long seed) {
        var random = new Random(seed);
        Gear gear = gear(random);
        Pulleys pulleys = pulleys(random);
        ChainFriction chain = chain(random);
        double tension = Seeds.between(random, 20, 1500);
        double before = at(gear, pulleys, chain, tension);
        assertTrue(before < 1);
        int ring = gear.ring().teeth();
        int cog = gear.cog().teeth();
        assertTrue(at(Gear.of(ring, cog + 1), pulleys, chain, tension) > before);
        assertTrue(at(Gear.of(ring + 1, cog), pulleys, chain, tension) > before);
        var larger = new Pulleys(pulleys.guideTeeth() + 1, pulleys.tensionTeeth() + 1);
        assertTrue(at(gear, larger, chain, tension) > before);
    }

    private static double at(Gear gear, Pulleys pulleys, ChainFriction chain, double tensionN) {
        double power = tensionN * gear.ring().teeth() * 0.0127 * 80 / 60;
        return ArticulationLoss.of(gear, pulleys, chain, power, 80).efficiency();
    }

    @Test
    void noPowerIsLeftBelowZero() {
        ArticulationLoss loss = ArticulationLoss.of(Gear.of(42, 13), PULLEYS, CHAIN, 0.01, 80);
        assertTrue(loss.lossW() > loss.powerW());
        assertEquals(0, loss.efficiency());
    }

    @Test
    void nonsenseIsRefused() {
        Gear gear = Gear.of(42, 13);
        assertThrows(IllegalArgumentException.class, () -> ArticulationLoss.of(gear, PULLEYS, CHAIN, 0, 80));
        assertThrows(IllegalArgumentException.class, () -> ArticulationLoss.of(gear, PULLEYS, CHAIN, Double.NaN, 80));
        assertThrows(IllegalArgumentException.class, () -> ArticulationLoss.of(gear, PULLEYS, CHAIN, 200, 0));
        assertThrows(IllegalArgumentException.class, () -> new ChainFriction(0, 1.8, 12.7, 10));
        assertThrows(IllegalArgumentException.class, () -> new ChainFriction(1.1, 1.8, 12.7, 10));
        assertThrows(IllegalArgumentException.class, () -> new ChainFriction(0.1, 13, 12.7, 10));
        assertThrows(IllegalArgumentException.class, () -> new ChainFriction(0.1, 1.8, 12.7, -1));
        assertThrows(IllegalArgumentException.class, () -> new Pulleys(4, 11));
        assertThrows(IllegalArgumentException.class, () -> Articulation.angleRad(2));
        assertThrows(IllegalArgumentException.class, () -> Articulation.workJ(CHAIN, -1, 12));
    }
}
