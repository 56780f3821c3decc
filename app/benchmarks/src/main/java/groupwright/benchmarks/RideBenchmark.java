package groupwright.benchmarks;

import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.gearing.Crankset;
import groupwright.drivetrain.gearing.GearSet;
import groupwright.drivetrain.gearing.Wheel;
import groupwright.drivetrain.prediction.CadenceHabits;
import groupwright.drivetrain.prediction.Ride;
import groupwright.drivetrain.prediction.RideModel;
import groupwright.drivetrain.prediction.RiderPlan;
import groupwright.drivetrain.riding.Air;
import groupwright.drivetrain.riding.RidingSystem;
import groupwright.drivetrain.terrain.Piece;
import groupwright.drivetrain.terrain.Profile;
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
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;

/** Rides of three rider groups on three concepts over hills in pieces of 10 m: nine predictions a call. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgsAppend = "-Xmx1g")
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 4, time = 2)
public class RideBenchmark {
    private static final double PIECE_M = 10;

    /** Length of the ride in km. */
    @Param({"50", "100", "200", "400"})
    public int km;

    private final List<Ride> rides = new ArrayList<>();

    @Setup
    public void makeRides() {
        Profile terrain = hills();
        List<GearSet> concepts = List.of(
                GearSet.of(Crankset.of(32), Cassette.of(10, 12, 14, 16, 18, 21, 24, 28, 32, 38, 44, 50)),
                GearSet.of(Crankset.of(30), Cassette.of(11, 13, 15, 18, 21, 24, 28, 32, 38, 46)),
                GearSet.of(Crankset.of(34, 48), Cassette.of(11, 12, 13, 15, 17, 19, 22, 25, 29, 34)));
        for (GearSet gears : concepts) {
            for (double watts : new double[] {140, 210, 290}) {
                var habits = new CadenceHabits(55, 70, 90, 115);
                rides.add(Ride.of(
                        terrain,
                        gears,
                        new Wheel(2.2),
                        RidingSystem.plain(60 + watts / 7, 0.008, 0.4, 0.96),
                        Air.still(1.2),
                        RiderPlan.usual(watts, habits, 50)));
            }
        }
    }

    /** Waves of 4 km and 700 m on top of each other, between 11 % up and down. */
    private Profile hills() {
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < km * 1000 / PIECE_M; i++) {
            double at = 2 * Math.PI * i * PIECE_M;
            pieces.add(new Piece(PIECE_M, 0.07 * StrictMath.sin(at / 4000) + 0.04 * StrictMath.sin(at / 700)));
        }
        return new Profile(0, pieces);
    }

    /** Nine rides. */
    @Benchmark
    public void nineRides(Blackhole answers) {
        for (Ride ride : rides) {
            answers.consume(RideModel.predict(ride));
        }
    }
}
