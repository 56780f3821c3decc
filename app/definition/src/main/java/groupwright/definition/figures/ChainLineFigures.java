package groupwright.definition.figures;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Direction;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.FigureFamily;
import groupwright.definition.figure.Inputs;
import groupwright.definition.figure.Parameter;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Series;
import groupwright.definition.figure.Unit;
import groupwright.definition.record.Bike;
import groupwright.definition.record.Concept;
import groupwright.definition.record.RecordId;
import groupwright.drivetrain.gearing.ChainLine;
import groupwright.drivetrain.gearing.Gear;
import groupwright.drivetrain.gearing.GearSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** How far the gears bend the chain sideways on a bike. */
public final class ChainLineFigures implements FigureFamily {
    private static final Parameter OF =
            Parameter.choice("of", List.of("lowest", "worst"), "which gear in use: the lowest, or the one bent most");
    private static final Parameter LIMIT = Parameter.number("chain-angle", "largest angle in degrees that is used")
            .within(0, 20);

    @Override
    public List<Figure> figures() {
        return List.of(angle(), angles(), usable(), lines());
    }

    private static Figure.Builder ofBike(String id) {
        return Names.figure(id)
                .of(Scope.CONCEPT, Scope.BIKE)
                .source("common practice, no source")
                .leavesOut("sideways play of the chain; that it bends at single links")
                .version(2)
                .resolution(0.01);
    }

    private static Figure angle() {
        return ofBike("chain-angle")
                .in(Unit.DEGREE)
                .better(Direction.LOWER_IS_BETTER)
                .with(OF)
                .formula(
                        "atan(|line of the ring - line of the cog| / free span of the chain), gears in use, free span = "
                                + "sqrt(chainstay² - (difference of the pitch radii)²)")
                .example("chain-angle C-901 B-901 of=worst", "1.78")
                .computedBy(ChainLineFigures::angleOf);
    }

    private static Answer angleOf(Inputs in) {
        Bent bent = bent(in);
        Gear gear = in.word(OF.name()).equals("lowest")
                ? bent.set().lowest()
                : bent.set().gears().stream()
                        .max(Comparator.comparingDouble(bent::deg))
                        .orElseThrow();
        return new Quantity(bent.deg(gear), Unit.DEGREE, RideSums.name(gear));
    }

    private static Figure angles() {
        return ofBike("chain-angles")
                .in(Unit.DEGREE)
                .formula("atan(|line of the ring - line of the cog| / free span of the chain), each gear in use by "
                        + "rising ratio, free span = sqrt(chainstay² - (difference of the pitch radii)²)")
                .example(
                        "chain-angles C-901 B-901",
                        "20/30=1.38 20/25=0.86 20/21=0.33 20/18=0.20 20/15=0.72 40/25=1.78 20/12=1.25 40/21=1.26 "
                                + "20/10=1.78 40/18=0.73 40/15=0.20 40/12=0.33 40/10=0.86")
                .computedBy(in -> {
                    Bent bent = bent(in);
                    return new Series(
                            Unit.DEGREE,
                            bent.set().gears().stream()
                                    .map(gear -> new Series.At(RideSums.name(gear), bent.deg(gear)))
                                    .toList());
                });
    }

    private static Figure usable() {
        return ofBike("usable-gears")
                .better(Direction.HIGHER_IS_BETTER)
                .with(LIMIT)
                .formula("gears that are not excluded and bend the chain no further than chain-angle")
                .resolution(1)
                .example("usable-gears C-901 B-901 chain-angle=1", "8")
                .computedBy(ChainLineFigures::countUsable);
    }

    private static Figure lines() {
        return ofBike(ChainLines.FIGURE)
                .in(Unit.MILLIMETRE)
                .formula("rings evenly about the chain line in front, larger ones further out; cogs about the middle"
                        + " of the cassette, smaller ones further out; from the middle plane of the frame")
                .leavesOut("that rings may stand unevenly")
                .example(ChainLines.FIGURE + " C-901 B-901", "ring 20=44 …")
                .computedBy(in -> {
                    Bent bent = bent(in);
                    return ChainLines.of(bent.set().crankset(), bent.set().cassette(), bent.line())
                            .asSeries();
                });
    }

    private static Answer countUsable(Inputs in) {
        Bent bent = bent(in);
        double most = in.number(LIMIT.name());
        return Quantity.of(
                bent.set().gears().stream()
                        .filter(gear -> bent.deg(gear) <= most)
                        .count(),
                Unit.NONE);
    }

    /** Gears on their lines. */
    private record Bent(GearSet set, ChainLine line) {
        double deg(Gear gear) {
            return line.angleDeg(set, gear);
        }
    }

    private static Bent bent(Inputs in) {
        RecordId concept = in.subject(Scope.CONCEPT);
        RecordId bike = in.subject(Scope.BIKE);
        GearSet set = Gears.inUse(in);
        Gathering all = new Gathering(in);
        Optional<Double> front =
                all.number(concept, Concept.FRONT_CHAIN_LINE, "write the chain line in front in mm, for example 52");
        Optional<Double> rings = unlessSingle(
                set.crankset().rings().size(),
                () -> all.number(concept, Concept.RING_SPACING, "write the distance from ring to ring in mm"));
        Optional<List<Double>> cogs = all.read(() -> Gears.cogSpacings(in));
        Optional<Double> cassette = all.number(
                bike,
                Bike.CASSETTE_CENTRE,
                "write how far the middle of the cassette lies from that of the frame, in mm");
        Optional<Double> stay = all.number(bike, Bike.CHAINSTAY, "write the length of the chainstay in mm");
        all.end();
        return new Bent(
                set,
                new ChainLine(
                        front.orElseThrow(),
                        rings.orElseThrow(),
                        cassette.orElseThrow(),
                        cogs.orElseThrow(),
                        stay.orElseThrow()));
    }

    /** One ring has no distance to another. */
    private static Optional<Double> unlessSingle(int count, Supplier<Optional<Double>> spacing) {
        return count == 1 ? Optional.of(0.0) : spacing.get();
    }
}
