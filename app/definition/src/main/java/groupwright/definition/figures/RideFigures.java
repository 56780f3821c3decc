package groupwright.definition.figures;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Band;
import groupwright.definition.figure.Direction;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.FigureFamily;
import groupwright.definition.figure.Inputs;
import groupwright.definition.figure.Missing;
import groupwright.definition.figure.Parameter;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Series;
import groupwright.definition.figure.Subject;
import groupwright.definition.figure.Unit;
import groupwright.definition.record.Settings;
import groupwright.drivetrain.terrain.Profile;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * What a whole ride on a rider group's terrain comes to. All figures ask {@code ride}, so that the ledger predicts once for
 * each concept, group, length and wind. They state no band: central differences would predict twice for each banded input.
 */
public final class RideFigures implements FigureFamily {
    /** The figure that predicts; the others take their numbers from it. */
    public static final String RIDE = "ride";

    private static final String MODEL = "own ride model on the power balance of Martin et al., J. Applied Biomechanics"
            + " 14(3):276-291, 1998; shifting and power by grade are own assumptions";
    private static final String LEAVES_OUT =
            "that grades vary within a band: shares jump where the cadence on one of the few grades crosses an end of what is"
                    + " preferred; time lost in shifts, looking ahead, corners, tiring, traffic; how uncertain inputs make it (no band is stated)";
    private static final String OF_RIDE = "; from the energy along hills with the group's shares of grades";
    private static final Parameter BY = Parameter.choice(
            "by",
            List.of("time", "distance", "work", "turns"),
            "what is shared out: time, distance, work or turns of the crank");
    private static final Map<String, String> ENDINGS =
            Map.of("time", "time_s", "distance", "distance_m", "work", "work_J", "turns", "turns");

    @Override
    public List<Figure> figures() {
        return List.of(
                ride(),
                averageSpeed(),
                comfort(),
                perHour("shift-actions", "times the riders shift", "75", RideSums::shiftsPerHour),
                perHour("cogs-shifted", "cogs moved, either way,", "107", RideSums::cogsPerHour),
                perHour("front-shifts", "changes to another ring", "21", RideSums::frontShiftsPerHour),
                walking(),
                grinding(),
                work(),
                gearUse(),
                cadences());
    }

    private static Figure.Builder ofRide(String id) {
        return Names.figure(id)
                .of(Scope.CONCEPT, Scope.RIDERS)
                .with(PredictedRide.LENGTH)
                .with(Riders.HEADWIND)
                .source(MODEL)
                .leavesOut(LEAVES_OUT);
    }

    private static Figure ride() {
        return ofRide(RIDE)
                .formula("½ m v₁² = ½ m v₀² + Δs · (efficiency · P / v₁ - F(v₁)) along hills with the group's shares of"
                        + " grades; sums of the whole ride, each position ending in its unit")
                .resolution(0.1)
                .example("ride C-901 G-901 ride-length=1", "length_m=1000.0 …")
                .computedBy(in -> PredictedRide.on(in, PredictedRide::ofTerrain).series());
    }

    /** The figure {@code ride} on other ground than the rider group's terrain; in no catalogue. */
    public static Figure rideOn(Profile ground) {
        return Figure.named("ride-on-track", "Predicted ride on a track")
                .of(Scope.CONCEPT, Scope.RIDERS)
                .with(Riders.HEADWIND)
                .formula("as of the figure ride")
                .source(MODEL)
                .leavesOut(LEAVES_OUT)
                .example("ride-on-track C-901 G-901", "")
                .computedBy(in -> PredictedRide.on(in, other -> ground).series());
    }

    private static RideSums asked(Inputs in) {
        return asked(in, in.subject());
    }

    /** The predicted ride of a concept with riders, at the length and wind asked for. */
    static RideSums asked(Inputs in, Subject subject) {
        Settings settings = Settings.NONE
                .with(PredictedRide.LENGTH.name(), in.word(PredictedRide.LENGTH.name()))
                .with(Riders.HEADWIND.name(), in.word(Riders.HEADWIND.name()));
        Answer ride = in.ask(RIDE, subject, settings);
        if (ride instanceof Missing missing) {
            throw in.missing(missing);
        }
        return RideSums.of((Series) ride);
    }

    private static Figure.Builder number(String id, Unit unit, double resolution) {
        return ofRide(id).in(unit).resolution(resolution).uses(RIDE).band((value, in) -> Band.NOT_STATED);
    }

    private static Figure computed(Figure.Builder builder, Unit unit, ToDoubleFunction<RideSums> number) {
        return builder.computedBy(in -> Quantity.of(number.applyAsDouble(asked(in)), unit));
    }

    private static Figure averageSpeed() {
        Figure.Builder builder = number("average-speed", Unit.KILOMETRES_PER_HOUR, 0.1)
                .better(Direction.HIGHER_IS_BETTER)
                .formula("length / time, walking included" + OF_RIDE)
                .example("average-speed C-901 G-901", "20.9");
        return computed(builder, Unit.KILOMETRES_PER_HOUR, RideSums::averageKmh);
    }

    private static Figure comfort() {
        Figure.Builder builder = number("cadence-comfort", Unit.PERCENT, 1)
                .better(Direction.HIGHER_IS_BETTER)
                .formula("100 · time pedalled within the preferred cadences / time pedalled or walked" + OF_RIDE)
                .example("cadence-comfort C-901 G-901", "89");
        return computed(builder, Unit.PERCENT, RideSums::comfortPct);
    }

    private static Figure perHour(String id, String what, String example, ToDoubleFunction<RideSums> number) {
        Figure.Builder builder = number(id, Unit.PER_HOUR, 1)
                .better(Direction.LOWER_IS_BETTER)
                .formula(what + " in an hour of the ride" + OF_RIDE)
                .example(id + " C-901 G-901", example);
        return computed(builder, Unit.PER_HOUR, number);
    }

    private static Figure walking() {
        Figure.Builder builder = number("walking-time", Unit.PERCENT, 0.1)
                .better(Direction.LOWER_IS_BETTER)
                .formula(
                        "100 · time on foot, where the power does not reach walking speed / time of the ride" + OF_RIDE)
                .example("walking-time C-901 G-901", "0.0");
        return computed(builder, Unit.PERCENT, RideSums::walkingPct);
    }

    private static Figure grinding() {
        Figure.Builder builder = number("grinding-time", Unit.PERCENT, 0.1)
                .better(Direction.LOWER_IS_BETTER)
                .formula("100 · time pedalled below the least cadence / time of the ride" + OF_RIDE)
                .example("grinding-time C-901 G-901", "0.0");
        return computed(builder, Unit.PERCENT, RideSums::grindingPct);
    }

    private static Figure work() {
        Figure.Builder builder = number("ride-work", Unit.KILOJOULE, 1)
                .formula("work at the crank over the length of the ride" + OF_RIDE)
                .example("ride-work C-901 G-901", "1092");
        return computed(builder, Unit.KILOJOULE, RideSums::workKj);
    }

    private static Figure gearUse() {
        return shares("gear-use")
                .with(BY)
                .formula("100 · time (distance, work, turns) pedalled in a gear / that in all gears, by rising ratio"
                        + OF_RIDE)
                .example(
                        "gear-use C-901 G-901 by=distance",
                        "20/30=0.0 20/25=0.0 20/21=0.1 20/18=0.1 20/15=57.4 40/25=4.5 20/12=0.1 40/21=1.2 20/10=1.4 "
                                + "40/18=1.4 40/15=11.7 40/12=13.3 40/10=8.9")
                .computedBy(in -> asked(in).gearShares(ENDINGS.get(in.word(BY.name()))));
    }

    private static Figure cadences() {
        return shares("cadence-distribution")
                .formula("100 · time pedalled between two cadences, 10 rpm apart, the lower included / time pedalled"
                        + OF_RIDE)
                .example(
                        "cadence-distribution C-901 G-901",
                        "0-10=0.0 10-20=0.0 20-30=0.0 30-40=0.0 40-50=0.0 50-60=0.0 60-70=3.4 70-80=83.9 80-90=9.8 "
                                + "90-100=2.1 100-110=0.8")
                .computedBy(in -> asked(in).cadenceShares());
    }

    private static Figure.Builder shares(String id) {
        return ofRide(id).in(Unit.PERCENT).resolution(0.1).uses(RIDE);
    }
}
