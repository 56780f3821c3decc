package groupwright.benchmarks;

import groupwright.drivetrain.search.BestSet;
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
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How a search without limits and with four objectives grows with cogs and with teeth, from a smallest cog of 10. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx1g")
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 4, time = 2)
public class CassettesGrowth {
    @Param({"8", "10", "12", "14"})
    public int cogs;

    @Param({"32", "42", "52", "62"})
    public int largest;

    /** One search. */
    @Benchmark
    public BestSet cassettesGrow() {
        return CassettesBenchmark.find(Question.of(
                10, largest, cogs, Objective.LARGEST_STEP, Objective.UNEVENNESS, Objective.MISMATCH, Objective.MASS));
    }
}
