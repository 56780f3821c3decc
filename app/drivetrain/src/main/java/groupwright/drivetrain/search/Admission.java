package groupwright.drivetrain.search;

import java.util.ArrayList;
import java.util.List;

/** The limits as tables: which ends and which steps are admitted, and what has to be asked about pairs of steps. */
final class Admission {
    final int low;
    final int high;
    final int cogs;
    private final boolean[][] ends;
    private final boolean[][][] steps;
    private final List<Limit> pairs;
    private final List<Limit> byEnds;

    private Admission(Admission from, List<Limit> pairs, List<Limit> byEnds, Limit limit) {
        low = from.low;
        high = from.high;
        cogs = from.cogs;
        this.pairs = pairs;
        this.byEnds = byEnds;
        ends = new boolean[high - low + 1][high - low + 1];
        steps = new boolean[cogs][high - low + 1][high - low + 1];
        for (int a = low; a < high; a++) {
            for (int b = a + 1; b <= high; b++) {
                ends[a - low][b - low] = from.ends[a - low][b - low] && limit.admitsEnds(a, b);
                for (int position = 1; position < cogs; position++) {
                    steps[position][a - low][b - low] =
                            from.steps[position][a - low][b - low] && limit.admitsStep(position, a, b);
                }
            }
        }
    }

    private Admission(int low, int high, int cogs) {
        this.low = low;
        this.high = high;
        this.cogs = cogs;
        pairs = List.of();
        byEnds = List.of();
        ends = new boolean[high - low + 1][high - low + 1];
        steps = new boolean[cogs][high - low + 1][high - low + 1];
        for (int a = 0; a < high - low; a++) {
            for (int b = a + 1; b <= high - low; b++) {
                ends[a][b] = true;
                for (int position = 1; position < cogs; position++) {
                    steps[position][a][b] = true;
                }
            }
        }
    }

    /** Everything within the question's ends and count. */
    static Admission ofAll(Question question) {
        return new Admission(
                question.smallest().least(),
                question.largest().most(),
                question.count().most());
    }

    /** All limits of the question. */
    static Admission of(Question question) {
        Admission admission = ofAll(question);
        for (Limit limit : question.limits().all()) {
            admission = admission.and(limit);
        }
        return admission;
    }

    Admission and(Limit limit) {
        return new Admission(
                this,
                limit.reach() == Limit.Reach.STEP_BEFORE ? plus(pairs, limit) : pairs,
                limit.reach() == Limit.Reach.ENDS ? plus(byEnds, limit) : byEnds,
                limit);
    }

    private static List<Limit> plus(List<Limit> limits, Limit limit) {
        List<Limit> more = new ArrayList<>(limits);
        more.add(limit);
        return more;
    }

    /** The tables for cassettes with these ends and count; differs from this only if a limit depends on them. */
    Admission forCassettes(int smallest, int largest, int count) {
        Admission admission = this;
        for (Limit limit : byEnds) {
            admission = new Admission(admission, pairs, List.of(), limit.forCassettes(smallest, largest, count));
        }
        return admission;
    }

    boolean dependsOnEnds() {
        return !byEnds.isEmpty();
    }

    boolean looksBack() {
        return !pairs.isEmpty();
    }

    boolean ends(int smallest, int largest) {
        return ends[smallest - low][largest - low];
    }

    boolean step(int position, int smaller, int larger) {
        return steps[position][smaller - low][larger - low];
    }

    boolean pair(int before, int middle, int after) {
        for (Limit limit : pairs) {
            if (!limit.admitsPair(before, middle, after)) {
                return false;
            }
        }
        return true;
    }
}
