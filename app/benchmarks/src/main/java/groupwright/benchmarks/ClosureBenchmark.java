package groupwright.benchmarks;

import groupwright.drivetrain.derailleur.CagePosition;
import groupwright.drivetrain.derailleur.ChainClosure;
import groupwright.drivetrain.derailleur.ChainRun;
import groupwright.drivetrain.derailleur.Hanger;
import groupwright.drivetrain.derailleur.Mechanism;
import groupwright.drivetrain.derailleur.Point;
import groupwright.drivetrain.derailleur.ToothTips;
import groupwright.drivetrain.derailleur.UpperPivot;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
import org.openjdk.jmh.infra.Blackhole;

/** All closures of 4 concepts of 2 × 12 gears on 12 bikes at both ends of suspension travel: 2304 a call. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx1g")
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 4, time = 2)
public class ClosureBenchmark {
    private static final int[] COGS = {10, 12, 14, 16, 18, 21, 24, 28, 32, 38, 44, 50};
    private static final double SPACING_MM = 3.65;
    private static final double FINE_DEG = 0.05;

    private record Task(Mechanism mechanism, ChainRun run, double links) {}

    private final List<Task> tasks = new ArrayList<>();

    @Setup
    public void makeTasks() {
        for (int concept = 0; concept < 4; concept++) {
            for (int bike = 0; bike < 12; bike++) {
                var hanger = new Hanger(new Point(8 + bike % 3, -28), -90 + bike % 4);
                Mechanism mounted = mechanism(concept).mountedOn(hanger);
                for (int grown = 0; grown <= 12; grown += 12) {
                    gears(mounted, ChainRun.bottomBracket(425 + bike + grown, 40));
                }
            }
        }
    }

    private void gears(Mechanism mechanism, Point ring) {
        double full = SPACING_MM * (COGS.length - 1);
        for (int i = 0; i < COGS.length; i++) {
            tasks.add(new Task(mechanism, new ChainRun(ring, 32, COGS[i], SPACING_MM * i, full), 116));
            tasks.add(new Task(mechanism, new ChainRun(ring, 36, COGS[i], SPACING_MM * i, full), 118));
        }
    }

    /** An invented derailleur and its variants. */
    private static Mechanism mechanism(int variant) {
        var hanger = new Hanger(new Point(8, -28), -90);
        var pivot = new Point(-20 + variant, -74 - variant);
        return new Mechanism(
                hanger, pivot, -65.8, 42, 38, -93, 100 - 3 * variant, 14, 14, -5, -160, new UpperPivot.Fixed());
    }

    /** The march of the product. */
    @Benchmark
    public void ours(Blackhole answers) {
        for (Task task : tasks) {
            answers.consume(ChainClosure.solve(task.mechanism, task.run, task.links));
        }
    }

    /** The plain way as a peer, by the same geometry: a path every 0.05°, then halving. */
    @Benchmark
    public void fineMarch(Blackhole answers) {
        for (Task task : tasks) {
            answers.consume(fine(task));
        }
    }

    private static double fine(Task task) {
        double before = Double.NaN;
        double forward = task.mechanism.stopForwardDeg();
        for (double deg = forward; deg >= task.mechanism.stopRearwardDeg(); deg -= FINE_DEG) {
            double after = beyond(task, deg);
            if (before * after <= 0) {
                return halved(task, deg + FINE_DEG, deg, before);
            }
            before = after;
        }
        return Double.NaN;
    }

    private static double halved(Task task, double front, double back, double atFront) {
        double from = front;
        double to = back;
        while (from - to > 1e-9) {
            double middle = (from + to) / 2;
            if (beyond(task, middle) * atFront > 0) {
                from = middle;
            } else {
                to = middle;
            }
        }
        return to;
    }

    private static double beyond(Task task, double deg) {
        Optional<CagePosition> at = ChainClosure.at(task.mechanism, task.run, deg, ToothTips.USUAL);
        return at.map(CagePosition::lengthPitches).orElse(Double.NaN) - task.links;
    }
}
