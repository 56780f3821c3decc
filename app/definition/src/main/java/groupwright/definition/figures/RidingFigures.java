package groupwright.definition.figures;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Direction;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.FigureFamily;
import groupwright.definition.figure.Inputs;
import groupwright.definition.figure.MissingSignal;
import groupwright.definition.figure.Parameter;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Unit;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Climb;
import groupwright.definition.record.Field;
import groupwright.definition.record.RiderGroup;
import groupwright.drivetrain.gearing.Gear;
import groupwright.drivetrain.riding.Climbing;
import java.util.List;
import java.util.Optional;

/** What the gears let a rider group do. */
public final class RidingFigures implements FigureFamily {
    private static final String POWER_BALANCE =
            "efficiency · P = v · (½ · density · CdA · va · |va| + m · g · (Crr · cos a + sin a)), a = atan(grade),"
                    + " va = v + headwind";
    private static final String MARTIN =
            "Martin et al., J. Applied Biomechanics 14(3):276-291, 1998, without drag of spokes and bearings";
    private static final String STEADY =
            "wind across the road and gusts, spokes, bearings, starting off, losses that change with chain tension";
    private static final Parameter CLIMB =
            Parameter.word("climb", "the id of one of the rider group's climbs, for example steep-12");
    private static final Parameter LEAST_CADENCE = cadence("cadenceLeast_rpm");
    private static final Parameter MOST_CADENCE = cadence("cadenceMost_rpm");

    private static Parameter cadence(String field) {
        return Parameter.optionalNumber("cadence", "cadence in rpm; left out, the rider group's " + field)
                .within(1, 250);
    }

    @Override
    public List<Figure> figures() {
        return List.of(climbCadence(), climbSpeed(), steepestClimb(), spinOutSpeed(), heldSpeed());
    }

    private static Figure.Builder ofRiders(String id) {
        return Names.figure(id)
                .of(Scope.CONCEPT, Scope.RIDERS)
                .better(Direction.HIGHER_IS_BETTER)
                .resolution(0.1);
    }

    private static Figure climbCadence() {
        return ofRiders("climb-cadence")
                .in(Unit.RPM)
                .with(CLIMB)
                .with(Riders.HEADWIND)
                .formula("v / (60 · development of the lowest gear), v from " + POWER_BALANCE)
                .source(MARTIN)
                .leavesOut(STEADY)
                .example("climb-cadence C-901 G-901 climb=wall", "98.2")
                .computedBy(RidingFigures::cadenceOnClimb);
    }

    private static Answer cadenceOnClimb(Inputs in) {
        var climb = climb(in);
        return Riders.orWalks(in, climb.cadenceRpm(), Unit.RPM, climb.speedKmh());
    }

    private static Figure climbSpeed() {
        return ofRiders("climb-speed")
                .in(Unit.KILOMETRES_PER_HOUR)
                .with(CLIMB)
                .with(Riders.HEADWIND)
                .formula("v from " + POWER_BALANCE)
                .source(MARTIN)
                .leavesOut(STEADY + "; whether the cadence can be held: see climb-cadence")
                .example("climb-speed C-901 G-901 climb=wall", "7.9")
                .computedBy(RidingFigures::speedOnClimb);
    }

    private static Answer speedOnClimb(Inputs in) {
        var climb = climb(in);
        return Riders.orWalks(in, climb.speedKmh(), Unit.KILOMETRES_PER_HOUR, climb.speedKmh());
    }

    private static groupwright.drivetrain.riding.Climb climb(Inputs in) {
        double grade = onClimb(in, Climb.GRADE).orElseThrow(() -> noClimb(in)).value();
        Gear lowest = Gears.inUse(in).lowest();
        Riders.Effort effort = Riders.effort(
                in,
                () -> onClimb(in, Climb.POWER)
                        .flatMap(power -> power.map(Amount::value))
                        .orElseGet(() -> Riders.hourPower(in)));
        return Climbing.climb(effort.system(), Riders.air(in), grade / 100, effort.powerW(), lowest, effort.wheel());
    }

    private static <T> Optional<T> onClimb(Inputs in, Field<Climb, T> field) {
        return in.item(Riders.group(in), RiderGroup.CLIMBS, in.word(CLIMB.name()), field);
    }

    private static MissingSignal noClimb(Inputs in) {
        List<String> known = in.items(Riders.group(in), RiderGroup.CLIMBS);
        return in.missing(
                Riders.group(in),
                RiderGroup.CLIMBS,
                "there is no climb " + in.word(CLIMB.name()) + "; add it"
                        + (known.isEmpty() ? "" : ", or ask for one of " + String.join(", ", known)));
    }

    private static Figure steepestClimb() {
        return ofRiders("steepest-climb")
                .in(Unit.PERCENT)
                .with(LEAST_CADENCE)
                .with(Riders.HEADWIND)
                .formula("100 · grade at which the power held for an hour gives this cadence in the lowest gear; "
                        + POWER_BALANCE)
                .source(MARTIN)
                .leavesOut(STEADY + "; grip and the front wheel rising")
                .example("steepest-climb C-901 G-901 cadence=60", "17.4")
                .computedBy(RidingFigures::steepest);
    }

    private static Answer steepest(Inputs in) {
        Gathering all = new Gathering(in);
        Optional<Gear> lowest = all.read(() -> Gears.inUse(in).lowest());
        Optional<Riders.Effort> read = all.read(() -> Riders.effort(in, () -> Riders.hourPower(in)));
        Optional<Double> cadence = all.read(() -> cadence(in, LEAST_CADENCE, RiderGroup.CADENCE_LEAST));
        all.end();
        Riders.Effort effort = read.orElseThrow();
        double rpm = cadence.orElseThrow();
        double pct = Climbing.steepestGradePct(
                        effort.system(), Riders.air(in), effort.powerW(), lowest.orElseThrow(), effort.wheel(), rpm)
                .orElseThrow(() -> in.missing(
                        Riders.group(in),
                        RiderGroup.POWER_HOUR,
                        "no slope is steep enough for this power at this cadence; ask for a higher cadence"));
        return Riders.orWalks(in, pct, Unit.PERCENT, lowest.orElseThrow().speedKmh(effort.wheel(), rpm));
    }

    private static double cadence(Inputs in, Parameter parameter, Field<RiderGroup, Optional<Amount>> usual) {
        return in.optionalNumber(parameter.name())
                .orElseGet(() -> Gathering.number(
                        in, Riders.group(in), usual, "write a cadence in rpm, or ask with cadence=90"));
    }

    private static Figure spinOutSpeed() {
        return ofRiders("spin-out-speed")
                .in(Unit.KILOMETRES_PER_HOUR)
                .with(MOST_CADENCE)
                .formula("cadence · development of the highest gear · 60 / 1000")
                .source("common practice, no source")
                .leavesOut("whether the power suffices: see held-speed")
                .example("spin-out-speed C-901 G-901 cadence=100", "48.0")
                .computedBy(RidingFigures::spinOut);
    }

    private static Answer spinOut(Inputs in) {
        Gathering all = new Gathering(in);
        Optional<Gear> highest = all.read(() -> Gears.inUse(in).highest());
        Optional<Double> cadence = all.read(() -> cadence(in, MOST_CADENCE, RiderGroup.CADENCE_MOST));
        var wheel = all.read(() -> Riders.wheel(in));
        all.end();
        return Quantity.of(
                Climbing.spinOutSpeedKmh(highest.orElseThrow(), wheel.orElseThrow(), cadence.orElseThrow()),
                Unit.KILOMETRES_PER_HOUR);
    }

    private static Figure heldSpeed() {
        return ofRiders("held-speed")
                .in(Unit.KILOMETRES_PER_HOUR)
                .with(Riders.HEADWIND)
                .formula("v on the flat with the power held for an hour; " + POWER_BALANCE
                        + "; the remark is the cadence in the highest gear")
                .source(MARTIN)
                .leavesOut(STEADY + "; whether a gear suits it: see the cadence beside it")
                .example("held-speed C-901 G-901", "29.1")
                .computedBy(RidingFigures::held);
    }

    private static Answer held(Inputs in) {
        Riders.Effort effort = Riders.effort(in, () -> Riders.hourPower(in));
        double speed = Climbing.heldSpeedKmh(effort.system(), Riders.air(in), effort.powerW());
        long rpm = Math.round(Gears.inUse(in).highest().cadenceRpm(effort.wheel(), speed));
        return new Quantity(speed, Unit.KILOMETRES_PER_HOUR, rpm + " rpm in the highest gear");
    }
}
