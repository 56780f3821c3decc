package groupwright.definition.assessment;

import groupwright.definition.figure.Verdict;
import java.util.Comparator;
import java.util.List;

/**
 * The worst of several verdicts: a certain miss before missing input, missing input before a miss too close to call, that
 * before what meets; among equals the smallest margin, then the smallest subject.
 */
final class Worst {
    static final Comparator<Verdict> ORDER = Comparator.comparingInt(Worst::rank)
            .thenComparingDouble(verdict -> verdict.marginPct().orElse(verdict.margin()))
            .thenComparing(Verdict::at)
            .thenComparing(Verdict::criterion);

    private Worst() {}

    static Verdict of(List<Verdict> verdicts) {
        return verdicts.stream().min(ORDER).orElseThrow();
    }

    private static int rank(Verdict verdict) {
        boolean certain = verdict.certainty() == Verdict.Certainty.CERTAIN;
        return switch (verdict.outcome()) {
            case MISSES -> certain ? 0 : 2;
            case MISSING_INPUT -> 1;
            case MEETS -> certain ? 4 : 3;
        };
    }
}
