package groupwright.benchmarks;

import groupwright.drivetrain.search.BestSet;
import groupwright.drivetrain.search.CassetteSearch;
import groupwright.drivetrain.search.LargestStep;
import groupwright.drivetrain.search.Limits;
import groupwright.drivetrain.search.Objective;
import groupwright.drivetrain.search.Progress;
import groupwright.drivetrain.search.Question;
import groupwright.drivetrain.search.Span;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Whole searches, counting and unfolding the first cassette included. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx1g")
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class CassettesBenchmark {
    private static final Objective[] FOUR = {
        Objective.LARGEST_STEP, Objective.UNEVENNESS, Objective.MISMATCH, Objective.MASS
    };
    private static final Limits STEPS = Limits.of(new LargestStep(25, 0));

    static BestSet find(Question question) {
        BestSet best = CassetteSearch.find(question, Progress.NONE);
        best.get(0);
        return best;
    }

    /** 10 to 52 teeth, 12 cogs, four objectives, steps of at most 25 %. */
    @Benchmark
    public BestSet cassettesWithLimit() {
        return find(Question.of(10, 52, 12, FOUR).with(STEPS));
    }

    /** 10 to 52 teeth, 12 cogs, four objectives, no limit. */
    @Benchmark
    public BestSet cassettesWithoutLimit() {
        return find(Question.of(10, 52, 12, FOUR));
    }

    /** 9–12 to 32–52 teeth, 9–13 cogs, all five objectives, no limit. */
    @Benchmark
    public BestSet cassettesOverRanges() {
        return find(sweep());
    }

    /** The same with steps of at most 25 %. */
    @Benchmark
    public BestSet cassettesOverRangesWithLimit() {
        return find(sweep().with(STEPS));
    }

    private static Question sweep() {
        return Question.of(new Span(9, 12), new Span(32, 52), new Span(9, 13), Objective.values());
    }
}
