package groupwright.definition.figures;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Direction;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.FigureFamily;
import groupwright.definition.figure.Inputs;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Unit;
import groupwright.definition.record.RiderGroup;
import groupwright.drivetrain.gearing.Gear;
import groupwright.drivetrain.gearing.GearSet;
import groupwright.drivetrain.gearing.Wheel;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The ends of the gears in the older measures of the trade: gear inches and gain ratio. */
public final class PedalFigures implements FigureFamily {
    @Override
    public List<Figure> figures() {
        return List.of(
                inches("lowest-gear-inches", GearSet::lowest, Direction.LOWER_IS_BETTER, "16.7"),
                inches("highest-gear-inches", GearSet::highest, Direction.HIGHER_IS_BETTER, "100.3"),
                gain("lowest-gain-ratio", GearSet::lowest, Direction.LOWER_IS_BETTER, "1.25"),
                gain("highest-gain-ratio", GearSet::highest, Direction.HIGHER_IS_BETTER, "7.49"));
    }

    private static Figure.Builder ofWheel(String id) {
        return Names.figure(id)
                .of(Scope.CONCEPT, Scope.RIDERS)
                .source("common practice, no source")
                .leavesOut("tyre pressure, rim width, slip");
    }

    private static Figure inches(String id, Function<GearSet, Gear> which, Direction better, String example) {
        return ofWheel(id)
                .in(Unit.INCH)
                .better(better)
                .formula("ring / cog · circumference / (pi · 25.4)")
                .resolution(0.1)
                .example(id + " C-901 G-901", example)
                .computedBy(in -> Quantity.of(which.apply(Gears.inUse(in)).gearInches(Riders.wheel(in)), Unit.INCH));
    }

    private static Figure gain(String id, Function<GearSet, Gear> which, Direction better, String example) {
        return ofWheel(id)
                .better(better)
                .formula("ring / cog · circumference / (2 · pi · crank length)")
                .resolution(0.01)
                .example(id + " C-901 G-901", example)
                .computedBy(in -> gainOf(in, which));
    }

    private static Answer gainOf(Inputs in, Function<GearSet, Gear> which) {
        Gathering all = new Gathering(in);
        Optional<Gear> gear = all.read(() -> which.apply(Gears.inUse(in)));
        Optional<Wheel> wheel = all.read(() -> Riders.wheel(in));
        Optional<Double> crank =
                all.number(Riders.group(in), RiderGroup.CRANK_LENGTH, "write the length of the cranks in mm");
        all.end();
        return Quantity.of(gear.orElseThrow().gainRatio(wheel.orElseThrow(), crank.orElseThrow()), Unit.NONE);
    }
}
