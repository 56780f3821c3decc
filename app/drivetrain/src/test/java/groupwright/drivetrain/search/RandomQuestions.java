package groupwright.drivetrain.search;

import groupwright.drivetrain.Seeds;
import groupwright.drivetrain.mass.PlateMaterial;
import groupwright.drivetrain.mass.SprocketMass;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/** Small random questions with random objectives and limits, for comparison with trying all cassettes. */
record RandomQuestions(
        Span smallest, Span largest, Span count, Limits limits, Set<Objective> objectives, SprocketMass mass) {

    static RandomQuestions of(Random random) {
        int low = 8 + random.nextInt(5);
        int high = low + 6 + random.nextInt(11);
        int cogs = 3 + random.nextInt(4);
        Span smallest = random.nextBoolean() ? Span.of(low) : new Span(low, low + 1 + random.nextInt(2));
        Span largest = random.nextBoolean() ? Span.of(high) : new Span(high - 1 - random.nextInt(2), high);
        Span count = random.nextBoolean() ? Span.of(cogs) : new Span(cogs - 1, cogs);
        Set<Objective> objectives = EnumSet.noneOf(Objective.class);
        for (Objective objective : Objective.values()) {
            if (random.nextBoolean()) {
                objectives.add(objective);
            }
        }
        if (objectives.isEmpty()) {
            objectives.add(Objective.values()[random.nextInt(5)]);
        }
        return new RandomQuestions(
                smallest, largest, count, new Limits(limits(random, low, high, cogs)), objectives, mass(random));
    }

    /** Throws {@link Contradiction} where the random parts contradict one another. */
    Question question() {
        return new Question(smallest, largest, count, limits, objectives, mass);
    }

    private static List<Limit> limits(Random random, int low, int high, int cogs) {
        List<Limit> limits = new ArrayList<>();
        for (int i = random.nextInt(4); i > 0; i--) {
            limits.add(limit(random, low, high, cogs));
        }
        Collections.shuffle(limits, random);
        return limits;
    }

    private static Limit limit(Random random, int low, int high, int cogs) {
        int from = random.nextBoolean() ? 0 : low + random.nextInt(5);
        return switch (random.nextInt(11)) {
            case 0 -> new LargestStep(10 + random.nextInt(40), from);
            case 1 ->
                new StepsByPosition(IntStream.range(0, 1 + random.nextInt(cogs - 1))
                        .mapToObj(any -> random.nextInt(4) == 0
                                ? OptionalDouble.empty()
                                : OptionalDouble.of(15 + random.nextInt(30)))
                        .toList());
            case 2 -> new LargestJump(2 + random.nextInt(5));
            case 3 -> new ForcedCogs(teeth(random, low, high));
            case 4 -> new ForbiddenCogs(teeth(random, low + 1, high - 1));
            case 5 -> new WorstMismatch(Seeds.between(random, 0, 1.5), from);
            case 6 -> new LikePositions(1 + random.nextInt(2), low + random.nextInt(5));
            case 7 -> new JumpsNeverShrink();
            case 8 -> new DriverBody(low - 1 + random.nextInt(3));
            case 9 -> new StepShape.Growing(random.nextInt(10));
            default ->
                random.nextBoolean()
                        ? new StepShape.Constant(5 + random.nextInt(15))
                        : new StepShape.Drawn(
                                random.doubles(1 + random.nextInt(cogs - 1), 8, 30)
                                        .boxed()
                                        .toList(),
                                5 + random.nextInt(15));
        };
    }

    private static TreeSet<Integer> teeth(Random random, int low, int high) {
        var teeth = new TreeSet<Integer>();
        for (int i = 1 + random.nextInt(2); i > 0; i--) {
            teeth.add(low + random.nextInt(high - low + 1));
        }
        return teeth;
    }

    private static SprocketMass mass(Random random) {
        if (random.nextBoolean()) {
            return SprocketMass.ASSUMED;
        }
        return new SprocketMass(List.of(
                new SprocketMass.Group(0, 1.6, 0.5, PlateMaterial.STEEL),
                new SprocketMass.Group(13 + random.nextInt(4), 2.0, 0.4, PlateMaterial.TITANIUM),
                new SprocketMass.Group(18 + random.nextInt(4), 3.0, 0.4, PlateMaterial.ALUMINIUM)));
    }
}
