package groupwright.drivetrain.search;

import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.gearing.ShiftPositions;
import groupwright.drivetrain.gearing.Step;
import groupwright.drivetrain.quantity.Cog;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The objectives in whole numbers, lower being better, so that equal is equal.
 *
 * <p>Steps count by the exact rank of their ratio, ln² of a step in 1e-9, phase mismatch in nm, mass in mg. What is not
 * an objective is 0 everywhere and so never tells two cassettes apart.
 */
final class Scale {
    private static final double LN2_UNIT = 1e9;
    private static final double NM_PER_MM = 1e6;

    /** Finer than 1/19², so that within one end and count different sums stay different. */
    private static final long VARIANCE_UNITS = 1000;

    final int low;
    private final Question question;
    private final int[][] ratioRank;
    final int[][] rank;
    final long[][] ln2;
    final int[][] nm;
    final int[] mg;

    Scale(Question question) {
        this.question = question;
        low = question.smallest().least();
        int size = question.largest().most() - low + 1;
        ratioRank = ranks(low, size);
        rank = question.objectives().contains(Objective.LARGEST_STEP) ? ratioRank : new int[size][size];
        ln2 = new long[size][size];
        nm = new int[size][size];
        mg = new int[size];
        for (int a = 0; a < size; a++) {
            mg[a] = chosen(Objective.MASS) * question.mass().cogMg(new Cog(low + a));
            for (int b = a + 1; b < size; b++) {
                Step step = Step.of(low + a, low + b);
                ln2[a][b] = chosen(Objective.UNEVENNESS) * StrictMath.round(LN2_UNIT * step.ln() * step.ln());
                nm[a][b] = chosen(Objective.MISMATCH)
                        * (int) StrictMath.round(NM_PER_MM * ShiftPositions.phaseMismatchMm(step));
            }
        }
    }

    Set<Objective> objectives() {
        return question.objectives();
    }

    private int chosen(Objective objective) {
        return question.objectives().contains(objective) ? 1 : 0;
    }

    /** Ranks of all ratios between two of the cogs, the smallest 0, equal ratios alike. */
    private static int[][] ranks(int low, int size) {
        List<Step> steps = new ArrayList<>();
        for (int a = 0; a < size; a++) {
            for (int b = a + 1; b < size; b++) {
                steps.add(Step.of(low + a, low + b));
            }
        }
        steps.sort(Step::compareSize);
        int[][] ranks = new int[size][size];
        int rank = 0;
        for (int i = 0; i < steps.size(); i++) {
            rank += i > 0 && steps.get(i - 1).compareSize(steps.get(i)) < 0 ? 1 : 0;
            ranks[steps.get(i).smaller().teeth() - low][steps.get(i).larger().teeth() - low] = rank;
        }
        return ranks;
    }

    /**
     * The chosen objectives in their order.
     *
     * <p>Unevenness is compared by the variance of ln steps, (n · sum ln² - (ln range)²) / n² with n steps, in 1e-12: over
     * equal ends and count it ranks as sum ln² does.
     */
    long[] vector(Ends ends, int worstRank, long ln2Sum, int nmSum, int mgSum) {
        long[] vector = new long[question.objectives().size()];
        int i = 0;
        for (Objective objective : question.objectives()) {
            vector[i++] = switch (objective) {
                case LARGEST_STEP -> worstRank;
                case UNEVENNESS -> variance(ends, ln2Sum);
                case MISMATCH -> nmSum;
                case MASS -> mgSum;
                case GEAR_RANGE -> -ratioRank[ends.smallest() - low][ends.largest() - low];
            };
        }
        return vector;
    }

    private static long variance(Ends ends, long ln2Sum) {
        long n = ends.count() - 1L;
        double range = Step.of(ends.smallest(), ends.largest()).ln();
        long square = StrictMath.round(LN2_UNIT * range * range);
        return Math.floorDiv((n * ln2Sum - square) * VARIANCE_UNITS, n * n);
    }

    /** The vector of a cassette that lies within the question's ends and count. */
    long[] vector(Cassette cassette) {
        List<Cog> cogs = cassette.cogs();
        int worst = 0;
        long ln2Sum = 0;
        int nmSum = 0;
        int mgSum = mg[cogs.get(0).teeth() - low];
        for (int i = 1; i < cogs.size(); i++) {
            int a = cogs.get(i - 1).teeth() - low;
            int b = cogs.get(i).teeth() - low;
            worst = Math.max(worst, rank[a][b]);
            ln2Sum += ln2[a][b];
            nmSum += nm[a][b];
            mgSum += mg[b];
        }
        return vector(Ends.of(cassette), worst, ln2Sum, nmSum, mgSum);
    }
}
