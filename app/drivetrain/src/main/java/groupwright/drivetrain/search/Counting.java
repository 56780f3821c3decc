package groupwright.drivetrain.search;

import java.math.BigInteger;

/**
 * Counts cassettes without listing them.
 *
 * <p>Cost: O(cogs · teeth²) for each smallest cog, O(cogs · teeth³) with a limit on pairs of steps.
 */
final class Counting {
    private Counting() {}

    /** How many cassettes of the question the limits in the tables admit. */
    static BigInteger admitted(Question question, Admission admission) {
        BigInteger sum = BigInteger.ZERO;
        for (Target target : Target.of(question, admission)) {
            sum = sum.add(target.admission().looksBack() ? withPairs(target) : byStep(target));
        }
        return sum;
    }

    // One cassette in each end and count: at most C(74, 18) < 2^57 of them, so that a long holds each entry exactly.
    private static BigInteger byStep(Target target) {
        Admission admission = target.admission();
        int low = admission.low;
        BigInteger sum = BigInteger.ZERO;
        long[] ways = new long[admission.high - low + 1];
        ways[target.smallest() - low] = 1;
        for (int position = 1; position <= target.count().most(); position++) {
            sum = sum.add(ended(target, position, ways));
            long[] next = new long[ways.length];
            for (int a = target.smallest(); position < target.count().most() && a < admission.high; a++) {
                for (int b = a + 1; ways[a - low] > 0 && b <= admission.high; b++) {
                    next[b - low] += admission.step(position, a, b) ? ways[a - low] : 0;
                }
            }
            ways = next;
        }
        return sum;
    }

    private static BigInteger withPairs(Target target) {
        Admission admission = target.admission();
        int low = admission.low;
        int size = admission.high - low + 1;
        BigInteger sum = BigInteger.ZERO;
        long[][] ways = new long[size][size]; // by the cog before, the cog
        for (int b = target.smallest() + 1; b <= admission.high; b++) {
            ways[target.smallest() - low][b - low] = admission.step(1, target.smallest(), b) ? 1 : 0;
        }
        for (int position = 2; position <= target.count().most(); position++) {
            long[] here = new long[size];
            long[][] next = new long[size][size];
            for (int before = low; before <= admission.high; before++) {
                for (int at = before + 1; at <= admission.high; at++) {
                    long count = ways[before - low][at - low];
                    here[at - low] += count;
                    for (int after = at + 1;
                            position < target.count().most() && count > 0 && after <= admission.high;
                            after++) {
                        if (admission.step(position, at, after) && admission.pair(before, at, after)) {
                            next[at - low][after - low] += count;
                        }
                    }
                }
            }
            sum = sum.add(ended(target, position, here));
            ways = next;
        }
        return sum;
    }

    private static BigInteger ended(Target target, int position, long[] ways) {
        BigInteger sum = BigInteger.ZERO;
        int low = target.admission().low;
        for (int teeth = target.largest().least(); teeth <= target.largest().most(); teeth++) {
            if (teeth >= low && target.endsAt(position, teeth)) {
                sum = sum.add(BigInteger.valueOf(ways[teeth - low]));
            }
        }
        return sum;
    }
}
