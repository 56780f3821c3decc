package groupwright.drivetrain.prediction;

import groupwright.drivetrain.terrain.Piece;
import groupwright.drivetrain.terrain.Profile;
import groupwright.drivetrain.terrain.Profiles;
import groupwright.drivetrain.terrain.RideData;
import groupwright.drivetrain.terrain.Smoothing;
import groupwright.drivetrain.terrain.Stretch;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * A part of a recorded ride, its ground, and what the rider did on it.
 *
 * @param samples the recording
 * @param profile its ground, smoothed over 50 m, pieces of about 10 m
 */
record RecordedHalf(List<RideData.Sample> samples, Profile profile) {
    private static final double WINDOW_M = 500;
    private static final double MOVING_MPS = 0.5;
    private static final double HALF_BAND = 0.01;

    static RecordedHalf of(List<RideData.Sample> samples) {
        Stretch ground = RideData.stretch(samples);
        return new RecordedHalf(List.copyOf(samples), Profiles.ofTrace(List.of(ground), Smoothing.USUAL));
    }

    private double startM() {
        return samples.get(0).distanceM();
    }

    /** Mean speed of each whole 500 m, standing left out. */
    List<Double> measuredMps() {
        double[] seconds = new double[(int) (profile.lengthM() / WINDOW_M)];
        for (int i = 1; i < samples.size(); i++) {
            double metres = samples.get(i).distanceM() - samples.get(i - 1).distanceM();
            double dt = samples.get(i).timeS() - samples.get(i - 1).timeS();
            int window = (int) ((samples.get(i - 1).distanceM() + metres / 2 - startM()) / WINDOW_M);
            if (metres >= MOVING_MPS * dt && window < seconds.length) {
                seconds[window] += dt;
            }
        }
        return speeds(seconds);
    }

    /** The same of a prediction, from the seconds each piece takes. */
    List<Double> predictedMps(List<Double> pieceS) {
        double[] seconds = new double[(int) (profile.lengthM() / WINDOW_M)];
        double at = 0;
        for (int i = 0; i < pieceS.size(); i++) {
            double length = profile.pieces().get(i).lengthM();
            int window = (int) ((at + length / 2) / WINDOW_M);
            if (window < seconds.length) {
                seconds[window] += pieceS.get(i);
            }
            at += length;
        }
        return speeds(seconds);
    }

    private static List<Double> speeds(double[] seconds) {
        List<Double> speeds = new ArrayList<>();
        for (double s : seconds) {
            speeds.add(WINDOW_M / s);
        }
        return speeds;
    }

    /** Mean of something over the moving samples on grades within 1 % of a grade. */
    double meanNear(double grade, ToDoubleFunction<RideData.Sample> what) {
        double pieceM = profile.pieces().get(0).lengthM();
        double sum = 0;
        int count = 0;
        for (int i = 1; i < samples.size(); i++) {
            RideData.Sample sample = samples.get(i);
            int piece = (int) ((sample.distanceM() - startM()) / pieceM);
            boolean moving = sample.distanceM() - samples.get(i - 1).distanceM() >= MOVING_MPS;
            if (moving
                    && piece < profile.pieces().size()
                    && near(profile.pieces().get(piece), grade)) {
                sum += what.applyAsDouble(sample);
                count++;
            }
        }
        return count == 0 ? 0 : sum / count;
    }

    private static boolean near(Piece piece, double grade) {
        return Math.abs(piece.grade() - grade) <= HALF_BAND;
    }

    /** Mass by the work done on steep windows; see RideValidationTest. */
    double massOnClimbsKg(double steeperThan, double efficiency) {
        double sum = 0;
        int count = 0;
        int start = 0;
        double workJ = 0;
        for (int i = 1; i < samples.size(); i++) {
            workJ += samples.get(i - 1).powerW().orElse(0)
                    * (samples.get(i).timeS() - samples.get(i - 1).timeS());
            double way = samples.get(i).distanceM() - samples.get(start).distanceM();
            if (way >= WINDOW_M) {
                double rise = samples.get(i).altitudeM().orElseThrow()
                        - samples.get(start).altitudeM().orElseThrow();
                double speed =
                        way / (samples.get(i).timeS() - samples.get(start).timeS());
                if (rise > steeperThan * way) {
                    sum += (efficiency * workJ - 1.19 / 2 * 0.4 * speed * speed * way) / (9.81 * (rise + 0.004 * way));
                    count++;
                }
                start = i;
                workJ = 0;
            }
        }
        return sum / count;
    }

    double meanPowerW() {
        return samples.stream()
                .mapToDouble(sample -> sample.powerW().orElse(0))
                .average()
                .orElseThrow();
    }
}
