package groupwright.benchmarks;

import java.util.Collection;
import java.util.Locale;
import java.util.regex.Pattern;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Runs the benchmarks whose name holds a pattern, and puts the numbers that belong together side by side. */
public final class Benchmarks {
    private Benchmarks() {}

    /** One argument: a regular expression found in the names of the benchmarks to run. */
    public static void main(String[] arguments) throws RunnerException {
        String wanted = arguments.length == 0 ? "." : arguments[0];
        Collection<RunResult> results = new Runner(new OptionsBuilder()
                        .include(wanted)
                        .shouldFailOnError(true)
                        .build())
                .run();
        double scratch = score(results, "fromScratch");
        for (String edit : new String[] {"editHundredTargets", "retargetThousand", "editWhatAllDependsOn"}) {
            double time = score(results, edit);
            if (time > 0 && scratch > 0) {
                print("%s: %.3f ms, %.1f times as fast as from scratch (%.1f ms)", edit, time, scratch / time, scratch);
            }
        }
        double bare = score(results, "bareWindow");
        double ours = score(results, "ourWindow");
        if (bare > 0 && ours > 0) {
            double place = score(results, "ourFirstPlace");
            print(
                    "window: %.0f ms, %.2f times a bare FlatLaf window (%.0f ms); first place filled: %.0f ms, %.2f times",
                    ours, ours / bare, bare, place, place / bare);
        }
        double text = score(results, "bareText");
        double pages = score(results, "ourPages");
        if (text > 0 && pages > 0) {
            double numbers = score(results, "ourNumbers");
            print(
                    "documents: %.0f ms for about 300 pages, of it %.0f ms to fill the template; %.2f times bare text (%.0f ms)",
                    pages, numbers, pages / text, text);
        }
        rainflow(results);
        CassetteRatios.of(results).forEach(System.out::println);
        if (Pattern.compile(wanted).matcher("LedgerHeap").find()) {
            print("ledger: %.0f bytes of heap for each of 90,000 answers", LedgerHeap.bytesPerAnswer());
        }
    }

    private static void rainflow(Collection<RunResult> results) {
        double load = score(results, "loadAlone");
        double lists = score(results, "listRainflow") - load;
        for (String stream : new String[] {"streamedRainflow", "steppedRainflow"}) {
            double time = score(results, stream) - load;
            if (time > 0 && lists > 0) {
                print(
                        "%s: %.0f ms without making the load, %.1f times as fast as lists (%.0f ms)",
                        stream, time, lists / time, lists);
            }
        }
        if (lists > 0) {
            int samples = 100_000_000;
            print(
                    "rainflow: bytes allocated for %,d samples: streamed %,d, stepped %,d; lists %.0f for each sample",
                    samples,
                    RainflowMemory.streamedBytes(samples),
                    RainflowMemory.steppedBytes(samples),
                    RainflowMemory.listBytesPerSample());
        }
    }

    private static double score(Collection<RunResult> results, String name) {
        for (RunResult result : results) {
            if (result.getPrimaryResult().getLabel().equals(name)) {
                return result.getPrimaryResult().getScore();
            }
        }
        return 0;
    }

    private static void print(String format, Object... values) {
        System.out.println(String.format(Locale.ROOT, format, values));
    }
}
