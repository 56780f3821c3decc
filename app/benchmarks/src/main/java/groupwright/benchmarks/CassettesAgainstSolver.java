package groupwright.benchmarks;

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

/** The smallest of the same questions put to a general constraint solver; larger ones take it minutes. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx1g")
@Warmup(iterations = 1, time = 1)
@Measurement(iterations = 3, time = 1)
public class CassettesAgainstSolver {
    /** Teeth of the largest cog. */
    @Param("26")
    public int largest;

    /** With the solver's own search for the best of several objectives. */
    @Benchmark
    public int constraintSolver() {
        return new ConstraintSolver(CassettesAgainstOthers.table(largest), CassettesAgainstOthers.COGS).values();
    }
}
