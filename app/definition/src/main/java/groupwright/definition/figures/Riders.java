package groupwright.definition.figures;

import groupwright.definition.figure.Inputs;
import groupwright.definition.figure.Parameter;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Unit;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Project;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RiderGroup;
import groupwright.drivetrain.gearing.Wheel;
import groupwright.drivetrain.riding.Air;
import groupwright.drivetrain.riding.RidingSystem;
import java.util.Optional;
import java.util.function.Supplier;

/** The rider group a figure is asked about, as the calculus takes it. */
final class Riders {
    /** Wind along the road, for figures that ask for the air. */
    static final Parameter HEADWIND = Parameter.number(
                    "headwind", 0, "wind along the road in km/h against the riders, below 0 from behind")
            .within(-60, 60);

    private static final double KMH_PER_MPS = 3.6;

    private Riders() {}

    static RecordId group(Inputs in) {
        return in.subject(Scope.RIDERS);
    }

    /** The wheel by its measured roll-out, else by rim and tyre. */
    static Wheel wheel(Inputs in) {
        Optional<Amount> rollOut = in.get(group(in), RiderGroup.ROLL_OUT);
        if (rollOut.isPresent()) {
            return Wheel.ofRollOut(rollOut.get().value());
        }
        Gathering all = new Gathering(in);
        Optional<Double> beadSeat = all.number(
                group(in),
                RiderGroup.BEAD_SEAT,
                "write the bead seat diameter in mm, for example 622, or fill in rollOut_mm");
        Optional<Double> tyre = all.number(
                group(in), RiderGroup.TYRE, "write the width of the tyre in mm, for example 57, or fill in rollOut_mm");
        all.end();
        return Wheel.ofMarking(
                beadSeat.orElseThrow(), tyre.orElseThrow(), in.amount(group(in), RiderGroup.LOADED_FACTOR));
    }

    /** Rider, bike and luggage. */
    static RidingSystem system(Inputs in) {
        RecordId group = group(in);
        Gathering all = new Gathering(in);
        Optional<Double> rider = all.number(group, RiderGroup.RIDER_MASS, "write the rider's weight in kg");
        Optional<Double> bike = all.number(group, RiderGroup.BIKE_MASS, "write the bike's weight in kg");
        Optional<Double> rolling = all.number(
                group, RiderGroup.ROLLING_RESISTANCE, "write the coefficient of rolling resistance, for example 0.01");
        Optional<Double> drag = all.number(group, RiderGroup.DRAG_AREA, "write the drag area in m², for example 0.4");
        all.end();
        return RidingSystem.plain(
                rider.orElseThrow() + bike.orElseThrow() + in.amount(group, RiderGroup.LUGGAGE),
                rolling.orElseThrow(),
                drag.orElseThrow(),
                in.amount(group, RiderGroup.EFFICIENCY));
    }

    /** Power held for an hour, in W. */
    static double hourPower(Inputs in) {
        return Gathering.number(
                in, group(in), RiderGroup.POWER_HOUR, "write the power that the riders hold for an hour, in W");
    }

    /** The project's air, with the headwind asked for. */
    static Air air(Inputs in) {
        return new Air(in.amount(RecordId.PROJECT, Project.AIR_DENSITY), in.number(HEADWIND.name()) / KMH_PER_MPS);
    }

    /** A rider group at work: what a gear is ridden with. */
    record Effort(RidingSystem system, Wheel wheel, double powerW) {}

    /** Reads all of an effort, so that everything missing is named at once. */
    static Effort effort(Inputs in, Supplier<Double> power) {
        Gathering all = new Gathering(in);
        Optional<RidingSystem> system = all.read(() -> system(in));
        Optional<Wheel> wheel = all.read(() -> wheel(in));
        Optional<Double> watts = all.read(power);
        all.end();
        return new Effort(system.orElseThrow(), wheel.orElseThrow(), watts.orElseThrow());
    }

    /** A quantity that says so where the speed it belongs to is below walking pace. */
    static Quantity orWalks(Inputs in, double value, Unit unit, double speedKmh) {
        boolean walks = speedKmh < in.amount(RecordId.PROJECT, Project.WALKING_SPEED);
        return new Quantity(value, unit, walks ? "walks" : "");
    }
}
