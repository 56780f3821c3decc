package groupwright.benchmarks;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import org.openjdk.jmh.results.RunResult;

/** How many times as long as the search others take for the same question. */
final class CassetteRatios {
    private static final List<String> OTHERS = List.of("tryingAll", "martinsOfJgrapht", "constraintSolver");

    private CassetteRatios() {}

    /** One line for each of the others and each size of the question. */
    static List<String> of(Collection<RunResult> results) {
        return results.stream()
                .filter(search -> name(search).equals("theSearch"))
                .flatMap(search -> results.stream()
                        .filter(other ->
                                OTHERS.contains(name(other)) && largest(other).equals(largest(search)))
                        .map(other -> line(search, other)))
                .toList();
    }

    private static String line(RunResult search, RunResult other) {
        double ours = search.getPrimaryResult().getScore();
        double theirs = other.getPrimaryResult().getScore();
        return String.format(
                Locale.ROOT,
                "cassettes, 10 to %s teeth: %s %.2f ms, %.1f times as long as the search (%.2f ms)",
                largest(search),
                name(other),
                theirs,
                theirs / ours,
                ours);
    }

    private static String name(RunResult result) {
        return result.getPrimaryResult().getLabel();
    }

    private static String largest(RunResult result) {
        return result.getParams().getParam("largest");
    }
}
