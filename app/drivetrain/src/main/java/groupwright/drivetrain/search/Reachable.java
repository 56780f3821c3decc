package groupwright.drivetrain.search;

/**
 * From where the end of a cassette can still be reached, so that nothing is built that leads nowhere.
 *
 * <p>Cost: O(cogs · teeth²), O(cogs · teeth³) where a limit looks back.
 */
final class Reachable {
    private final Target target;
    private final Admission admission;
    private final boolean[][] byTeeth;
    private final boolean[][][] byPair;

    Reachable(Target target) {
        this.target = target;
        admission = target.admission();
        int size = admission.high - admission.low + 1;
        int positions = target.count().most() + 1;
        byTeeth = new boolean[positions][size];
        byPair = new boolean[admission.looksBack() ? positions : 0][size][size];
        for (int position = target.count().most(); position >= 1; position--) {
            for (int teeth = target.smallest(); teeth <= target.largest().most(); teeth++) {
                fill(position, teeth);
            }
        }
    }

    private void fill(int position, int teeth) {
        int at = teeth - admission.low;
        boolean ends = target.endsAt(position, teeth);
        byTeeth[position][at] = ends || goesOn(position, 0, teeth);
        for (int before = target.smallest(); byPair.length > 0 && before < teeth; before++) {
            byPair[position][before - admission.low][at] =
                    ends || byTeeth[position][at] && goesOn(position, before, teeth);
        }
    }

    /** Whether a next cog leads to an end; {@code before} is 0 where the cog before is not asked for. */
    private boolean goesOn(int position, int before, int teeth) {
        for (int next = teeth + 1;
                position < target.count().most() && next <= target.largest().most();
                next++) {
            if (admission.step(position, teeth, next)
                    && at(position + 1, teeth, next)
                    && (before == 0 || admission.pair(before, teeth, next))) {
                return true;
            }
        }
        return false;
    }

    /** Whether an end can be reached with this cog at this position. */
    boolean at(int position, int teeth) {
        return byTeeth[position][teeth - admission.low];
    }

    /** The same where the cog before is known. */
    boolean at(int position, int before, int teeth) {
        return byPair.length == 0
                ? at(position, teeth)
                : byPair[position][before - admission.low][teeth - admission.low];
    }
}
