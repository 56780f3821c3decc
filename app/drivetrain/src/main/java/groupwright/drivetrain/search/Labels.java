package groupwright.drivetrain.search;

import java.util.Arrays;

/**
 * Partial cassettes from one smallest cog: their sums, and by which partial cassettes they are reached.
 *
 * <p>Equal ones are one label with several parents. Memory: 37 bytes a label and 8 for each further parent, up to twice
 * that while arrays grow.
 */
final class Labels {
    private static final int NONE = -1;

    private int size;
    private byte[] teeth = new byte[1024];
    private int[] rank = new int[1024];
    private long[] ln2 = new long[1024];
    private int[] nm = new int[1024];
    private int[] mg = new int[1024];
    private int[] parent = new int[1024];
    private int[] more = new int[1024];
    private long[] paths = new long[1024];
    private int links;
    private int[] linkParent = new int[256];
    private int[] linkNext = new int[256];

    /** The smallest cog alone. */
    int root(int smallest, int mass) {
        return add(smallest, 0, 0, 0, mass, NONE, 1);
    }

    /** A label that continues another. */
    int add(int ofTeeth, int worst, long ln2Sum, int nmSum, int mgSum, int from) {
        return add(ofTeeth, worst, ln2Sum, nmSum, mgSum, from, paths[from]);
    }

    private int add(int ofTeeth, int worst, long ln2Sum, int nmSum, int mgSum, int from, long ways) {
        if (size == teeth.length) {
            grow();
        }
        teeth[size] = (byte) ofTeeth;
        rank[size] = worst;
        ln2[size] = ln2Sum;
        nm[size] = nmSum;
        mg[size] = mgSum;
        parent[size] = from;
        more[size] = NONE;
        paths[size] = ways;
        return size++;
    }

    /** One more way to reach a label. */
    void merge(int label, int from) {
        if (links == linkParent.length) {
            linkParent = Arrays.copyOf(linkParent, 2 * links);
            linkNext = Arrays.copyOf(linkNext, 2 * links);
        }
        linkParent[links] = from;
        linkNext[links] = more[label];
        more[label] = links++;
        paths[label] += paths[from];
    }

    private void grow() {
        int length = 2 * size;
        teeth = Arrays.copyOf(teeth, length);
        rank = Arrays.copyOf(rank, length);
        ln2 = Arrays.copyOf(ln2, length);
        nm = Arrays.copyOf(nm, length);
        mg = Arrays.copyOf(mg, length);
        parent = Arrays.copyOf(parent, length);
        more = Arrays.copyOf(more, length);
        paths = Arrays.copyOf(paths, length);
    }

    int size() {
        return size;
    }

    /** Labels and further parents together: what memory grows with. */
    int weight() {
        return size + links;
    }

    int teeth(int label) {
        return teeth[label];
    }

    int rank(int label) {
        return rank[label];
    }

    long ln2(int label) {
        return ln2[label];
    }

    int nm(int label) {
        return nm[label];
    }

    int mg(int label) {
        return mg[label];
    }

    /** How many cassettes a label stands for; at most C(74, 18) < 2^57. */
    long paths(int label) {
        return paths[label];
    }

    /** The labels this one continues; none for the smallest cog. */
    int[] parents(int label) {
        if (parent[label] == NONE) {
            return new int[0];
        }
        int count = 1;
        for (int link = more[label]; link != NONE; link = linkNext[link]) {
            count++;
        }
        int[] parents = new int[count];
        parents[--count] = parent[label];
        for (int link = more[label]; link != NONE; link = linkNext[link]) {
            parents[--count] = linkParent[link];
        }
        return parents;
    }
}
