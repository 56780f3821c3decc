package groupwright.benchmarks;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jgrapht.Graph;
import org.jgrapht.GraphPath;
import org.jgrapht.alg.shortestpath.MartinShortestPath;
import org.jgrapht.graph.DefaultDirectedGraph;
import org.jgrapht.graph.DefaultEdge;

/** jgrapht's MartinShortestPath, which knows sums only: once for each size that the largest step may have. */
final class ShortestPaths {
    private final StepTable table;
    private final int cogs;
    private final Map<DefaultEdge, double[]> weights = new HashMap<>();

    ShortestPaths(StepTable table, int cogs) {
        this.table = table;
        this.cogs = cogs;
    }

    int values() {
        UnbeatenValues best = new UnbeatenValues();
        for (double most : table.sizes()) {
            for (GraphPath<Integer, DefaultEdge> path : paths(most)) {
                double[] values = {most, 0, 0, table.milligrams(table.low)};
                for (DefaultEdge edge : path.getEdgeList()) {
                    for (int i = 0; i < 3; i++) {
                        values[i + 1] += weights.get(edge)[i];
                    }
                }
                best.offer(values);
            }
        }
        return best.size();
    }

    private List<GraphPath<Integer, DefaultEdge>> paths(double mostPct) {
        Graph<Integer, DefaultEdge> graph = new DefaultDirectedGraph<>(DefaultEdge.class);
        for (int position = 1; position < cogs; position++) {
            for (int a = table.low + position - 1; a < table.high; a++) {
                for (int b = a + 1; b <= table.high - (cogs - 1 - position); b++) {
                    if (table.pct(a, b) <= mostPct) {
                        add(graph, 100 * position + a, 100 * (position + 1) + b, table.sums(a, b));
                    }
                }
            }
        }
        Integer source = 100 + table.low;
        Integer sink = 100 * cogs + table.high;
        boolean both = graph.containsVertex(source) && graph.containsVertex(sink);
        return both ? new MartinShortestPath<>(graph, weights::get).getPaths(source, sink) : List.of();
    }

    private void add(Graph<Integer, DefaultEdge> graph, int from, int to, long[] sums) {
        graph.addVertex(from);
        graph.addVertex(to);
        weights.put(graph.addEdge(from, to), new double[] {sums[0], sums[1], sums[2]});
    }
}
