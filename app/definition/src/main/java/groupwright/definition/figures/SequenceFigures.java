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
import groupwright.definition.figure.Series;
import groupwright.definition.figure.Unit;
import groupwright.definition.record.Concept;
import groupwright.drivetrain.gearing.FrontShifts;
import groupwright.drivetrain.gearing.GearSet;
import groupwright.drivetrain.gearing.Shift;
import groupwright.drivetrain.gearing.ShiftSequence;
import groupwright.drivetrain.quantity.Chainring;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/** Gears in the order in which they get harder, and what changing the ring asks of the rider. */
public final class SequenceFigures implements FigureFamily {
    private static final String COMMON = "common practice, no source";
    private static final String ORDER = "that few riders shift through all gears in this order";
    private static final Parameter CADENCE =
            Parameter.number("cadence", 90, "cadence in rpm before each shift").within(1, 250);

    @Override
    public List<Figure> figures() {
        return List.of(ratios(), sequence(), cadences(), overlap(), madeUp());
    }

    private static Figure.Builder ofGears(String id) {
        return Names.figure(id).of(Scope.CONCEPT).source(COMMON);
    }

    private static Figure ratios() {
        return ofGears("gear-ratios")
                .formula("ring / cog; each gear in use as ring/cog, by rising ratio")
                .leavesOut("the wheel: see developments")
                .resolution(0.001)
                .example(
                        "gear-ratios C-901",
                        "20/30=0.667 20/25=0.800 20/21=0.952 20/18=1.111 20/15=1.333 40/25=1.600 20/12=1.667 "
                                + "40/21=1.905 20/10=2.000 40/18=2.222 40/15=2.667 40/12=3.333 40/10=4.000")
                .computedBy(in -> new Series(
                        Unit.NONE,
                        Gears.inUse(in).gears().stream()
                                .map(gear -> new Series.At(RideSums.name(gear), gear.ratio()))
                                .toList()));
    }

    private static Figure sequence() {
        return ofGears("shift-sequence")
                .in(Unit.PERCENT)
                .formula("100 · (next ratio / ratio - 1) from each gear in use to the next by rising ratio")
                .leavesOut(ORDER)
                .resolution(0.1)
                .example(
                        "shift-sequence C-901",
                        "20/30-20/25=20.0 20/25-20/21=19.0 20/21-20/18=16.7 20/18-20/15=20.0 20/15-40/25=20.0 "
                                + "40/25-20/12=4.2 20/12-40/21=14.3 40/21-20/10=5.0 20/10-40/18=11.1 40/18-40/15=20.0 "
                                + "40/15-40/12=25.0 40/12-40/10=20.0")
                .computedBy(in -> ofShifts(
                        Unit.PERCENT,
                        sequence(in).shifts(),
                        sequence(in).shifts().stream().map(Shift::stepPct).toList()));
    }

    private static Figure cadences() {
        return ofGears("shift-sequence-cadence")
                .in(Unit.RPM)
                .with(CADENCE)
                .formula("cadence · ratio / next ratio: just after each shift of the sequence, at the same speed")
                .leavesOut(ORDER)
                .resolution(0.1)
                .example(
                        "shift-sequence-cadence C-901",
                        "20/30-20/25=75.0 20/25-20/21=75.6 20/21-20/18=77.1 20/18-20/15=75.0 20/15-40/25=75.0 "
                                + "40/25-20/12=86.4 20/12-40/21=78.8 40/21-20/10=85.7 20/10-40/18=81.0 40/18-40/15=75.0 "
                                + "40/15-40/12=72.0 40/12-40/10=75.0")
                .computedBy(in -> ofShifts(
                        Unit.RPM, sequence(in).shifts(), sequence(in).cadencesAfterRpm(in.number(CADENCE.name()))));
    }

    private static ShiftSequence sequence(Inputs in) {
        return ShiftSequence.of(Gears.inUse(in));
    }

    private static Series ofShifts(Unit unit, List<Shift> shifts, List<Double> numbers) {
        List<Series.At> values = new ArrayList<>();
        for (int i = 0; i < shifts.size(); i++) {
            values.add(new Series.At(name(shifts.get(i)), numbers.get(i)));
        }
        return new Series(unit, values);
    }

    private static String name(Shift shift) {
        return RideSums.name(shift.from()) + "-" + RideSums.name(shift.to());
    }

    private static Figure overlap() {
        return ofGears("overlap")
                .in(Unit.PERCENT)
                .formula(
                        "least 100 · (highest ratio on a ring / lowest ratio on the next larger ring - 1), gears in use;"
                                + " below 0 is a gap")
                .leavesOut("how many of the gears in the overlap are needed")
                .resolution(0.1)
                .example("overlap C-901", "25.0")
                .computedBy(SequenceFigures::leastOverlap);
    }

    private static Answer leastOverlap(Inputs in) {
        GearSet set = Gears.inUse(in);
        List<Chainring> rings = set.crankset().rings();
        double least = Double.POSITIVE_INFINITY;
        String between = "";
        for (int i = 1; i < rings.size(); i++) {
            OptionalDouble overlap = FrontShifts.overlapPct(set, rings.get(i - 1), rings.get(i));
            if (overlap.isPresent() && overlap.getAsDouble() < least) {
                least = overlap.getAsDouble();
                between = rings.get(i - 1).teeth() + "-" + rings.get(i).teeth();
            }
        }
        if (between.isEmpty()) {
            throw oneRing(in, "fewer than two rings have gears in use; overlap needs a second ring");
        }
        return new Quantity(least, Unit.PERCENT, between);
    }

    private static Figure madeUp() {
        return ofGears("made-up-shifts")
                .better(Direction.LOWER_IS_BETTER)
                .formula(
                        "most cogs between a gear in use and the gear of nearest ratio, by |ln|, on the next larger ring,"
                                + " where that ring can give the ratio")
                .leavesOut("that riders may take the next harder gear rather than the nearest one")
                .example("made-up-shifts C-901", "4")
                .computedBy(SequenceFigures::mostMadeUp);
    }

    private static Answer mostMadeUp(Inputs in) {
        Shift most = FrontShifts.madeUp(Gears.inUse(in)).stream()
                .max(Comparator.comparingInt(shift -> Math.abs(shift.cogsMoved())))
                .orElseThrow(
                        () -> oneRing(in, "no gear in use has its like on a larger ring; it needs rings that overlap"));
        return new Quantity(Math.abs(most.cogsMoved()), Unit.NONE, name(most));
    }

    private static MissingSignal oneRing(Inputs in, String remedy) {
        return in.missing(in.subject(Scope.CONCEPT), Concept.RINGS, remedy);
    }
}
