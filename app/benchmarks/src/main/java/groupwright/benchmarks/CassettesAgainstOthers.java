package groupwright.benchmarks;

import groupwright.drivetrain.search.BestSet;
import groupwright.drivetrain.search.LargestStep;
import groupwright.drivetrain.search.Limits;
import groupwright.drivetrain.search.Objective;
import groupwright.drivetrain.search.Question;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The same question put to others: from 10 teeth, 12 cogs, four objectives, steps of at most 30 %.
 *
 * <p>All find the same number of different values, or the run fails.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx1g")
@Warmup(iterations = 1, time = 2)
@Measurement(iterations = 3, time = 2)
public class CassettesAgainstOthers {
    static final int COGS = 12;
    private static final double MOST_PCT = 30;

    /** Teeth of the largest cog. */
    @Param({"26", "36", "48"})
    public int largest;

    private StepTable table;
    private Question question;

    static StepTable table(int largest) {
        return new StepTable(10, largest, MOST_PCT);
    }

    static Question question(int largest) {
        return Question.of(
                        10,
                        largest,
                        COGS,
                        Objective.LARGEST_STEP,
                        Objective.UNEVENNESS,
                        Objective.MISMATCH,
                        Objective.MASS)
                .with(Limits.of(new LargestStep(MOST_PCT, 0)));
    }

    /** Fails unless all agree. */
    @Setup
    public void agree() {
        table = table(largest);
        question = question(largest);
        int ours = theSearch().values();
        int tried = tryingAll();
        int paths = martinsOfJgrapht();
        if (ours != tried || ours != paths) {
            throw new IllegalStateException("the searches disagree: %d, %d, %d".formatted(ours, tried, paths));
        }
    }

    /** Our search, counting included. */
    @Benchmark
    public BestSet theSearch() {
        return CassettesBenchmark.find(question);
    }

    /** Each cassette in turn, against those not beaten so far. */
    @Benchmark
    public int tryingAll() {
        return new TryingAll(table, COGS).values();
    }

    /** jgrapht's shortest paths with several objectives, once for each size of the largest step. */
    @Benchmark
    public int martinsOfJgrapht() {
        return new ShortestPaths(table, COGS).values();
    }
}
