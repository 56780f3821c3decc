package groupwright.drivetrain.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.gearing.ShiftPositions;
import groupwright.drivetrain.gearing.SideTravel;
import groupwright.drivetrain.gearing.Step;
import groupwright.drivetrain.gearing.Steps;
import groupwright.drivetrain.quantity.Chainring;
import groupwright.drivetrain.quantity.Cog;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What comes with the set: order, progress, where a cassette stands, neighbours, columns, what is shown. */
class CassetteSearchTest {
    private static final Question ELEVEN = Question.of(
                    10, 45, 11, Objective.LARGEST_STEP, Objective.UNEVENNESS, Objective.MISMATCH, Objective.MASS)
            .with(Limits.of(new LargestStep(22, 0)));

    private static final BestSet BEST = CassetteSearch.find(ELEVEN, Progress.NONE);

    /** Remembers what it is told, and stops after so many reports. */
    private static final class Watch implements Progress {
        private final int most;
        private final List<Long> done = new ArrayList<>();
        private long total;

        Watch(int most) {
            this.most = most;
        }

        @Override
        public void report(long nowDone, long nowTotal) {
            done.add(nowDone);
            total = nowTotal;
        }

        @Override
        public boolean cancelled() {
            return done.size() >= most;
        }
    }

    @Test
    void progressGoesUpToTheWhole() {
        var watch = new Watch(Integer.MAX_VALUE);
        CassetteSearch.find(ELEVEN, watch);
        assertEquals(watch.done.stream().sorted().distinct().toList(), watch.done);
        assertEquals(watch.total, watch.done.get(watch.done.size() - 1));
    }

    /** With fixed ends the other cogs are any of those between: a binomial coefficient (elementary combinatorics). */
    @Test
    void candidatesAreABinomialCoefficient() {
        Question question = Question.of(10, 52, 12, Objective.MASS);
        assertEquals(BigInteger.valueOf(1_121_099_408), Coverage.of(question).candidates()); // 41 over 10
        // over all largest cogs: any 10 of the 42 cogs from 11 to 52, the largest among them
        Question wide = Question.of(Span.of(10), new Span(20, 52), Span.of(11), Objective.MASS);
        assertEquals(BigInteger.valueOf(1_471_442_973), Coverage.of(wide).candidates());
    }

    @Test
    void aSearchStopsWhenItIsTold() {
        var watch = new Watch(3);
        assertThrows(Cancelled.class, () -> CassetteSearch.find(ELEVEN, watch));
        assertEquals(3, watch.done.size());
    }

    @Test
    void theOrderIsByObjectivesAndThenByCogsFromTheLargestDown() {
        Comparator<Found> byCogs = Comparator.comparing(found -> {
            List<Integer> cogs = new ArrayList<>(
                    found.cassette().cogs().stream().map(Cog::teeth).toList());
            Collections.reverse(cogs);
            return cogs.toString(); // two digits each, so that text and numbers sort alike
        });
        Question question = Question.of(new Span(10, 12), new Span(20, 24), new Span(4, 7), Objective.LARGEST_STEP)
                .with(Limits.of(ForbiddenCogs.of(List.of(13, 14, 15))));
        List<Found> found =
                CassetteSearch.find(question, Progress.NONE).stream().toList();
        Comparator<Found> order = Comparator.<Found>comparingInt(
                        one -> one.cassette().smallest().teeth())
                .thenComparingInt(one -> one.cassette().largest().teeth())
                .thenComparingInt(one -> one.cassette().cogs().size())
                .thenComparingDouble(one -> one.values().largestStepPct())
                .thenComparing(byCogs);
        assertTrue(found.size() > 100, "ties to be ordered: " + found.size());
        assertEquals(found.stream().sorted(order).toList(), found);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void eachCassetteOfTheSetKeepsTheIdentities(long seed) {
        Found found = BEST.get(new Random(seed).nextLong(BEST.count()));
        List<Step> steps = Steps.of(found.cassette());
        double product =
                steps.stream().mapToDouble(step -> 1 + step.pct() / 100).reduce(1, (a, b) -> a * b);
        assertEquals(4.5, product, 1e-9);
        assertEquals(450, found.values().gearRangePct(), 1e-9);
        assertTrue(found.values().largestStepPct() <= 22);
        assertEquals(new Standing.Best(found), BEST.standing(found.cassette()));
        for (Step step : steps) {
            boolean divides =
                    step.smaller().teeth() % step.teeth() == 0 && step.larger().teeth() % step.teeth() == 0;
            assertEquals(divides, ShiftPositions.phaseMismatchMm(step) == 0);
        }
    }

    @Test
    void aBeatenCassetteIsToldByWhichAndByHowMuch() {
        Found best = BEST.get(0);
        Cassette worse = BEST.stream()
                .flatMap(found -> Neighbour.of(found.cassette(), ELEVEN).stream())
                .filter(neighbour -> neighbour.broken().isEmpty())
                .map(neighbour -> neighbour.found().cassette())
                .filter(cassette -> BEST.standing(cassette) instanceof Standing.Beaten)
                .findFirst()
                .orElseThrow();
        var beaten = (Standing.Beaten) BEST.standing(worse);
        assertEquals(ELEVEN.objectives(), beaten.lead().keySet());
        beaten.lead()
                .forEach((objective, lead) -> assertEquals(
                        beaten.cassette().values().in(objective)
                                - beaten.by().values().in(objective),
                        lead,
                        1e-12));
        assertTrue(beaten.lead().values().stream().anyMatch(lead -> lead > 0));
        assertEquals(
                Standing.Outside.class, BEST.standing(Cassette.of(10, 12, 45)).getClass());
        assertEquals(best.cassette().largest().teeth(), 45);
    }

    @Test
    void aBrokenLimitIsNamed() {
        Cassette steep = Cassette.of(10, 11, 12, 14, 16, 18, 20, 24, 30, 37, 45);
        var breaks = (Standing.Breaks) BEST.standing(steep);
        assertEquals("largest-step", breaks.limit().id());
        assertEquals("have no step above 22 %", breaks.limit().demand());
    }

    @Test
    void neighboursDifferInOneToothOfAnInnerCog() {
        Cassette cassette = Cassette.of(10, 11, 13, 15);
        List<Neighbour> neighbours = Neighbour.of(cassette, Question.of(10, 15, 4, Objective.MASS));
        // by hand: 11 can only grow, 13 can shrink or grow
        assertEquals(
                List.of(Cassette.of(10, 12, 13, 15), Cassette.of(10, 11, 12, 15), Cassette.of(10, 11, 14, 15)),
                neighbours.stream()
                        .map(neighbour -> neighbour.found().cassette())
                        .toList());
        Neighbour first = neighbours.get(0);
        assertEquals(11, first.from());
        assertEquals(12, first.to());
        // steps 10, 18.18, 15.38 % become 20, 8.33, 15.38 %
        assertEquals(20 - 200.0 / 11, first.change().get(Objective.LARGEST_STEP), 1e-12);
        assertTrue(first.change().get(Objective.MASS) > 0);
        assertEquals(0, first.change().get(Objective.GEAR_RANGE));
    }

    @Test
    void columnsAreThoseOfTheWorstPairAndTheWholeWidth() {
        // by hand: longest wait of 10-11 (1 like position) 60·10/(60·30) = 1/3 s, of 11-22 (11) 60·11/(60·30·11) = 1/30
        // s
        var use = new Columns.Use(new Chainring(30), 60, 3.5, new SideTravel.Extra(1, 1, 0.5));
        Columns columns = Columns.of(Cassette.of(10, 11, 22), use);
        assertEquals(1.0 / 3, columns.longestWaitS(), 1e-12);
        assertEquals(9.5, columns.sideTravelMm(), 1e-12);
    }

    @Test
    void whatIsShownHoldsEachObjectivesBestAndBothEnds() {
        assertTrue(BEST.count() > 60, "enough to choose from: " + BEST.count());
        Spread spread = Spread.of(BEST, 20);
        assertEquals(BEST.count(), spread.outOf());
        assertTrue(
                spread.shown().size() <= 20 && spread.shown().size() >= 18,
                spread.shown().size() + " shown");
        List<Found> all = BEST.stream().toList();
        for (Objective objective : ELEVEN.objectives()) {
            Comparator<Found> better =
                    Comparator.comparingDouble(found -> found.values().in(objective));
            double least = all.stream().min(better).orElseThrow().values().in(objective);
            assertEquals(
                    least,
                    spread.shown().stream().min(better).orElseThrow().values().in(objective),
                    1e-6);
        }
        assertTrue(spread.shown().contains(all.get(all.size() - 1)));
        assertEquals(
                spread.shown(), all.stream().filter(spread.shown()::contains).toList(), "in the order of the set");
        assertEquals(all, Spread.of(BEST, 10_000).shown());
    }

    @Test
    void whatIsShownOfManyEqualOnesIsSpreadToo() {
        // without 11 and 12 the first step is the largest, whatever follows
        Question question =
                Question.of(10, 40, 11, Objective.LARGEST_STEP).with(Limits.of(ForbiddenCogs.of(List.of(11, 12))));
        BestSet ties = CassetteSearch.find(question, Progress.NONE);
        Spread spread = Spread.of(ties, 50);
        assertTrue(ties.count() > 1000, "many ties: " + ties.count());
        assertEquals(50, spread.shown().size());
        assertEquals(1, ties.values());
        assertFalse(IntStream.range(0, 50).allMatch(i -> spread.shown().get(i).equals(ties.get(i))));
    }
}
