package groupwright.drivetrain.loads;

import groupwright.drivetrain.terrain.RideData;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;

/** Load histories: from the files of the test resources, and random ones. */
final class Histories {
    /** History of ASTM E1049-85, Figure 6. */
    static final double[] STANDARD = {-2, 1, -3, 5, -1, 3, -4, 4, -2};

    private static final double LEAST_RPM = 20;

    private Histories() {}

    static double[] file(String name) {
        return RideData.text(name)
                .lines()
                .skip(1)
                .mapToDouble(line -> Double.parseDouble(line.split(",")[1]))
                .toArray();
    }

    static List<Cycle> expected(String name) {
        return RideData.text(name)
                .lines()
                .skip(1)
                .map(line -> line.split(","))
                .map(f -> new Cycle(Double.parseDouble(f[0]), Double.parseDouble(f[1]), Double.parseDouble(f[2])))
                .toList();
    }

    /** Crank torque in N·m by the rule of the resources' README: 60 P / (2 pi cadence) from 20 rpm on, else 0. */
    static double[] torque(List<RideData.Sample> samples) {
        return samples.stream()
                .mapToDouble(sample -> {
                    double rpm = sample.cadenceRpm().orElse(0);
                    return rpm >= LEAST_RPM ? 60 * sample.powerW().orElse(0) / (2 * Math.PI * rpm) : 0;
                })
                .toArray();
    }

    /** Up to 400 samples: smooth or jumping, with or without steps, so that ties and repeats occur. */
    static double[] random(Random random) {
        int length = random.nextInt(400);
        int steps = 1 + random.nextInt(30);
        boolean whole = random.nextBoolean();
        boolean walk = random.nextBoolean();
        double[] history = new double[length];
        double at = 0;
        for (int i = 0; i < length; i++) {
            double next = steps * (random.nextDouble() - 0.5);
            at = walk ? at + next : next;
            history[i] = whole ? Math.rint(at) : at;
        }
        return history;
    }

    /** The same history with repeats and points on the way put in. */
    static double[] padded(double[] history, Random random) {
        List<Double> padded = new ArrayList<>();
        for (int i = 0; i < history.length; i++) {
            if (i > 0) {
                double from = history[i - 1];
                double to = history[i];
                DoubleStream shares = random.doubles(random.nextInt(4)).map(share -> Math.rint(share * 4) / 4);
                shares.sorted().forEach(share -> padded.add(share == 1 ? to : from + share * (to - from)));
            }
            padded.add(history[i]);
        }
        return padded.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
