package groupwright.drivetrain.derailleur;

import java.util.OptionalDouble;

/** The slow and simple search: a path at every small step, bisected where the length passes that of the chain. */
final class FineMarch {
    private static final double JUMP =
            0.5; // pitches; no path changes by so much in such a step without a wrap passing 0

    private FineMarch() {}

    /** The first angle in degrees. */
    static OptionalDouble solve(Mechanism mechanism, ChainRun run, double links, double stepDeg) {
        double turn = mechanism.turnDeg(run.sideTravelMm(), run.fullTravelMm());
        double forward = mechanism.stopForwardDeg() + turn;
        double rearward = mechanism.stopRearwardDeg() + turn;
        Loop loop = new Loop(mechanism, run, links);
        double before = beyond(loop, forward);
        double ahead = forward;
        for (int i = 1; ahead > rearward; i++) {
            double angle = Math.max(rearward, forward - i * stepDeg);
            double after = beyond(loop, angle);
            if (before * after <= 0 && Math.abs(before - after) < JUMP) { // false for NaN: no path
                return OptionalDouble.of(bisect(loop, ahead, angle));
            }
            before = after;
            ahead = angle;
        }
        return OptionalDouble.empty();
    }

    private static double bisect(Loop loop, double ahead, double behind) {
        double front = ahead;
        double back = behind;
        double atFront = beyond(loop, front);
        while (front - back > 1e-11) {
            double middle = (front + back) / 2;
            if (beyond(loop, middle) * atFront > 0) {
                front = middle;
            } else {
                back = middle;
            }
        }
        return (front + back) / 2;
    }

    private static double beyond(Loop loop, double deg) {
        Sample sample = new Sample();
        loop.at(Math.toRadians(deg), sample);
        return sample.isFree() ? sample.value[Sample.LENGTH] : Double.NaN;
    }
}
