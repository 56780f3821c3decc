package groupwright.definition.figures;

import groupwright.definition.figure.Inputs;
import groupwright.definition.figure.Parameter;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Field;
import groupwright.definition.record.Project;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RiderGroup;
import groupwright.drivetrain.gearing.GearSet;
import groupwright.drivetrain.prediction.CadenceHabits;
import groupwright.drivetrain.prediction.Ride;
import groupwright.drivetrain.prediction.RideModel;
import groupwright.drivetrain.prediction.RiderPlan;
import groupwright.drivetrain.terrain.GradeBand;
import groupwright.drivetrain.terrain.Profile;
import groupwright.drivetrain.terrain.Profiles;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The ride of a rider group with a concept, read from the records. */
final class PredictedRide {
    /** How long the ride is; hills repeat, so that beyond some tens of kilometres little changes but the work. */
    static final Parameter LENGTH =
            Parameter.number("ride-length", 40, "length of the ride in km").within(1, 300);

    private static final double SLOWEST_WALK_KMH = 1;
    private static final double FASTEST_WALK_KMH = 10;
    private static final double M_PER_KM = 1000;

    private PredictedRide() {}

    /** The sums of a ride on the given ground; everything missing is named at once. */
    static RideSums on(Inputs in, Function<Inputs, Profile> ground) {
        Gathering all = new Gathering(in);
        Optional<Profile> terrain = all.read(() -> ground.apply(in));
        Optional<GearSet> gears = all.read(() -> Gears.inUse(in));
        Optional<Riders.Effort> effort = all.read(() -> Riders.effort(in, () -> Riders.hourPower(in)));
        Optional<CadenceHabits> habits = all.read(() -> habits(in));
        Optional<Double> cap = all.number(
                Riders.group(in),
                RiderGroup.DOWNHILL_CAP,
                "write the speed in km/h that the riders do not exceed downhill");
        Optional<Double> pace = all.read(() -> walkingPace(in));
        all.end();
        RiderPlan plan = RiderPlan.usual(effort.orElseThrow().powerW(), habits.orElseThrow(), cap.orElseThrow());
        Ride ride = Ride.of(
                terrain.orElseThrow(),
                gears.orElseThrow(),
                effort.orElseThrow().wheel(),
                effort.orElseThrow().system(),
                Riders.air(in),
                walkingBelow(pace.orElseThrow(), plan));
        return RideSums.of(RideModel.predict(ride));
    }

    private static RiderPlan walkingBelow(double paceKmh, RiderPlan plan) {
        return new RiderPlan(
                plan.power(),
                plan.coastingGrade(),
                plan.downhillCapKmh(),
                plan.cadence(),
                plan.mostTorqueNm(),
                paceKmh);
    }

    private static double walkingPace(Inputs in) {
        double pace = in.amount(RecordId.PROJECT, Project.WALKING_SPEED);
        if (pace < SLOWEST_WALK_KMH || pace > FASTEST_WALK_KMH) {
            throw in.missing(
                    RecordId.PROJECT,
                    Project.WALKING_SPEED,
                    "rides are predicted for walking speeds from 1 to 10 km/h; write one of these");
        }
        return pace;
    }

    private static CadenceHabits habits(Inputs in) {
        Gathering all = new Gathering(in);
        Optional<Double> least = cadence(all, in, RiderGroup.CADENCE_LEAST, "below which the riders grind");
        Optional<Double> low =
                cadence(all, in, RiderGroup.CADENCE_PREFERRED_LOW, "at the lower end of what they prefer");
        Optional<Double> high =
                cadence(all, in, RiderGroup.CADENCE_PREFERRED_HIGH, "at the upper end of what they prefer");
        Optional<Double> most = cadence(all, in, RiderGroup.CADENCE_MOST, "that the riders keep up at most");
        all.end();
        try {
            return new CadenceHabits(least.orElseThrow(), low.orElseThrow(), high.orElseThrow(), most.orElseThrow());
        } catch (IllegalArgumentException outOfOrder) {
            throw in.missing(
                    Riders.group(in),
                    RiderGroup.CADENCE_PREFERRED_LOW,
                    outOfOrder.getMessage() + "; put least, preferred low, preferred high and most in this order");
        }
    }

    private static Optional<Double> cadence(
            Gathering all, Inputs in, Field<RiderGroup, Optional<Amount>> field, String which) {
        return all.number(Riders.group(in), field, "write the cadence in rpm " + which);
    }

    /** Hills of the rider group's bands of grades, as long as asked for. */
    static Profile ofTerrain(Inputs in) {
        RecordId group = Riders.group(in);
        List<GradeBand> bands = new ArrayList<>();
        for (String id : in.items(group, RiderGroup.TERRAIN)) {
            bands.add(new GradeBand(
                    of(in, id, groupwright.definition.record.GradeBand.FROM) / 100,
                    of(in, id, groupwright.definition.record.GradeBand.TO) / 100,
                    of(in, id, groupwright.definition.record.GradeBand.SHARE)));
        }
        if (bands.stream().allMatch(band -> band.share() == 0)) {
            throw in.missing(
                    group,
                    RiderGroup.TERRAIN,
                    "write how much of the distance lies on which grade, one band of grades at least");
        }
        return Profiles.ofBands(in.number(LENGTH.name()) * M_PER_KM, Profiles.USUAL_HILL_M, bands);
    }

    private static double of(Inputs in, String band, Field<groupwright.definition.record.GradeBand, Amount> field) {
        return in.item(Riders.group(in), RiderGroup.TERRAIN, band, field)
                .orElseThrow()
                .value();
    }
}
