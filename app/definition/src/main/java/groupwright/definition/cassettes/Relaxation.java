package groupwright.definition.cassettes;

import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Verdict;
import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.search.Progress;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * What would have to give way so that a cassette is left that misses nothing.
 *
 * @param parts the criteria that would have to be relaxed, each with the target that would do
 * @param cassette that would then miss nothing
 */
public record Relaxation(List<Part> parts, Cassette cassette) {
    public Relaxation {
        parts = List.copyOf(parts);
    }

    /**
     * One criterion and how far its target would have to move.
     *
     * @param criterion the criterion
     * @param target the target that the cassette would just meet: its own value
     * @param by how far that is from the target today, above 0, in the figure's unit
     * @param byPct the same in percent of the target; infinite for a target of 0
     */
    public record Part(OnCogs criterion, double target, double by, double byPct) {}

    /**
     * What trying every cassette brought.
     *
     * @param tried how many were judged
     * @param free those that miss nothing
     * @param example the first of these, in the order of trying
     * @param smallest the smallest relaxation: fewest criteria, then the smallest sum of percent; nothing where a cassette
     *     misses nothing, or none was tried
     * @param alone for each criterion whose relaxation alone would do, the smallest, least percent first
     * @param outOfReach for each criterion that every cassette misses, the nearest any comes, in the order of requirements
     */
    public record Outcome(
            long tried,
            long free,
            Optional<Cassette> example,
            Optional<Relaxation> smallest,
            List<Relaxation> alone,
            List<Part> outOfReach) {
        public Outcome {
            alone = List.copyOf(alone);
            outOfReach = List.copyOf(outOfReach);
        }
    }

    private static final Comparator<Relaxation> SMALLEST = Comparator.comparingInt(
                    (Relaxation relaxation) -> relaxation.parts().size())
            .thenComparingDouble(Relaxation::sumPct)
            .thenComparing(relaxation -> relaxation.cassette().toString());

    private double sumPct() {
        return parts.stream().mapToDouble(Part::byPct).sum();
    }

    /**
     * Tries cassettes, each against every criterion. Cost: one judgement for each cassette.
     *
     * @param judge against what
     * @param cassettes which
     * @param count how many there are, for the progress
     * @param progress told after each; may stop it
     * @throws groupwright.drivetrain.search.Cancelled if the progress says so
     */
    public static Outcome search(CassetteJudge judge, Iterator<Cassette> cassettes, long count, Progress progress) {
        long tried = 0;
        long free = 0;
        Optional<Cassette> example = Optional.empty();
        Optional<Relaxation> smallest = Optional.empty();
        Map<String, Relaxation> alone = new TreeMap<>();
        Map<String, Part> nearest = new TreeMap<>();
        Set<String> notMissed = new HashSet<>();
        while (cassettes.hasNext()) {
            progress.orStop();
            Judged judged = judge.judge(cassettes.next());
            tried++;
            progress.report(Math.min(tried, count), count);
            if (judged.missesNothing()) {
                free++;
                example = example.or(() -> Optional.of(judged.cassette()));
                continue;
            }
            Relaxation needed = of(judged);
            judged.held().stream()
                    .filter(held -> held.verdict().outcome() != Verdict.Outcome.MISSES)
                    .forEach(held -> notMissed.add(held.criterion().name()));
            needed.parts()
                    .forEach(part -> nearest.merge(
                            part.criterion().name(), part, (one, other) -> other.by() < one.by() ? other : one));
            if (smallest.isEmpty() || SMALLEST.compare(needed, smallest.get()) < 0) {
                smallest = Optional.of(needed);
            }
            if (needed.parts().size() == 1) {
                alone.merge(
                        needed.parts().get(0).criterion().name(),
                        needed,
                        (one, other) -> SMALLEST.compare(other, one) < 0 ? other : one);
            }
        }
        return new Outcome(
                tried,
                free,
                example,
                free > 0 ? Optional.empty() : smallest,
                alone.values().stream().sorted(SMALLEST).toList(),
                free > 0
                        ? List.of()
                        : nearest.values().stream()
                                .filter(part ->
                                        !notMissed.contains(part.criterion().name()))
                                .toList());
    }

    /** What a cassette would need relaxed. */
    static Relaxation of(Judged judged) {
        List<Part> parts = new ArrayList<>();
        for (Judged.Held held : judged.missed()) {
            Verdict verdict = held.verdict();
            double by = -verdict.margin();
            parts.add(new Part(
                    held.criterion(),
                    verdict.value() instanceof Quantity quantity ? quantity.value() : by,
                    by,
                    verdict.marginPct().map(pct -> -pct).orElse(Double.POSITIVE_INFINITY)));
        }
        return new Relaxation(parts, judged.cassette());
    }
}
