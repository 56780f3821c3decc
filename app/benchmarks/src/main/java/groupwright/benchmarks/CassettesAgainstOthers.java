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
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The same question put to others: 10 to 30 teeth, 9 cogs, four objectives, steps of at most 30 %.
 *
 * <p>All give the same number of different values, or the run fails. The constraint solver counts in coarser units, as its
 * whole numbers are small; its answer is not compared by number.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx1g")
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 4, time = 2)
public class CassettesAgainstOthers {
    private static final int LARGEST = 30;
    private static final int COGS = 9;
    private static final double MOST_PCT = 30;

    private final StepTable table = new StepTable(10, LARGEST, MOST_PCT);
    private final Question question = Question.of(
                    10, LARGEST, COGS, Objective.LARGEST_STEP, Objective.UNEVENNESS, Objective.MISMATCH, Objective.MASS)
            .with(Limits.of(new LargestStep(MOST_PCT, 0)));

    /** Fails unless all agree. */
    @Setup
    public void agree() {
        int ours = theSearch().values();
        int tried = tryingAll();
        int paths = martinsOfJgrapht();
        System.out.printf("values: search %d, all %d, paths %d, solver %d%n", ours, tried, paths, constraintSolver());
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

    /** A general constraint solver with its own search for the best of several objectives. */
    @Benchmark
    public int constraintSolver() {
        return new ConstraintSolver(table, COGS).values();
    }
}
