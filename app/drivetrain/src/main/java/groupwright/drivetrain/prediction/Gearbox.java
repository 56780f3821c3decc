package groupwright.drivetrain.prediction;

import groupwright.drivetrain.gearing.Gear;
import groupwright.drivetrain.gearing.GearSet;
import groupwright.drivetrain.gearing.Wheel;
import java.util.List;

/** The gears in use as plain numbers, and the choice among them. */
final class Gearbox {
    private final List<Gear> gears;
    private final double[] developments;
    private final double[] logs;
    private final int[] rings;
    private final int[] cogs;
    private final ShiftPolicy policy;
    private final double leastRatio;
    private final double mostRatio;

    Gearbox(GearSet set, Wheel wheel, ShiftPolicy policy) {
        this.gears = set.gears();
        this.policy = policy;
        leastRatio = StrictMath.exp(-policy.tolerance());
        mostRatio = StrictMath.exp(policy.tolerance());
        int count = gears.size();
        developments = new double[count];
        logs = new double[count];
        rings = new int[count];
        cogs = new int[count];
        for (int i = 0; i < count; i++) {
            Gear gear = gears.get(i);
            developments[i] = gear.developmentM(wheel);
            logs[i] = StrictMath.log(developments[i]);
            rings[i] = set.crankset().rings().indexOf(gear.ring());
            cogs[i] = set.cassette().cogs().indexOf(gear.cog());
        }
    }

    List<Gear> gears() {
        return gears;
    }

    double developmentM(int gear) {
        return developments[gear];
    }

    /** The gear nearest to a development in m, from no gear in particular. */
    int nearest(double aimM) {
        double logAim = StrictMath.log(aimM);
        int best = 0;
        for (int i = 1; i < logs.length; i++) {
            if (StrictMath.abs(logs[i] - logAim) < StrictMath.abs(logs[best] - logAim)) {
                best = i;
            }
        }
        return best;
    }

    /** The gear the policy takes from this one; the same if it stays. Of equally good gears the lowest. */
    int next(int current, double aimM) {
        double ratio = aimM / developments[current];
        if (ratio >= leastRatio && ratio <= mostRatio) { // the usual case, without a logarithm
            return current;
        }
        double logAim = StrictMath.log(aimM);
        double miss = StrictMath.abs(logs[current] - logAim);
        int best = current;
        double least = miss - policy.benefit();
        for (int i = 0; i < logs.length; i++) {
            double score = StrictMath.abs(logs[i] - logAim) + policy.frontReluctance() * ringsBetween(current, i);
            if (score < least) {
                best = i;
                least = score;
            }
        }
        return best;
    }

    int ringsBetween(int one, int other) {
        return Math.abs(rings[one] - rings[other]);
    }

    int cogsBetween(int one, int other) {
        return Math.abs(cogs[one] - cogs[other]);
    }
}
