package groupwright.drivetrain.search;

import java.util.Arrays;

/**
 * Partial cassettes with the same last cog and the same future, before and after those that cannot end best are dropped.
 *
 * <p>One is dropped if another has a largest step ≤, every sum ≤ and at least one <em>sum</em> strictly less: sums stay
 * apart however both go on, while a smaller largest step may be drowned by a later one and then both end equal. Fully
 * equal ones become one label.
 */
final class Candidates {
    private int size;
    private int[] rank = new int[256];
    private long[] ln2 = new long[256];
    private int[] nm = new int[256];
    private int[] mg = new int[256];
    private int[] parent = new int[256];
    private long[] keys = new long[256];

    private int kept;
    private int[] keptLabel = new int[256];
    private int[] keptRank = new int[256];
    private long[] keptLn2 = new long[256];
    private int[] keptNm = new int[256];
    private int[] keptMg = new int[256];

    void clear() {
        size = 0;
    }

    void add(int worst, long ln2Sum, int nmSum, int mgSum, int from) {
        if (size == rank.length) {
            grow();
        }
        rank[size] = worst;
        ln2[size] = ln2Sum;
        nm[size] = nmSum;
        mg[size] = mgSum;
        parent[size] = from;
        size++;
    }

    private void grow() {
        int length = 2 * size;
        rank = Arrays.copyOf(rank, length);
        ln2 = Arrays.copyOf(ln2, length);
        nm = Arrays.copyOf(nm, length);
        mg = Arrays.copyOf(mg, length);
        parent = Arrays.copyOf(parent, length);
        keys = new long[length];
    }

    /** Drops and merges, and adds what is left to the labels; sorted, so that what follows finds sorted runs. */
    void keepIn(Labels labels, int teeth) {
        sort();
        kept = 0;
        int last = -1;
        for (int i = 0; i < size; i++) {
            int at = (int) keys[i];
            if (last >= 0 && compare(at, last) == 0) {
                merge(labels, at);
            } else if (!beaten(at)) {
                keep(labels, teeth, at);
                last = at;
            }
        }
    }

    /** Sums first: then whatever drops a candidate stands before it, and equal ones stand together. */
    private void sort() {
        for (int i = 0; i < size; i++) {
            keys[i] = i;
        }
        // TO BE MADE FAST
        Integer[] order = new Integer[size];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, this::compare);
        for (int i = 0; i < size; i++) {
            keys[i] = order[i];
        }
    }

    private int compare(int a, int b) {
        int order = Long.compare(ln2[a], ln2[b]);
        order = order != 0 ? order : Integer.compare(mg[a], mg[b]);
        order = order != 0 ? order : Integer.compare(nm[a], nm[b]);
        return order != 0 ? order : Integer.compare(rank[a], rank[b]);
    }

    private boolean beaten(int at) {
        int r = rank[at];
        long l = ln2[at];
        int n = nm[at];
        int m = mg[at];
        for (int k = 0; k < kept; k++) {
            if (keptMg[k] <= m
                    && keptNm[k] <= n
                    && keptRank[k] <= r
                    && (keptMg[k] < m || keptNm[k] < n || keptLn2[k] < l)) {
                return true;
            }
        }
        return false;
    }

    private void merge(Labels labels, int at) {
        labels.merge(keptLabel[kept - 1], parent[at]);
    }

    private void keep(Labels labels, int teeth, int at) {
        if (kept == keptRank.length) {
            keptLabel = Arrays.copyOf(keptLabel, 2 * kept);
            keptRank = Arrays.copyOf(keptRank, 2 * kept);
            keptLn2 = Arrays.copyOf(keptLn2, 2 * kept);
            keptNm = Arrays.copyOf(keptNm, 2 * kept);
            keptMg = Arrays.copyOf(keptMg, 2 * kept);
        }
        keptLabel[kept] = labels.add(teeth, rank[at], ln2[at], nm[at], mg[at], parent[at]);
        keptRank[kept] = rank[at];
        keptLn2[kept] = ln2[at];
        keptNm[kept] = nm[at];
        keptMg[kept] = mg[at];
        kept++;
    }
}
