package groupwright.drivetrain.search;

import static org.junit.jupiter.api.Assertions.assertEquals;

import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.gearing.ShiftPositions;
import groupwright.drivetrain.gearing.Step;
import groupwright.drivetrain.quantity.Cog;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.jgrapht.Graph;
import org.jgrapht.alg.shortestpath.MartinShortestPath;
import org.jgrapht.graph.DefaultDirectedGraph;
import org.jgrapht.graph.DefaultEdge;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Larger questions against an independent multi-objective shortest path: Martins' algorithm in jgrapht, which knows
 * sums only; the largest step is handled by allowing one more size of step at a time.
 */
class MartinsTest {
    static LongStream seeds() {
        return LongStream.range(0, 12);
    }

    /** The example graph in the tests of jgrapht's MartinShortestPath; the sets were also found by listing all paths. */
    @Test
    void thePublishedGraphHasItsPublishedPaths() {
        int[][] arcs = {
            {1, 2, 1, 5},
            {1, 3, 4, 2},
            {1, 4, 4, 4},
            {2, 4, 1, 2},
            {2, 5, 2, 5},
            {3, 4, 2, 3},
            {3, 5, 6, 1},
            {4, 5, 3, 3}
        };
        Graph<Integer, DefaultEdge> graph = new DefaultDirectedGraph<>(DefaultEdge.class);
        Map<DefaultEdge, double[]> weights = new HashMap<>();
        for (int[] arc : arcs) {
            add(graph, weights, arc[0], arc[1], new double[] {arc[2], arc[3]});
        }
        assertEquals(Set.of(List.of(4.0, 4.0), List.of(2.0, 7.0)), sums(graph, weights, 1, 4));
        assertEquals(Set.of(List.of(3.0, 10.0), List.of(10.0, 3.0), List.of(7.0, 7.0)), sums(graph, weights, 1, 5));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void theValuesAreThoseOfMartins(long seed) {
        var random = new Random(seed);
        int low = 9 + random.nextInt(4);
        int high = 25 + random.nextInt(8);
        Question question = Question.of(
                        low,
                        high,
                        8 + random.nextInt(3),
                        Objective.LARGEST_STEP,
                        Objective.UNEVENNESS,
                        Objective.MISMATCH,
                        Objective.MASS)
                .with(Limits.of(new LargestStep(26 + random.nextInt(6), 0)));
        Set<List<Double>> found = CassetteSearch.find(question, Progress.NONE).stream()
                .map(one -> values(one.cassette(), question))
                .collect(Collectors.toSet());
        assertEquals(martins(question), found);
    }

    private static List<Double> values(Cassette cassette, Question question) {
        List<Double> values =
                new ArrayList<>(List.of(0.0, 0.0, 0.0, (double) milligrams(cassette.smallest(), question)));
        for (int i = 1; i < cassette.cogs().size(); i++) {
            Step step = new Step(cassette.cogs().get(i - 1), cassette.cogs().get(i));
            values.set(0, Math.max(values.get(0), step.pct()));
            double[] sums = weights(step, question);
            for (int k = 0; k < sums.length; k++) {
                values.set(k + 1, values.get(k + 1) + sums[k]);
            }
        }
        return values;
    }

    private static double[] weights(Step step, Question question) {
        return new double[] {
            Math.round(1e9 * step.ln() * step.ln()),
            Math.round(1e6 * ShiftPositions.phaseMismatchMm(step)),
            milligrams(step.larger(), question)
        };
    }

    private static long milligrams(Cog cog, Question question) {
        return Math.round(1000 * question.mass().cogG(cog));
    }

    private static Set<List<Double>> martins(Question question) {
        int low = question.smallest().least();
        int high = question.largest().most();
        Set<Double> sizes = new TreeSet<>();
        for (int a = low; a < high; a++) {
            for (int b = a + 1; b <= high; b++) {
                if (question.limits().all().get(0).admitsStep(1, a, b)) {
                    sizes.add(Step.of(a, b).pct());
                }
            }
        }
        Set<List<Double>> all = new HashSet<>();
        double first = milligrams(new Cog(low), question);
        for (double most : sizes) {
            for (List<Double> sums : withStepsUpTo(most, question)) {
                all.add(List.of(most, sums.get(0), sums.get(1), sums.get(2) + first));
            }
        }
        return all.stream()
                .filter(one -> all.stream().noneMatch(other -> AllCassettes.beats(other, one)))
                .collect(Collectors.toSet());
    }

    private static Set<List<Double>> withStepsUpTo(double mostPct, Question question) {
        int low = question.smallest().least();
        int high = question.largest().most();
        int cogs = question.count().most();
        Graph<Integer, DefaultEdge> graph = new DefaultDirectedGraph<>(DefaultEdge.class);
        Map<DefaultEdge, double[]> weights = new HashMap<>();
        for (int position = 1; position < cogs; position++) {
            for (int a = low + position - 1; a < high; a++) {
                for (int b = a + 1; b <= high - (cogs - 1 - position); b++) {
                    if (Step.of(a, b).pct() <= mostPct) {
                        int from = 100 * position + a;
                        add(graph, weights, from, 100 * (position + 1) + b, weights(Step.of(a, b), question));
                    }
                }
            }
        }
        Integer source = 100 + low;
        Integer sink = 100 * cogs + high;
        boolean both = graph.containsVertex(source) && graph.containsVertex(sink);
        return both ? sums(graph, weights, source, sink) : Set.of();
    }

    private static void add(
            Graph<Integer, DefaultEdge> graph, Map<DefaultEdge, double[]> weights, int from, int to, double[] weight) {
        graph.addVertex(from);
        graph.addVertex(to);
        weights.put(graph.addEdge(from, to), weight);
    }

    private static Set<List<Double>> sums(
            Graph<Integer, DefaultEdge> graph, Map<DefaultEdge, double[]> weights, Integer source, Integer sink) {
        return new MartinShortestPath<>(graph, weights::get)
                .getPaths(source, sink).stream()
                        .map(path -> path.getEdgeList().stream()
                                .map(weights::get)
                                .reduce((a, b) -> {
                                    double[] sum = a.clone();
                                    for (int i = 0; i < sum.length; i++) {
                                        sum[i] += b[i];
                                    }
                                    return sum;
                                })
                                .orElseThrow())
                        .map(sum -> Arrays.stream(sum).boxed().toList())
                        .collect(Collectors.toSet());
    }
}
