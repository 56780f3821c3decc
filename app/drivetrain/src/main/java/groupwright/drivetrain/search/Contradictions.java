package groupwright.drivetrain.search;

import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** Questions that contradict themselves in a way that one sentence can tell. */
final class Contradictions {
    private static final Span TEETH = new Span(5, 80);
    private static final Span COGS = new Span(2, 20);

    private Contradictions() {}

    static void refuse(Span smallest, Span largest, Span count, Limits limits, Set<Objective> objectives) {
        if (objectives.isEmpty()) {
            throw new Contradiction("no objective is chosen, so no cassette beats another; choose at least one");
        }
        within("the smallest cog", smallest, TEETH, "teeth");
        within("the largest cog", largest, TEETH, "teeth");
        within("the number of cogs", count, COGS, "cogs");
        ends(smallest, largest, count);
        limits.ofKind(DriverBody.class).forEach(body -> driverBody(body, smallest));
        forced(smallest, largest, count, limits);
        forbidden(smallest, largest, limits);
        reach(smallest, largest, count, limits);
        positions(count, limits);
    }

    private static void within(String what, Span span, Span bounds, String unit) {
        if (span.least() < bounds.least() || span.most() > bounds.most()) {
            throw new Contradiction(
                    "%s may be %d to %d %s, not %d to %d; keep within these bounds",
                    what, bounds.least(), bounds.most(), unit, span.least(), span.most());
        }
    }

    private static void ends(Span smallest, Span largest, Span count) {
        if (largest.most() <= smallest.least()) {
            throw new Contradiction(
                    "the largest cog, at most %d teeth, is not above the smallest, at least %d; swap or change the ends",
                    largest.most(), smallest.least());
        }
        int room = largest.most() - smallest.least() + 1;
        if (count.least() > room) {
            throw new Contradiction(
                    "%d cogs do not fit between %d and %d teeth, which leave room for %d; ask for fewer cogs or move the ends",
                    count.least(), smallest.least(), largest.most(), room);
        }
    }

    private static void driverBody(DriverBody body, Span smallest) {
        if (body.smallestCog() > smallest.most()) {
            throw new Contradiction(
                    "the driver body takes no cog below %d teeth, but the smallest cog may have at most %d; raise the smallest cog or choose another driver body",
                    body.smallestCog(), smallest.most());
        }
    }

    private static void forced(Span smallest, Span largest, Span count, Limits limits) {
        SortedSet<Integer> forced = new TreeSet<>();
        limits.ofKind(ForcedCogs.class).forEach(limit -> forced.addAll(limit.teeth()));
        SortedSet<Integer> forbidden = forbidden(limits);
        for (int teeth : forced) {
            if (forbidden.contains(teeth)) {
                throw new Contradiction("cog %d is both forced and forbidden; take it out of one list", teeth);
            }
            if (teeth < smallest.least() || teeth > largest.most()) {
                throw new Contradiction(
                        "forced cog %d lies outside %d to %d teeth; move the ends or take it out of the list",
                        teeth, smallest.least(), largest.most());
            }
        }
        if (forced.size() > count.most()) {
            throw new Contradiction(
                    "%d cogs are forced, but a cassette may have at most %d; force fewer or allow more cogs",
                    forced.size(), count.most());
        }
    }

    private static SortedSet<Integer> forbidden(Limits limits) {
        SortedSet<Integer> forbidden = new TreeSet<>();
        limits.ofKind(ForbiddenCogs.class).forEach(limit -> forbidden.addAll(limit.teeth()));
        return forbidden;
    }

    private static void forbidden(Span smallest, Span largest, Limits limits) {
        SortedSet<Integer> forbidden = forbidden(limits);
        if (all(smallest, forbidden::contains)) {
            throw new Contradiction(
                    "every smallest cog from %d to %d teeth is forbidden; allow one of them",
                    smallest.least(), smallest.most());
        }
        if (all(largest, forbidden::contains)) {
            throw new Contradiction(
                    "every largest cog from %d to %d teeth is forbidden; allow one of them",
                    largest.least(), largest.most());
        }
    }

    /** The narrowest ends with the most cogs must be reached by the largest jumps and steps allowed. */
    private static void reach(Span smallest, Span largest, Span count, Limits limits) {
        int steps = count.most() - 1;
        int teeth = largest.least() - smallest.most();
        limits.ofKind(LargestJump.class).forEach(jump -> {
            if (jump.teeth() * steps < teeth) {
                throw new Contradiction(
                        "%d jumps of at most %d teeth do not lead from %d to %d; allow larger jumps or more cogs",
                        steps, jump.teeth(), smallest.most(), largest.least());
            }
        });
        limits.ofKind(LargestStep.class)
                .filter(step -> step.fromTeeth() <= smallest.least())
                .forEach(step -> {
                    double reached = smallest.most() * StrictMath.pow(1 + (step.pct() + Limit.SLACK) / 100, steps);
                    if (reached < largest.least() - 1e-6) {
                        throw new Contradiction(
                                "%d steps of at most %s %% do not lead from %d to %d teeth; allow larger steps or more cogs",
                                steps, Demands.number(step.pct()), smallest.most(), largest.least());
                    }
                });
    }

    private static void positions(Span count, Limits limits) {
        IntStream.concat(
                        limits.ofKind(StepsByPosition.class)
                                .mapToInt(limit -> limit.pct().size()),
                        limits.ofKind(StepShape.Drawn.class)
                                .mapToInt(limit -> limit.targetsPct().size()))
                .filter(length -> length > count.most() - 1)
                .forEach(length -> {
                    throw new Contradiction(
                            "%d steps are given one by one, but a cassette of %d cogs has %d; shorten the list or allow more cogs",
                            length, count.most(), count.most() - 1);
                });
    }

    private static boolean all(Span span, IntPredicate test) {
        return IntStream.rangeClosed(span.least(), span.most()).allMatch(test);
    }
}
