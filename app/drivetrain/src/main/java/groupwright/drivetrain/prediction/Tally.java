package groupwright.drivetrain.prediction;

import groupwright.drivetrain.riding.RoadForces;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Adds up what happens on a ride. */
final class Tally {
    private final Gearbox gearbox;
    private final CadenceHabits habits;
    private final double efficiency;
    private final double[] gearS;
    private final double[] gearM;
    private final double[] gearJ;
    private double[] binS = new double[16];
    private double timeS;
    private double comfortableS;
    private double grindingS;
    private double coastingS;
    private double walkingS;
    private double crankJ;
    private double pushedJ;
    private double airJ;
    private double rollingJ;
    private double bearingsJ;
    private double slopeJ;
    private double kineticJ;
    private double brakingJ;
    private int actions;
    private int cogs;
    private int front;

    Tally(Gearbox gearbox, Ride ride) {
        this.gearbox = gearbox;
        this.habits = ride.rider().cadence();
        this.efficiency = ride.system().efficiency();
        int count = gearbox.gears().size();
        gearS = new double[count];
        gearM = new double[count];
        gearJ = new double[count];
    }

    double timeS() {
        return timeS;
    }

    void shifted(int from, int to) {
        actions++;
        cogs += gearbox.cogsBetween(from, to);
        front += gearbox.ringsBetween(from, to) > 0 ? 1 : 0;
    }

    void add(Stride stride, RoadForces forces, int gear) {
        double seconds = stride.seconds();
        timeS += seconds;
        switch (stride.kind()) {
            case PEDALLED -> pedalled(stride, seconds, gear);
            case COASTED -> coastingS += seconds;
            case WALKED -> {
                walkingS += seconds;
                pushedJ += stride.drivenJ();
            }
        }
        airJ += stride.wayM() * forces.airN(stride.toMps());
        rollingJ += stride.wayM() * forces.rollingN();
        bearingsJ += stride.wayM() * forces.bearingsN(stride.toMps());
        slopeJ += stride.wayM() * forces.slopeN();
        kineticJ += stride.kineticJ();
        brakingJ += stride.brakedJ();
    }

    private void pedalled(Stride stride, double seconds, int gear) {
        double cadence = stride.meanMps() * 60 / gearbox.developmentM(gear);
        int bin = (int) (cadence / CadenceUse.BIN_RPM);
        if (bin >= binS.length) {
            binS = Arrays.copyOf(binS, bin + 1);
        }
        binS[bin] += seconds;
        comfortableS += habits.isComfortable(cadence) ? seconds : 0;
        grindingS += cadence < habits.leastRpm() ? seconds : 0;
        double work = stride.drivenJ() / efficiency;
        crankJ += work;
        gearS[gear] += seconds;
        gearM[gear] += stride.wayM();
        gearJ[gear] += work;
    }

    Prediction prediction(double lengthM, Timetable times) {
        List<GearUse> use = new ArrayList<>();
        for (int i = 0; i < gearS.length; i++) {
            double turns = gearM[i] / gearbox.developmentM(i);
            use.add(new GearUse(gearbox.gears().get(i), gearS[i], gearM[i], gearJ[i], turns));
        }
        double lossJ = crankJ * (1 - efficiency);
        return new Prediction(
                lengthM,
                timeS,
                use,
                new CadenceUse(bins(), comfortableS, grindingS),
                new ShiftCount(actions, cogs, front),
                coastingS,
                walkingS,
                new Energy(crankJ, lossJ, pushedJ, airJ, rollingJ, bearingsJ, slopeJ, kineticJ, brakingJ),
                times);
    }

    private List<Double> bins() {
        int last = binS.length;
        while (last > 0 && binS[last - 1] == 0) {
            last--;
        }
        return Arrays.stream(binS, 0, last).boxed().toList();
    }
}
