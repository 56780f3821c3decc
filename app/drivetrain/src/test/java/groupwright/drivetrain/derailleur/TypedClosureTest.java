package groupwright.drivetrain.derailleur;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a chain does that does not close, and what is refused. */
class TypedClosureTest {
    @Test
    void aChainTooShortLacksWhatThePathIsLonger() {
        // 116 links hold the cage at -29.112 degrees on the largest cog; a stop there leaves 114 links 2 short
        Mechanism stopped = ExampleMechanism.with(-29.112, -150);
        var tight =
                assertInstanceOf(Closure.TooTight.class, ChainClosure.solve(stopped, ExampleMechanism.run(50), 114));
        assertEquals(-29.112, tight.atForwardStop().cageAngleDeg(), 1e-9);
        assertEquals(2 * 12.7, tight.lacksMm(), 0.002);
    }

    @Test
    void aChainTooLongHangsByWhatThePathIsShorter() {
        Mechanism stopped = ExampleMechanism.with(20, -137.585);
        var slack = assertInstanceOf(Closure.Slack.class, ChainClosure.solve(stopped, ExampleMechanism.run(10), 118));
        assertEquals(-137.585, slack.atRearwardStop().cageAngleDeg(), 1e-9);
        assertEquals(2 * 12.7, slack.hangsMm(), 0.002);
    }

    @Test
    void bothEndsOfTheCage() {
        PathRange range = ChainClosure.range(
                        ExampleMechanism.with(-29.112, -60), ExampleMechanism.run(50), ToothTips.USUAL)
                .orElseThrow();
        assertEquals(116, range.foremost().lengthPitches(), 0.001);
        assertEquals(-60, range.rearmost().cageAngleDeg(), 1e-9);
        assertEquals(
                range.rearmost().lengthPitches() - range.foremost().lengthPitches(), range.takesUpPitches(), 1e-12);
        assertTrue(range.takesUpPitches() > 2);
    }

    /** Too long a chain lets the cage swing back until the guide pulley lies on the cog. */
    @Test
    void thePulleyMeetsTheCogOnTheWayBack() {
        Closure closure = ChainClosure.solve(ExampleMechanism.mechanism(), ExampleMechanism.run(50), 130);
        var meets = assertInstanceOf(Closure.PulleyMeetsCog.class, closure);
        assertEquals(0, meets.touching().orElseThrow().gap().pitchCirclesMm(), 1e-6);
        assertEquals(meets.cageAngleDeg(), meets.touching().orElseThrow().cageAngleDeg(), 1e-9);
        assertTrue(meets.cageAngleDeg() < -29.112, meets.toString());
    }

    /** The path leads to the axle: at the largest cog the pivot stands within it, whatever the cage does. */
    @Test
    void thePathDrivesThePulleyIntoTheCog() {
        Mechanism towardsAxle = new Mechanism(
                ExampleMechanism.HANGER,
                new Point(0, -110),
                90,
                70,
                20,
                -93,
                100,
                14,
                14,
                20,
                -160,
                new UpperPivot.Fixed());
        var meets = assertInstanceOf(
                Closure.PulleyMeetsCog.class, ChainClosure.solve(towardsAxle, ExampleMechanism.run(50), 116));
        assertEquals(20, meets.cageAngleDeg(), 1e-9);
        assertEquals(Optional.empty(), meets.touching());
        assertEquals(Optional.empty(), ChainClosure.range(towardsAxle, ExampleMechanism.run(50), ToothTips.USUAL));
    }

    /** The cage stands on the ring: neither tight nor slack. */
    @Test
    void aCageOnTheRingHasNoPath() {
        Mechanism onRing = new Mechanism(
                ExampleMechanism.HANGER,
                new Point(400, -60),
                0,
                0,
                10,
                -90,
                60,
                14,
                14,
                0,
                -90,
                new UpperPivot.Fixed());
        var none = assertInstanceOf(Closure.NoPath.class, ChainClosure.solve(onRing, ExampleMechanism.run(10), 116));
        assertEquals(Closure.Obstacle.WHEELS_OVERLAP, none.why());
    }

    @Test
    void aPulleyBehindTheCogLetsTheChainOff() {
        Mechanism above = new Mechanism(
                ExampleMechanism.HANGER,
                new Point(200, 100),
                0,
                0,
                10,
                -90,
                60,
                14,
                14,
                60,
                40,
                new UpperPivot.Fixed());
        var none = assertInstanceOf(Closure.NoPath.class, ChainClosure.solve(above, ExampleMechanism.run(10), 116));
        assertEquals(Closure.Obstacle.CHAIN_OFF_A_WHEEL, none.why());
    }

    @Test
    void absurdNumbersAreRefusedInOneSentence() {
        ChainRun run = ExampleMechanism.run(10);
        Mechanism mechanism = ExampleMechanism.mechanism();
        refused("the length of the chain", () -> ChainClosure.solve(mechanism, run, 0));
        refused("the length of the chain", () -> ChainClosure.solve(mechanism, run, Double.NaN));
        refused("the angle of the cage", () -> ChainClosure.at(mechanism, run, 1e9, ToothTips.USUAL));
        refused("a ring of 32", () -> new ChainRun(new Point(100, 0), 32, 50, 0, 40));
        refused("the side travel", () -> new ChainRun(new Point(435, 0), 32, 50, 41, 40));
        refused("teeth of a cog", () -> new ChainRun(new Point(435, 0), 32, 3, 0, 40));
        refused("the drop", () -> ChainRun.bottomBracket(400, 401));
        refused("the angle of the hanger", () -> new Hanger(new Point(0, 0), 181));
        refused("the distance of the hanger's bolt", () -> new Hanger(new Point(3000, 0), 0));
        refused("forward of the rear axle", () -> new Point(Double.NaN, 0));
        refused("the allowance", () -> new ToothTips(-1));
        refused("at the largest cog", () -> new UpperPivot.Turning(0, 91));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, 57, Double.NaN, 1e9})
    void coincidentPulleysAreRefused(double distanceMm) {
        refused("pulleys", () -> mechanism(14, distanceMm, 20, -160, 40));
    }

    @ParameterizedTest
    @CsvSource({
        "5, 100, 20, -160, 40, teeth of the guide pulley",
        "14, 100, -160, 20, 40, the rearward stop",
        "14, 100, 20, 20, 40, the rearward stop",
        "14, 100, 20, -341, 40, the rearward stop",
        "14, 100, NaN, -160, 40, the forward stop",
        "14, 100, 20, -160, 81, the slope",
        "14, 100, 20, -160, -1, the slope"
    })
    void aMechanismThatCannotBeIsRefused(
            int teeth, double distance, double forward, double rearward, double slope, String word) {
        refused(word, () -> mechanism(teeth, distance, forward, rearward, slope));
    }

    private static Mechanism mechanism(int teeth, double distance, double forward, double rearward, double slope) {
        return new Mechanism(
                ExampleMechanism.HANGER,
                new Point(-20, -74),
                -60,
                slope,
                38,
                -93,
                distance,
                teeth,
                14,
                forward,
                rearward,
                new UpperPivot.Fixed());
    }

    private static void refused(String word, Executable call) {
        String message = assertThrows(IllegalArgumentException.class, call).getMessage();
        assertTrue(message.contains(word), message);
    }
}
