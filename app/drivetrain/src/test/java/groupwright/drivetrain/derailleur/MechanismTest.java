package groupwright.drivetrain.derailleur;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import groupwright.drivetrain.Seeds;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class MechanismTest {
    @Test
    void aQuarterTurnOfTheHangerTurnsAllButTheCage() {
        // pivot 10 behind and 20 below the bolt at 5, -30; turned by 90 degrees: 20 ahead, 10 below, bolt at 7, -31
        Mechanism mechanism = made(new Hanger(new Point(5, -30), -90), new Point(-5, -50), new UpperPivot.Fixed());
        Mechanism other = mechanism.mountedOn(new Hanger(new Point(7, -31), 0));
        assertEquals(27, other.pivotMm().xMm(), 1e-12);
        assertEquals(-41, other.pivotMm().yMm(), 1e-12);
        assertEquals(mechanism.pathDirectionDeg() + 90, other.pathDirectionDeg());
        assertEquals(mechanism.stopForwardDeg() + 90, other.stopForwardDeg());
        assertEquals(mechanism.stopRearwardDeg() + 90, other.stopRearwardDeg());
        assertEquals(mechanism.guideAngleDeg(), other.guideAngleDeg());
    }

    @Test
    void thePivotFollowsItsPath() {
        // slope 45 degrees: 1 mm along the direction, here down, for each mm of side travel
        Mechanism mechanism = made(new Hanger(new Point(0, 0), -90), new Point(10, -50), new UpperPivot.Fixed());
        Point pivot = mechanism.pivotAt(12, 40);
        assertEquals(10, pivot.xMm(), 1e-12);
        assertEquals(-62, pivot.yMm(), 1e-12);
    }

    @Test
    void aTurningUpperPivotTurnsPivotAndStopsAboutTheBolt() {
        // half of the travel, half of -60 - 0 degrees; turned by -30 degrees about 0, 0
        Mechanism mechanism = made(new Hanger(new Point(0, 0), -90), new Point(0, -50), new UpperPivot.Turning(7, -53));
        assertEquals(-30, mechanism.turnDeg(20, 40), 1e-12);
        Point pivot = mechanism.pivotAt(20, 40); // 0, -70 on its path
        assertEquals(-35, pivot.xMm(), 1e-9);
        assertEquals(-35 * Math.sqrt(3), pivot.yMm(), 1e-9);
        assertEquals(mechanism.pivotMm(), mechanism.pivotAt(0, 40));
        assertEquals(0, mechanism.turnDeg(0, 0));
        // a chain too long for any cage comes to the stop, which has turned as well
        ChainRun run = new ChainRun(new Point(430, -40), 32, 12, 20, 40);
        var slack = assertInstanceOf(Closure.Slack.class, ChainClosure.solve(mechanism, run, 200));
        assertEquals(-80 - 30, slack.atRearwardStop().cageAngleDeg(), 1e-9);
    }

    private static Mechanism made(Hanger hanger, Point pivot, UpperPivot upper) {
        return new Mechanism(hanger, pivot, -90, 45, 20, -93, 100, 14, 14, -20, -80, upper);
    }

    /** Bike, hanger and ring turned together about the axle: the same picture from another side. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void aBikeTurnedAsAWholeClosesTheSame(long seed) {
        var random = new Random(seed);
        double deg = Seeds.between(random, -30, 30);
        Hanger hanger = ExampleMechanism.HANGER;
        Hanger turnedHanger = new Hanger(hanger.boltMm().turnedAbout(Point.AXLE, deg), hanger.angleDeg() + deg);
        Mechanism turned = ExampleMechanism.mechanism().mountedOn(turnedHanger);
        int cog = ExampleMechanism.COGS.get(random.nextInt(12));
        ChainRun run = ExampleMechanism.run(cog);
        ChainRun turnedRun = new ChainRun(
                run.ringCentreMm().turnedAbout(Point.AXLE, deg), 32, cog, run.sideTravelMm(), run.fullTravelMm());
        CagePosition here = closed(ExampleMechanism.mechanism(), run);
        CagePosition there = closed(turned, turnedRun);
        assertEquals(here.cageAngleDeg() + deg, there.cageAngleDeg(), 1e-8);
        assertEquals(here.gap().tipsMm(), there.gap().tipsMm(), 1e-8);
        assertEquals(0, here.tensionMm().turnedAbout(Point.AXLE, deg).distanceMm(there.tensionMm()), 1e-6);
    }

    private static CagePosition closed(Mechanism mechanism, ChainRun run) {
        return assertInstanceOf(Closure.Closes.class, ChainClosure.solve(mechanism, run, 116))
                .at();
    }

    /** Exact cotangents: of 45 degrees 1, of 30 degrees sqrt 3, of 15 degrees 2 + sqrt 3. */
    @ParameterizedTest
    @CsvSource({"4, 1.6", "6, 2.3320508075688772", "12, 4.3320508075688772"})
    void tipsOfTeeth(int teeth, double pitches) {
        assertEquals(12.7 / 2 * pitches, ToothTips.USUAL.radiusMm(teeth), 1e-9);
        assertEquals(12.7 / 2 * (pitches - 0.1), new ToothTips(0.5).radiusMm(teeth), 1e-9);
        assertEquals(0, new ToothTips(0).reachMm(teeth)); // the tips lie inside the pitch circle
    }

    /** Right triangles: the tangent to a circle of radius R ends on the one of radius Ro after sqrt(Ro² - R²). */
    @Test
    void freeChainAndGapBetweenTips() {
        CagePosition at = closed(ExampleMechanism.mechanism(), ExampleMechanism.run(24));
        double reach = 0;
        double out = 0;
        for (int teeth : new int[] {24, 14}) {
            double tip = 6.35 * (0.6 + 1 / Math.tan(Math.PI / teeth));
            double pitch = 6.35 / Math.sin(Math.PI / teeth);
            reach += Math.sqrt(tip * tip - pitch * pitch) / 12.7;
            out += tip - pitch;
        }
        assertEquals(at.freeChain().pitchCirclesLinks() - reach, at.freeChain().tipsLinks(), 1e-9);
        assertEquals(at.spans().free().lengthMm() / 12.7, at.freeChain().pitchCirclesLinks(), 1e-9);
        assertEquals(22.896 - out, at.gap().tipsMm(), 0.002);
    }

    @Test
    void theBottomBracketClosesARightTriangle() {
        assertEquals(new Point(400, -300), ChainRun.bottomBracket(500, 300));
        assertEquals(new Point(400, 300), ChainRun.bottomBracket(500, -300));
    }
}
