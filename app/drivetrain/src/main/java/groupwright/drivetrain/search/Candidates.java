package groupwright.drivetrain.search;

import java.util.Arrays;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Partial cassettes with the same last cog and the same future, before and after those that cannot end best are dropped.
 *
 * <p>One is dropped if another has a largest step ≤, every sum ≤ and at least one <em>sum</em> strictly less: sums stay
 * apart however both go on, while a smaller largest step may be drowned by a later one and then both end equal. Fully
 * equal ones become one label.
 */
final class Candidates {
    private static final int INDEX_BITS = 30;
    private static final long INDEX = (1L << INDEX_BITS) - 1;
    private static final int LONG_RUN = 40;

    private final Objective first;
    private int size;
    private int[] rank = new int[256];
    private long[] ln2 = new long[256];
    private int[] nm = new int[256];
    private int[] mg = new int[256];
    private int[] parent = new int[256];
    private long[] keys = new long[256];

    private int kept;
    private int[] keptRank = new int[256];
    private long[] keptLn2 = new long[256];
    private int[] keptNm = new int[256];
    private int[] keptMg = new int[256];

    /** Candidates that differ in these objectives only. */
    Candidates(Set<Objective> objectives) {
        first = Stream.of(Objective.UNEVENNESS, Objective.MASS, Objective.MISMATCH)
                .filter(objectives::contains)
                .findFirst()
                .orElse(Objective.LARGEST_STEP);
    }

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
        int lastLabel = -1;
        for (int i = 0; i < size; i++) {
            int at = at(i);
            if (last >= 0 && compare(at, last) == 0) {
                labels.merge(lastLabel, parent[at]);
            } else if (!beaten(at)) {
                lastLabel = labels.add(teeth, rank[at], ln2[at], nm[at], mg[at], parent[at]);
                keep(at);
                last = at;
            }
        }
    }

    private int at(int place) {
        return (int) (keys[place] & INDEX);
    }

    /**
     * Sums first: then whatever drops a candidate stands before it, and equal ones stand together.
     *
     * <p>A key holds the first value that tells candidates apart and below it the index, so that numbers are sorted and
     * only equal first values are compared further. Sum ln² is below 2^33: ln(80/5)² in 1e-9.
     */
    private void sort() {
        for (int i = 0; i < size; i++) {
            keys[i] = first(i) << INDEX_BITS | i;
        }
        Arrays.sort(keys, 0, size);
        for (int from = 0, to = 1; from < size; from = to++) {
            while (to < size && keys[to] >>> INDEX_BITS == keys[from] >>> INDEX_BITS) {
                to++;
            }
            if (to - from > LONG_RUN) {
                sortLong(from, to);
            } else {
                sortShort(from, to);
            }
        }
    }

    private long first(int i) {
        return switch (first) {
            case UNEVENNESS -> ln2[i];
            case MASS -> mg[i];
            case MISMATCH -> nm[i];
            default -> rank[i];
        };
    }

    private void sortShort(int from, int to) {
        for (int i = from + 1; i < to; i++) {
            long key = keys[i];
            int place = i;
            for (; place > from && compare(at(place - 1), (int) (key & INDEX)) > 0; place--) {
                keys[place] = keys[place - 1];
            }
            keys[place] = key;
        }
    }

    private void sortLong(int from, int to) {
        long[] sorted = Arrays.stream(keys, from, to)
                .boxed()
                .sorted((a, b) -> compare((int) (a & INDEX), (int) (b & INDEX)))
                .mapToLong(Long::longValue)
                .toArray();
        System.arraycopy(sorted, 0, keys, from, sorted.length);
    }

    private int compare(int a, int b) {
        int order = Long.compare(ln2[a], ln2[b]);
        order = order != 0 ? order : Integer.compare(mg[a], mg[b]);
        order = order != 0 ? order : Integer.compare(nm[a], nm[b]);
        return order != 0 ? order : Integer.compare(rank[a], rank[b]);
    }

    private boolean beaten(int at) {
        int r = rank[at];
        int n = nm[at];
        int m = mg[at];
        for (int k = 0; k < kept; k++) {
            if (keptMg[k] <= m && keptNm[k] <= n && keptRank[k] <= r && differentSums(k, at)) {
                bringForward(k);
                return true;
            }
        }
        return false;
    }

    private boolean differentSums(int k, int at) {
        return keptMg[k] < mg[at] || keptNm[k] < nm[at] || keptLn2[k] < ln2[at];
    }

    /** What has beaten one will beat the next: it is asked earlier from now on. */
    private void bringForward(int k) {
        int to = k / 2;
        swap(keptRank, k, to);
        swap(keptNm, k, to);
        swap(keptMg, k, to);
        long value = keptLn2[k];
        keptLn2[k] = keptLn2[to];
        keptLn2[to] = value;
    }

    private static void swap(int[] values, int a, int b) {
        int value = values[a];
        values[a] = values[b];
        values[b] = value;
    }

    private void keep(int at) {
        if (kept == keptRank.length) {
            keptRank = Arrays.copyOf(keptRank, 2 * kept);
            keptLn2 = Arrays.copyOf(keptLn2, 2 * kept);
            keptNm = Arrays.copyOf(keptNm, 2 * kept);
            keptMg = Arrays.copyOf(keptMg, 2 * kept);
        }
        keptRank[kept] = rank[at];
        keptLn2[kept] = ln2[at];
        keptNm[kept] = nm[at];
        keptMg[kept] = mg[at];
        kept++;
    }
}
