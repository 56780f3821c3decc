package groupwright.definition.figures;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Direction;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.FigureFamily;
import groupwright.definition.figure.Inputs;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Series;
import groupwright.definition.figure.Unit;
import groupwright.definition.record.Project;
import groupwright.definition.record.RecordId;
import groupwright.drivetrain.gearing.DistinctGears;
import groupwright.drivetrain.gearing.Gear;
import groupwright.drivetrain.gearing.GearRange;
import groupwright.drivetrain.gearing.GearSet;
import groupwright.drivetrain.gearing.Wheel;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** How many gears there are and how far they reach. */
public final class GearingFigures implements FigureFamily {
    private static final String DEVELOPMENT = "circumference · ring / cog; circumference = measured roll-out,"
            + " or loaded factor · pi · (bead seat + 2 · tyre height)";

    @Override
    public List<Figure> figures() {
        return List.of(
                gearRange(),
                gearRangeWithoutSmallest(),
                gears(),
                distinctGears(),
                developments(),
                development("lowest-development", GearSet::lowest, Direction.LOWER_IS_BETTER, "1.33"),
                development("highest-development", GearSet::highest, Direction.HIGHER_IS_BETTER, "8.00"));
    }

    private static Figure gearRange() {
        return Names.figure("gear-range")
                .of(Scope.CONCEPT)
                .in(Unit.PERCENT)
                .better(Direction.HIGHER_IS_BETTER)
                .formula("100 · highest ratio / lowest ratio, over the gears in use; ratio = ring / cog")
                .source("common practice, no source")
                .leavesOut("how often the gears at both ends are ridden")
                .resolution(0.1)
                .example("gear-range C-901", "600.0")
                .computedBy(in -> Quantity.of(GearRange.pct(Gears.inUse(in)), Unit.PERCENT));
    }

    private static Figure gearRangeWithoutSmallest() {
        return Names.figure("gear-range-without-smallest")
                .of(Scope.CONCEPT)
                .in(Unit.PERCENT)
                .better(Direction.HIGHER_IS_BETTER)
                .formula("100 · highest ratio / lowest ratio, over the gears in use that are not on the smallest cog")
                .source("common practice, no source")
                .leavesOut("how often the gears at both ends are ridden")
                .resolution(0.1)
                .example("gear-range-without-smallest C-901", "500.0")
                .computedBy(GearingFigures::withoutSmallest);
    }

    private static Answer withoutSmallest(Inputs in) {
        return Quantity.of(
                GearRange.withoutSmallestCogPct(Gears.inUse(in)).orElseThrow(() -> Gears.tooFewCogs(in, 2)),
                Unit.PERCENT);
    }

    private static Figure gears() {
        return Names.figure("gears")
                .of(Scope.CONCEPT)
                .formula("rings · cogs - excluded gears")
                .source("elementary arithmetic")
                .leavesOut("that some gears have nearly the same ratio; see distinct-gears")
                .example("gears C-901", "13")
                .computedBy(in -> Quantity.of(Gears.inUse(in).gears().size(), Unit.NONE));
    }

    private static Figure distinctGears() {
        return Names.figure("distinct-gears")
                .of(Scope.CONCEPT)
                .better(Direction.HIGHER_IS_BETTER)
                .formula(
                        "gears kept when walking up from the lowest ratio, each at least distinctGears_pct above the last")
                .source("common practice, no source")
                .leavesOut("that a step is felt more at a high cadence")
                .example("distinct-gears C-901", "13")
                .computedBy(GearingFigures::distinct);
    }

    private static Answer distinct(Inputs in) {
        double share = in.amount(RecordId.PROJECT, Project.DISTINCT_GEARS) / 100;
        return Quantity.of(DistinctGears.of(Gears.inUse(in), share).size(), Unit.NONE);
    }

    private static Figure developments() {
        return ofWheel("developments")
                .formula(DEVELOPMENT + "; each gear in use as ring/cog, by rising ratio")
                .example(
                        "developments C-901 G-901",
                        "20/30=1.33 20/25=1.60 20/21=1.90 20/18=2.22 20/15=2.67 40/25=3.20 20/12=3.33 40/21=3.81 "
                                + "20/10=4.00 40/18=4.44 40/15=5.33 40/12=6.67 40/10=8.00")
                .computedBy(GearingFigures::developmentOfEach);
    }

    private static Answer developmentOfEach(Inputs in) {
        Gathering all = new Gathering(in);
        Optional<GearSet> gears = all.read(() -> Gears.inUse(in));
        Optional<Wheel> wheel = all.read(() -> Riders.wheel(in));
        all.end();
        return new Series(
                Unit.METRE,
                gears.orElseThrow().gears().stream()
                        .map(gear -> new Series.At(
                                gear.ring().teeth() + "/" + gear.cog().teeth(), gear.developmentM(wheel.orElseThrow())))
                        .toList());
    }

    private static Figure development(String id, Function<GearSet, Gear> which, Direction better, String example) {
        return ofWheel(id)
                .better(better)
                .formula(DEVELOPMENT)
                .example(id + " C-901 G-901", example)
                .computedBy(in -> Quantity.of(which.apply(Gears.inUse(in)).developmentM(Riders.wheel(in)), Unit.METRE));
    }

    private static Figure.Builder ofWheel(String id) {
        return Names.figure(id)
                .of(Scope.CONCEPT, Scope.RIDERS)
                .in(Unit.METRE)
                .source("development: footnote to 16 CFR 1512.5; tyre height: ISO 5775-1 by an encyclopaedia's summary")
                .leavesOut("tyre pressure, rim width, slip")
                .resolution(0.01);
    }
}
