package groupwright.benchmarks;

import groupwright.drivetrain.loads.LoadLevels;
import groupwright.drivetrain.loads.Rainflow;
import groupwright.drivetrain.loads.RainflowSummary;
import groupwright.drivetrain.loads.RangeClasses;
import groupwright.drivetrain.loads.SteppedRainflow;
import java.util.ArrayList;
import java.util.List;
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

/**
 * Rainflow counting of a load made on the fly, into classes: as a stream, in constant memory, and on lists. Making the load
 * costs the same in each and stands beside them.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx8g") // for the lists; the streams take what RainflowMemory prints
@Warmup(iterations = 1)
@Measurement(iterations = 3)
public class RainflowBenchmark {
    private static final double CLASS_WIDTH = 1;

    /** Samples of the history. */
    @Param("100000000")
    public int samples;

    /** The generator alone. */
    @Benchmark
    public double loadAlone() {
        return loadAlone(samples);
    }

    /** Streamed, open reversals only. */
    @Benchmark
    public RainflowSummary streamedRainflow() {
        return streamed(samples);
    }

    /** Streamed and rounded to levels. */
    @Benchmark
    public RainflowSummary steppedRainflow() {
        return stepped(samples);
    }

    /** Collected in lists, then counted. */
    @Benchmark
    public RangeClasses listRainflow() {
        return listed(samples);
    }

    static double loadAlone(int samples) {
        RandomLoad load = new RandomLoad();
        double sum = 0;
        for (int i = 0; i < samples; i++) {
            sum += load.next();
        }
        return sum;
    }

    static RainflowSummary streamed(int samples) {
        RandomLoad load = new RandomLoad();
        Rainflow counter = new Rainflow(new RangeClasses(CLASS_WIDTH));
        for (int i = 0; i < samples; i++) {
            counter.add(load.next());
        }
        return counter.finish();
    }

    static RainflowSummary stepped(int samples) {
        RandomLoad load = new RandomLoad();
        SteppedRainflow counter = new SteppedRainflow(new LoadLevels(0, 0.1, 1024), new RangeClasses(CLASS_WIDTH));
        for (int i = 0; i < samples; i++) {
            counter.add(load.next());
        }
        return counter.finish();
    }

    static RangeClasses listed(int samples) {
        RandomLoad load = new RandomLoad();
        List<Double> history = new ArrayList<>();
        for (int i = 0; i < samples; i++) {
            history.add(load.next());
        }
        RangeClasses classes = new RangeClasses(CLASS_WIDTH);
        for (ListRainflow.Counted cycle : ListRainflow.count(history)) {
            classes.accept(cycle.range(), cycle.mean(), cycle.count());
        }
        return classes;
    }
}
