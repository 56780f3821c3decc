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
import groupwright.definition.record.Concept;
import groupwright.definition.record.RecordId;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Where cage and guide pulley stand in the gears in use, and what they leave free. */
public final class CageFigures implements FigureFamily {
    private static final Parameter BETWEEN = Parameter.choice(
            "between", List.of("tips", "pitch-circles"), "measured between the tips of the teeth or the pitch circles");
    private static final Parameter CAGE_OF =
            Parameter.choice("of", List.of("least", "most", "spread"), "the least, the most, or the difference");
    private static final Parameter FREE_OF =
            Parameter.choice("of", List.of("least", "spread"), "the least, or the difference of most and least");
    private static final String TIPS = "; outside diameter p · (0.6 + cot(π/z)) (from memory)";
    private static final String OVER = " over the gears in use, at both ends of the suspension travel";

    @Override
    public List<Figure> figures() {
        return List.of(angle(), angles(), gap(), gaps(), free(), frees(), swing());
    }

    static Figure.Builder ofPath(String id, Unit unit, double resolution) {
        return Names.figure(id)
                .of(Scope.CONCEPT, Scope.BIKE)
                .in(unit)
                .with(ChainPaths.LINKS)
                .uses(ChainPaths.CHAIN_PATH)
                .source(ChainPaths.SOURCE)
                .leavesOut(ChainPaths.LEAVES_OUT)
                .resolution(resolution);
    }

    private static Figure angle() {
        return ofPath("cage-angle", Unit.DEGREE, 0.1)
                .with(CAGE_OF)
                .formula("cage angle, 0 forward, -90 down:" + OVER
                        + "; where the chain does not close, that of the stop")
                .example("cage-angle C-901 B-901", "-135.3")
                .computedBy(in -> extreme(in, in.word(CAGE_OF.name()), GearPath.CAGE, Unit.DEGREE));
    }

    private static Figure angles() {
        return ofPath("cage-angles", Unit.DEGREE, 0.1)
                .with(ChainPaths.SUSPENSION)
                .formula("cage angle of each gear in use, 0 forward, -90 down")
                .example("cage-angles C-901 B-901", "20/10=-135.3 20/12=-127.4 …")
                .computedBy(in -> each(in, Unit.DEGREE, path -> path.number(GearPath.CAGE)));
    }

    private static Figure gap() {
        return ofPath("pulley-gap", Unit.MILLIMETRE, 0.1)
                .with(BETWEEN)
                .better(Direction.HIGHER_IS_BETTER)
                .formula("least distance of guide pulley and cog" + OVER + TIPS
                        + "; 0 where the pulley is driven onto the cog")
                .example("pulley-gap C-901 B-901", "9.3")
                .computedBy(in -> extreme(in, "least", gapName(in), Unit.MILLIMETRE));
    }

    private static Figure gaps() {
        return ofPath("pulley-gaps", Unit.MILLIMETRE, 0.1)
                .with(BETWEEN)
                .with(ChainPaths.SUSPENSION)
                .formula("distance of guide pulley and cog, each gear in use" + TIPS)
                .example("pulley-gaps C-901 B-901", "20/10=9.3 20/12=11.7 …")
                .computedBy(in -> each(in, Unit.MILLIMETRE, path -> path.number(gapName(in))));
    }

    private static String gapName(Inputs in) {
        return tips(in) ? GearPath.GAP_TIPS : GearPath.GAP_PITCH;
    }

    private static boolean tips(Inputs in) {
        return in.word(BETWEEN.name()).equals("tips");
    }

    private static Figure free() {
        return ofPath("free-chain", Unit.LINKS, 0.01)
                .with(FREE_OF)
                .with(BETWEEN)
                .formula("free length of the chain between cog and guide pulley / pitch:" + OVER + TIPS)
                .example("free-chain C-901 B-901", "1.32")
                .computedBy(in -> extreme(in, in.word(FREE_OF.name()), freeName(in), Unit.LINKS));
    }

    private static Figure frees() {
        return ofPath("free-chains", Unit.LINKS, 0.01)
                .with(BETWEEN)
                .with(ChainPaths.SUSPENSION)
                .formula("free length of the chain between cog and guide pulley / pitch, each gear in use" + TIPS)
                .example("free-chains C-901 B-901", "20/10=1.32 20/12=1.64 …")
                .computedBy(in -> each(in, Unit.LINKS, path -> path.number(freeName(in))));
    }

    private static String freeName(Inputs in) {
        return tips(in) ? GearPath.FREE_TIPS : GearPath.FREE_PITCH;
    }

    private static Figure swing() {
        return ofPath("cage-swing", Unit.DEGREE, 0.1)
                .better(Direction.LOWER_IS_BETTER)
                .formula("turn of the cage in the lowest gear from suspension at rest to full chain growth")
                .example("cage-swing C-901 B-901", "0.0")
                .computedBy(CageFigures::swing);
    }

    private static Answer swing(Inputs in) {
        String lowest = RideSums.name(Gears.inUse(in).lowest());
        List<ChainPaths.Sprung> ends = ChainPaths.inUse(in).stream()
                .filter(gear -> gear.path().gear().equals(lowest))
                .toList();
        double rest = cage(in, ends.get(0));
        double full = cage(in, ends.get(ends.size() - 1));
        String trouble = ends.get(ends.size() - 1).path().trouble();
        return new Quantity(Math.abs(full - rest), Unit.DEGREE, trouble);
    }

    private static double cage(Inputs in, ChainPaths.Sprung gear) {
        return gear.path().number(GearPath.CAGE).orElseThrow(() -> nowhere(in, List.of(gear)));
    }

    /** Least, most or spread of a number over the gears in use; the remark names the gear, and what does not close. */
    static Quantity extreme(Inputs in, String which, String number, Unit unit) {
        List<ChainPaths.Sprung> gears = ChainPaths.inUse(in);
        Comparator<ChainPaths.Sprung> byNumber =
                Comparator.comparingDouble(gear -> gear.path().number(number).orElseThrow());
        List<ChainPaths.Sprung> there = gears.stream()
                .filter(gear -> gear.path().number(number).isPresent())
                .toList();
        ChainPaths.Sprung least = there.stream().min(byNumber).orElseThrow(() -> nowhere(in, gears));
        ChainPaths.Sprung most = there.stream().max(byNumber).orElseThrow();
        double low = least.path().number(number).orElseThrow();
        double high = most.path().number(number).orElseThrow();
        return switch (which) {
            case "least" -> new Quantity(low, unit, remark(least.name(), gears));
            case "most" -> new Quantity(high, unit, remark(most.name(), gears));
            default -> new Quantity(high - low, unit, remark(least.name() + " to " + most.name(), gears));
        };
    }

    private static String remark(String where, List<ChainPaths.Sprung> gears) {
        List<ChainPaths.Sprung> open =
                gears.stream().filter(gear -> !gear.path().closes()).toList();
        if (open.isEmpty()) {
            return where;
        }
        long count = open.stream().map(gear -> gear.path().gear()).distinct().count();
        return where + "; " + open.get(0).path().trouble() + open.get(0).end()
                + (count == 1 ? "" : ", " + count + " in all do not close");
    }

    private static RuntimeException nowhere(Inputs in, List<ChainPaths.Sprung> gears) {
        RecordId concept = in.subject(Scope.CONCEPT);
        return in.missing(
                concept,
                Concept.DERAILLEUR,
                "the cage has no position in any gear, for example "
                        + gears.get(0).path().trouble() + "; check pivot, path, stops and chain");
    }

    /** A number of each gear in use at the end of the suspension travel that was asked for; gears without it left out. */
    static Series each(Inputs in, Unit unit, Function<GearPath, Optional<Double>> number) {
        Set<String> used = Gears.inUse(in).gears().stream().map(RideSums::name).collect(Collectors.toSet());
        List<GearPath> paths =
                ChainPaths.asked(in, in.whole(ChainPaths.LINKS.name()), in.word(ChainPaths.SUSPENSION.name()));
        return new Series(
                unit,
                paths.stream()
                        .filter(path -> used.contains(path.gear()))
                        .flatMap(path -> number.apply(path).map(value -> new Series.At(path.gear(), value)).stream())
                        .toList());
    }
}
