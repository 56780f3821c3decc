package groupwright.benchmarks;

/** Lists every cassette that keeps the limit. */
final class TryingAll {
    private final StepTable table;
    private final int cogs;
    private final double[][] pct;
    private final long[][][] sums;
    private final UnbeatenValues best = new UnbeatenValues();

    TryingAll(StepTable table, int cogs) {
        this.table = table;
        this.cogs = cogs;
        pct = new double[table.high + 1][table.high + 1];
        sums = new long[table.high + 1][table.high + 1][];
        for (int a = table.low; a < table.high; a++) {
            for (int b = a + 1; b <= table.high; b++) {
                pct[a][b] = table.pct(a, b);
                sums[a][b] = table.sums(a, b);
            }
        }
    }

    int values() {
        grow(1, table.low, new double[] {0, 0, 0, table.milligrams(table.low)});
        return best.size();
    }

    private void grow(int position, int last, double[] values) {
        if (position == cogs) {
            best.offer(values);
            return;
        }
        int left = cogs - position - 1;
        for (int next = left == 0 ? table.high : last + 1; next <= table.high - left; next++) {
            if (pct[last][next] <= table.mostPct) {
                long[] more = sums[last][next];
                grow(position + 1, next, new double[] {
                    Math.max(values[0], pct[last][next]), values[1] + more[0], values[2] + more[1], values[3] + more[2]
                });
            }
        }
    }
}
