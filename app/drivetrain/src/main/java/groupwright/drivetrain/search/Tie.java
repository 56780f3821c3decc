package groupwright.drivetrain.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Cassettes with equal values, not yet unfolded.
 *
 * @param vector their values in whole numbers, lower being better
 * @param ends where to unfold them from
 * @param count how many they are
 */
record Tie(long[] vector, List<Sweep.End> ends, long count) {
    static Tie of(long[] vector, List<Sweep.End> ends) {
        long count = 0;
        for (Sweep.End end : ends) {
            count = Math.addExact(count, end.labels().paths(end.label()));
        }
        return new Tie(vector, List.copyOf(ends), count);
    }

    /** Whether cassettes with these values beat others with those. */
    static boolean beats(long[] one, long[] other) {
        for (int i = 0; i < one.length; i++) {
            if (one[i] > other[i]) {
                return false;
            }
        }
        return !Arrays.equals(one, other);
    }

    /** A partial cassette seen from its large end. */
    private record Node(Labels labels, int label) {
        long paths() {
            return labels.paths(label);
        }
    }

    /**
     * The tooth counts, smallest first, of one of them, in the order of cogs compared from the largest down, fewer teeth
     * first. Cost: O(cogs · ways into a label).
     *
     * @param index from 0 to {@code count} - 1
     */
    int[] cogs(long index) {
        List<Node> nodes = new ArrayList<>();
        ends.forEach(end -> nodes.add(new Node(end.labels(), end.label())));
        List<Node> level = nodes;
        List<Integer> teeth = new ArrayList<>();
        long left = index;
        while (!level.isEmpty()) {
            SortedMap<Integer, List<Node>> byTeeth = new TreeMap<>();
            level.forEach(node -> byTeeth.computeIfAbsent(node.labels().teeth(node.label()), any -> new ArrayList<>())
                    .add(node));
            List<Node> chosen = List.of();
            for (List<Node> same : byTeeth.values()) {
                chosen = same;
                long paths = same.stream().mapToLong(Node::paths).sum();
                if (left < paths) {
                    break;
                }
                left -= paths;
            }
            teeth.add(0, chosen.get(0).labels().teeth(chosen.get(0).label()));
            level = parents(chosen);
        }
        return teeth.stream().mapToInt(Integer::intValue).toArray();
    }

    // Equal ends have equal values only with equal counts or other cogs between, so none of several can be complete
    // alone.
    private static List<Node> parents(List<Node> nodes) {
        List<Node> parents = new ArrayList<>();
        for (Node node : nodes) {
            for (int parent : node.labels().parents(node.label())) {
                parents.add(new Node(node.labels(), parent));
            }
        }
        return parents;
    }
}
