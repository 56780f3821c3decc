package groupwright.drivetrain.prediction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.gearing.Crankset;
import groupwright.drivetrain.gearing.GearSet;
import groupwright.drivetrain.riding.Air;
import groupwright.drivetrain.riding.PowerBalance;
import groupwright.drivetrain.riding.RidingSystem;
import groupwright.drivetrain.terrain.Piece;
import groupwright.drivetrain.terrain.Profiles;
import groupwright.drivetrain.terrain.RideData;
import groupwright.drivetrain.terrain.Smoothing;
import groupwright.drivetrain.terrain.Stretch;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;

/**
 * Predictions against recorded rides (ridedata/README.md says whose).
 *
 * <p>road_hilly.csv: fitted on its first half, judged on its second by the root mean square error of the mean speed of
 * each 500 m, and the other way round. From the first half come the mean power in bands of 2 % of grade, the coasting grade (where half of the
 * samples have no power), the fastest 500 m as cap downhill, and by least squares on a grid drag area (0.2 to 1
 * m²) and rolling resistance (0.002 to 0.010, the range of Wilson, Bicycling Science, from memory). The mass, which the file does not tell, is the mean of (work at the wheel - air) / (g · (rise + rolling ·
 * way)) over the 500 m of the first half steeper than 4 %, where rolling (0.004) and air (0.4 m²) matter little. The
 * model with constant power and steady speed gets the same mass and cap, the mean power, and its own grid.
 */
class RideValidationTest {
    private static final double EFFICIENCY = 0.97;
    private static final Air AIR = Air.still(1.19);
    private static final GearSet GEARS =
            GearSet.of(Crankset.of(36, 50), Cassette.of(11, 12, 13, 14, 15, 17, 19, 21, 24, 28, 32));
    private static final CadenceHabits HABITS = new CadenceHabits(60, 80, 105, 125);

    /** Root mean square errors of the ride model and of steady speeds, in m/s. */
    private record Errors(double ours, double steady) {}

    @Test
    void theRideModelIsNotWorseThanSteadySpeedsOnARecordedRide(TestReporter reporter) {
        List<RideData.Sample> samples = RideData.samples("road_hilly.csv");
        int middle = samples.size() / 2;
        RecordedHalf first = RecordedHalf.of(samples.subList(0, middle));
        RecordedHalf second = RecordedHalf.of(samples.subList(middle, samples.size()));
        Errors forth = errors(first, second);
        Errors back = errors(second, first);
        reporter.publishEntry("fitted on the first half, judged on the second, m/s", forth.toString());
        reporter.publishEntry("fitted on the second half, judged on the first, m/s", back.toString());
        assertTrue(forth.ours() <= forth.steady());
        assertTrue(back.ours() <= back.steady());
        assertEquals(1.227, forth.ours(), 0.0005); // the numbers in DEVELOPERS.md
        assertEquals(1.239, forth.steady(), 0.0005);
        assertEquals(1.724, back.ours(), 0.0005);
        assertEquals(2.128, back.steady(), 0.0005);
    }

    private static Errors errors(RecordedHalf fitted, RecordedHalf judged) {
        RiderPlan plan = plan(fitted);
        double capMps = plan.downhillCapKmh() / 3.6;
        double watts = fitted.meanPowerW();
        double massKg = fitted.massOnClimbsKg(0.04, EFFICIENCY);
        RidingSystem system = best(fitted, massKg, candidate -> pieceS(fitted, candidate, plan));
        RidingSystem steady = best(fitted, massKg, candidate -> steadyS(fitted, candidate, watts, capMps));
        return new Errors(
                rms(judged, pieceS(judged, system, plan)), rms(judged, steadyS(judged, steady, watts, capMps)));
    }

    private static RiderPlan plan(RecordedHalf half) {
        List<GradePower> power = new ArrayList<>();
        double coasting = -1;
        for (int percent = -8; percent <= 10; percent += 2) {
            double grade = percent / 100.0;
            power.add(new GradePower(
                    grade, half.meanNear(grade, sample -> sample.powerW().orElse(0))));
            if (half.meanNear(grade, sample -> sample.powerW().orElse(0) == 0 ? 1 : 0) > 0.5) {
                coasting = grade;
            }
        }
        double fastest = Collections.max(half.measuredMps());
        return RiderPlan.of(power, coasting, fastest * 3.6, HABITS);
    }

    private static RidingSystem best(RecordedHalf half, double massKg, Function<RidingSystem, List<Double>> model) {
        RidingSystem best = RidingSystem.plain(massKg, 0.005, 0.35, EFFICIENCY);
        double least = Double.POSITIVE_INFINITY;
        for (double area = 0.2; area < 1; area += 0.04) {
            for (double rolling = 0.002; rolling < 0.0101; rolling += 0.002) {
                RidingSystem candidate = RidingSystem.plain(massKg, rolling, area, EFFICIENCY);
                double error = rms(half, model.apply(candidate));
                if (error < least) {
                    least = error;
                    best = candidate;
                }
            }
        }
        return best;
    }

    private static List<Double> pieceS(RecordedHalf half, RidingSystem system, RiderPlan plan) {
        Timetable times = RideModel.predict(Ride.of(half.profile(), GEARS, Rides.WHEEL, system, AIR, plan))
                .times();
        return IntStream.range(0, times.size())
                .mapToObj(i -> times.endS(i) - (i == 0 ? 0 : times.endS(i - 1)))
                .toList();
    }

    private static List<Double> steadyS(RecordedHalf half, RidingSystem system, double watts, double capMps) {
        List<Double> seconds = new ArrayList<>();
        for (Piece piece : half.profile().pieces()) {
            double speed = PowerBalance.speedMps(system, AIR, piece.grade(), watts);
            seconds.add(piece.lengthM() / (piece.grade() < 0 ? Math.min(capMps, speed) : speed));
        }
        return seconds;
    }

    private static double rms(RecordedHalf half, List<Double> pieceS) {
        List<Double> measured = half.measuredMps();
        List<Double> predicted = half.predictedMps(pieceS);
        double sum = 0;
        for (int i = 0; i < measured.size(); i++) {
            double error = predicted.get(i) - measured.get(i);
            sum += error * error;
        }
        return Math.sqrt(sum / measured.size());
    }

    @Test
    void shiftsComeAsOftenAsInAShiftLogWithinAFactorOfThree(TestReporter reporter) {
        // mtb_shift_log: 353 events in 4443 s of moving (README). Neither power nor cadence nor mass is known; assumed
        // are 85 kg, rolling 0.02, drag 0.45 m², 200 W for an hour, 30 x 10 to 45 with 11 cogs, cadence 65 to 85 rpm.
        double loggedPerHour = 353 / 4443.0 * 3600;
        Stretch ground = RideData.stretch("mtb_shift_log.csv");
        GearSet gears = GearSet.of(Crankset.of(30), Cassette.of(10, 12, 14, 16, 18, 21, 24, 28, 32, 38, 45));
        Ride ride = Ride.of(
                Profiles.ofTrace(ground.splitAtPauses(Stretch.PAUSE_S), Smoothing.USUAL),
                gears,
                Rides.WHEEL,
                RidingSystem.plain(85, 0.02, 0.45, 0.95),
                AIR,
                RiderPlan.usual(200, new CadenceHabits(50, 65, 85, 110), 36));
        double perHour = RideModel.predict(ride).shiftActionsPerHour();
        reporter.publishEntry("shift actions an hour", perHour + " predicted, " + loggedPerHour + " logged");
        assertTrue(perHour > loggedPerHour / 3 && perHour < loggedPerHour * 3, () -> perHour + " an hour");
    }
}
