package groupwright.drivetrain.derailleur;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.drivetrain.Seeds;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every derailleur. */
class ClosurePropertiesTest {
    private static final int MECHANISMS = 50; // for each of a hundred seeds

    /** The position is measured again from its tangent points and wraps, without the code that solved it. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void aChainThatClosesReallyDoes(long seed) {
        var random = new Random(seed);
        for (int i = 0; i < MECHANISMS; i++) {
            Mechanism mechanism = ExampleMechanism.random(random);
            ChainRun run = ExampleMechanism.randomRun(random);
            double links = ExampleMechanism.randomLinks(run, random);
            if (ChainClosure.solve(mechanism, run, links) instanceof Closure.Closes closes) {
                assertClosed(mechanism, run, links, closes.at());
            }
        }
    }

    private static void assertClosed(Mechanism mechanism, ChainRun run, double links, CagePosition at) {
        String what = mechanism + " " + run + " " + links;
        Spans spans = at.spans();
        double straight = 0;
        for (Span span : List.of(spans.upper(), spans.lower(), spans.cage(), spans.free())) {
            straight += span.lengthMm() / 12.7;
        }
        Wraps wraps = at.wrapsDeg();
        double arcs = (wraps.ring() * run.ringTeeth()
                        + wraps.cog() * run.cogTeeth()
                        + wraps.guide() * mechanism.guideTeeth()
                        + wraps.tension() * mechanism.tensionTeeth())
                / 360;
        assertEquals(links, straight + arcs, 1e-6, what);
        assertEquals(links, at.lengthPitches(), 1e-6, what);
        // tangents are square to the radius, and the arc between two of them is the wrap: clockwise but on the guide
        assertWrap(run.ringCentreMm(), spans.upper(), spans.lower(), -wraps.ring(), what);
        assertWrap(at.tensionMm(), spans.lower(), spans.cage(), -wraps.tension(), what);
        assertWrap(at.guideMm(), spans.cage(), spans.free(), wraps.guide(), what);
        assertWrap(Point.AXLE, spans.free(), spans.upper(), -wraps.cog(), what);
        double turn = mechanism.turnDeg(run.sideTravelMm(), run.fullTravelMm());
        assertTrue(at.cageAngleDeg() <= mechanism.stopForwardDeg() + turn + 1e-9, what);
        assertTrue(at.cageAngleDeg() >= mechanism.stopRearwardDeg() + turn - 1e-9, what);
        Point pivot = mechanism.pivotAt(run.sideTravelMm(), run.fullTravelMm());
        assertEquals(mechanism.guideOffsetMm(), pivot.distanceMm(at.guideMm()), 1e-9, what);
        assertEquals(mechanism.pulleyDistanceMm(), at.guideMm().distanceMm(at.tensionMm()), 1e-9, what);
        assertTrue(at.gap().pitchCirclesMm() > 0 && at.gap().tipsMm() < at.gap().pitchCirclesMm(), what);
        assertTrue(at.freeChain().tipsLinks() < at.freeChain().pitchCirclesLinks(), what);
    }

    private static void assertWrap(Point centre, Span arriving, Span leaving, double turnDeg, String what) {
        Point on = arriving.toMm();
        Point off = leaving.fromMm();
        double square = (on.xMm() - centre.xMm())
                        * (on.xMm() - arriving.fromMm().xMm())
                + (on.yMm() - centre.yMm()) * (on.yMm() - arriving.fromMm().yMm());
        assertEquals(0, square / arriving.lengthMm(), 1e-6, what);
        Point turned = on.turnedAbout(centre, turnDeg);
        assertEquals(0, turned.distanceMm(off), 1e-6, what);
    }

    /** Where lower run and free chain pull the cage forward; else it could not hold a chain. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void thePathLengthensRearwardsWhereverTheChainPullsTheCageForward(long seed) {
        var random = new Random(seed);
        for (int i = 0; i < MECHANISMS; i++) {
            Mechanism mechanism = ExampleMechanism.random(random);
            ChainRun run = ExampleMechanism.randomRun(random);
            Point pivot = mechanism.pivotAt(run.sideTravelMm(), run.fullTravelMm());
            Optional<CagePosition> before = Optional.empty();
            for (double deg = 0; deg > -200; deg -= 0.5) {
                Optional<CagePosition> now = ChainClosure.at(mechanism, run, deg, ToothTips.USUAL);
                if (before.isPresent() && now.isPresent() && pulls(before.get(), pivot) && pulls(now.get(), pivot)) {
                    assertTrue(
                            now.get().lengthPitches() > before.get().lengthPitches(),
                            mechanism + " " + run + " at " + deg);
                }
                before = now;
            }
        }
    }

    /**
     * Moment about the pivot for each newton of chain tension. Arcs on the pitch circle are longer than the pitches
     * counted on them, by up to 0.42 mm a radian (9 teeth). With a guide pulley within 60 mm of the pivot and 20 mm or
     * more of free chain that is worth up to 3 mm of moment.
     */
    private static boolean pulls(CagePosition at, Point pivot) {
        Span lower = at.spans().lower();
        Span free = at.spans().free();
        double moment = moment(pivot, lower.toMm(), lower.fromMm()) + moment(pivot, free.fromMm(), free.toMm());
        return moment > 3 && free.lengthMm() > 20;
    }

    private static double moment(Point about, Point at, Point towards) {
        double x = (towards.xMm() - at.xMm()) / at.distanceMm(towards);
        double y = (towards.yMm() - at.yMm()) / at.distanceMm(towards);
        return (at.xMm() - about.xMm()) * y - (at.yMm() - about.yMm()) * x;
    }

    /** For mechanisms of usual shape: pivot below the axle, guide pulley near it, stops within half a turn. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void moreLinksLeaveTheCageFurtherBack(long seed) {
        var random = new Random(seed);
        int cog = ExampleMechanism.COGS.get(random.nextInt(ExampleMechanism.COGS.size()));
        ChainRun run = ExampleMechanism.run(cog);
        Mechanism mechanism = ExampleMechanism.with(Seeds.between(random, -30, 5), Seeds.between(random, -165, -100));
        double before = Double.POSITIVE_INFINITY;
        int last = 0; // too tight, closes, slack or at the cog: never back
        for (int links = 96; links <= 130; links += 1) {
            Closure closure = ChainClosure.solve(mechanism, run, links);
            int now = closure instanceof Closure.TooTight ? 0 : closure instanceof Closure.Closes ? 1 : 2;
            assertTrue(now >= last, "%s links %d: %s".formatted(run, links, closure));
            if (closure instanceof Closure.Closes closes) {
                assertTrue(closes.at().cageAngleDeg() < before, run + " " + links);
                before = closes.at().cageAngleDeg();
            }
            last = now;
        }
        assertTrue(before < Double.POSITIVE_INFINITY && last == 2, "none closed: " + run);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void anAnswerIsNeverNaNHoweverOddTheMechanism(long seed) {
        var random = new Random(seed);
        for (int i = 0; i < MECHANISMS; i++) {
            Mechanism mechanism = odd(random);
            ChainRun run = ExampleMechanism.randomRun(random);
            Closure closure = ChainClosure.solve(mechanism, run, Seeds.between(random, 1, 300));
            String text = closure + " " + ChainClosure.range(mechanism, run, ToothTips.USUAL);
            assertFalse(text.contains("NaN") || text.contains("Infinity"), mechanism + " " + run + " " + text);
            if (closure instanceof Closure.TooTight tight) {
                assertTrue(tight.lacksMm() > 0, mechanism + " " + run);
            } else if (closure instanceof Closure.Slack slack) {
                assertTrue(slack.hangsMm() > 0, mechanism + " " + run);
            }
        }
    }

    private static Mechanism odd(Random random) {
        double forward = Seeds.between(random, -720, 720);
        double rearward = Math.max(-720, forward - Seeds.between(random, 1e-9, 360));
        return new Mechanism(
                new Hanger(new Point(0, -28), Seeds.between(random, -180, 180)),
                new Point(Seeds.between(random, -300, 300), Seeds.between(random, -300, 300)),
                Seeds.between(random, -360, 360),
                random.nextBoolean() ? 80 : 0,
                random.nextBoolean() ? 0 : 200,
                Seeds.between(random, -360, 360),
                Seeds.between(random, 163, 300),
                6 + random.nextInt(35),
                6 + random.nextInt(35),
                forward,
                Math.min(rearward, forward - 1e-9),
                new UpperPivot.Turning(Seeds.between(random, -90, 90), Seeds.between(random, -90, 90)));
    }
}
