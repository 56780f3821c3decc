package groupwright.drivetrain.search;

import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.gearing.ShiftPositions;
import groupwright.drivetrain.gearing.Step;
import groupwright.drivetrain.gearing.Steps;
import groupwright.drivetrain.quantity.Cog;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Tries all cassettes of a question and reads limits and objectives off each one, with nothing of the search. */
record AllCassettes(List<Cassette> cassettes) {

    static AllCassettes within(RandomQuestions ask) {
        List<Cassette> all = new ArrayList<>();
        for (int s = ask.smallest().least(); s <= ask.smallest().most(); s++) {
            grow(ask, new ArrayList<>(List.of(s)), all);
        }
        return new AllCassettes(all);
    }

    private static void grow(RandomQuestions ask, List<Integer> cogs, List<Cassette> all) {
        int last = cogs.get(cogs.size() - 1);
        if (ask.count().holds(cogs.size()) && ask.largest().holds(last)) {
            all.add(new Cassette(cogs.stream().map(Cog::new).toList()));
        }
        for (int next = last + 1;
                cogs.size() < ask.count().most() && next <= ask.largest().most();
                next++) {
            cogs.add(next);
            grow(ask, cogs, all);
            cogs.remove(cogs.size() - 1);
        }
    }

    AllCassettes keeping(Limit limit) {
        return new AllCassettes(
                cassettes.stream().filter(cassette -> keeps(cassette, limit)).toList());
    }

    static boolean keeps(Cassette cassette, Limit limit) {
        List<Integer> cogs = cassette.cogs().stream().map(Cog::teeth).toList();
        List<Step> steps = Steps.of(cassette);
        if (limit instanceof LargestStep rule) {
            return Steps.of(cassette, rule.fromTeeth()).stream().allMatch(step -> step.pct() <= rule.pct() + 1e-9);
        } else if (limit instanceof StepsByPosition rule) {
            return IntStream.range(0, Math.min(steps.size(), rule.pct().size()))
                    .allMatch(i -> steps.get(i).pct() <= rule.pct().get(i).orElse(1e9) + 1e-9);
        } else if (limit instanceof LargestJump rule) {
            return steps.stream().allMatch(step -> step.teeth() <= rule.teeth());
        } else if (limit instanceof ForcedCogs rule) {
            return cogs.containsAll(rule.teeth());
        } else if (limit instanceof ForbiddenCogs rule) {
            return cogs.stream().noneMatch(rule.teeth()::contains);
        } else if (limit instanceof WorstMismatch rule) {
            return Steps.of(cassette, rule.fromTeeth()).stream()
                    .allMatch(step -> ShiftPositions.phaseMismatchMm(step) <= rule.mm() + 1e-9);
        } else if (limit instanceof LikePositions rule) {
            return Steps.of(cassette, rule.fromTeeth()).stream()
                    .allMatch(step -> ShiftPositions.likePositions(step) >= rule.least());
        } else if (limit instanceof DriverBody rule) {
            return cogs.stream().allMatch(teeth -> teeth >= rule.smallestCog());
        } else if (limit instanceof JumpsNeverShrink) {
            return follow(steps, Step::teeth, 0);
        } else if (limit instanceof StepShape.Growing rule) {
            return follow(steps, Step::pct, rule.tolerancePoints() + 1e-9);
        } else if (limit instanceof StepShape.Constant rule) {
            double even = Steps.evenStepPct(steps).orElseThrow();
            return steps.stream().allMatch(step -> Math.abs(step.pct() - even) <= rule.tolerancePoints() + 1e-9);
        } else if (limit instanceof StepShape.Drawn rule) {
            return IntStream.range(0, Math.min(steps.size(), rule.targetsPct().size()))
                    .allMatch(i ->
                            Math.abs(steps.get(i).pct() - rule.targetsPct().get(i)) <= rule.tolerancePoints() + 1e-9);
        }
        throw new AssertionError("no rule for " + limit);
    }

    private static boolean follow(List<Step> steps, ToDoubleFunction<Step> size, double tolerance) {
        return IntStream.range(1, steps.size())
                .allMatch(i -> size.applyAsDouble(steps.get(i)) >= size.applyAsDouble(steps.get(i - 1)) - tolerance);
    }

    /** The cassettes that none beats, in no particular order. */
    List<Cassette> unbeaten(RandomQuestions ask) {
        List<Cassette> best = new ArrayList<>();
        boolean joint = ask.objectives().contains(Objective.GEAR_RANGE);
        Map<Object, List<Cassette>> groups =
                cassettes.stream().collect(Collectors.groupingBy(cassette -> joint ? "all" : Ends.of(cassette)));
        for (List<Cassette> group : groups.values()) {
            Map<Cassette, List<Double>> values = new HashMap<>();
            group.forEach(cassette -> values.put(cassette, values(cassette, ask)));
            for (Cassette cassette : group) {
                if (group.stream().noneMatch(other -> beats(values.get(other), values.get(cassette)))) {
                    best.add(cassette);
                }
            }
        }
        return best;
    }

    static boolean beats(List<Double> one, List<Double> other) {
        return !one.equals(other) && IntStream.range(0, one.size()).allMatch(i -> one.get(i) <= other.get(i));
    }

    /** Lower is better; rounded as the search says it rounds, steps exactly: equal fractions are equal doubles. */
    static List<Double> values(Cassette cassette, RandomQuestions ask) {
        List<Step> steps = Steps.of(cassette);
        long n = steps.size();
        double range = Math.log(
                (double) cassette.largest().teeth() / cassette.smallest().teeth());
        long squares = steps.stream()
                .mapToLong(step -> Math.round(1e9 * step.ln() * step.ln()))
                .sum();
        List<Double> values = new ArrayList<>();
        for (Objective objective : ask.objectives()) {
            values.add(
                    switch (objective) {
                        case LARGEST_STEP ->
                            steps.stream().mapToDouble(Step::pct).max().orElseThrow();
                        case UNEVENNESS ->
                            ((double) Math.floorDiv(1000 * (n * squares - Math.round(1e9 * range * range)), n * n));
                        case MISMATCH ->
                            (double) steps.stream()
                                    .mapToLong(step -> Math.round(1e6 * ShiftPositions.phaseMismatchMm(step)))
                                    .sum();
                        case MASS ->
                            (double) cassette.cogs().stream()
                                    .mapToLong(
                                            cog -> Math.round(1000 * ask.mass().cogG(cog)))
                                    .sum();
                        case GEAR_RANGE ->
                            -(double) cassette.largest().teeth()
                                    / cassette.smallest().teeth();
                    });
        }
        return values;
    }
}
