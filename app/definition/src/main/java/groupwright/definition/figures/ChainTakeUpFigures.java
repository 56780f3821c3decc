package groupwright.definition.figures;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Direction;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.FigureFamily;
import groupwright.definition.figure.Inputs;
import groupwright.definition.figure.Parameter;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Unit;
import groupwright.definition.record.Concept;
import groupwright.drivetrain.wear.ContactTeeth;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Whether the cage takes up the chain in every gear, and how many teeth carry it. */
public final class ChainTakeUpFigures implements FigureFamily {
    /** How many gears in use do not close at one end of the suspension travel or the other. */
    public static final String GEARS_NOT_CLOSING = "gears-not-closing";

    private static final Parameter WHICH = Parameter.choice(
            "gear",
            List.of("smallest", "largest"),
            "smallest ring with smallest cog, or largest with largest, excluded or not");
    private static final Parameter ON =
            Parameter.choice("on", List.of("cog", "ring"), "the wheel whose teeth are counted");

    @Override
    public List<Figure> figures() {
        return List.of(notClosing(), leftOver(), leftOvers(), contact(), contacts());
    }

    private static Figure notClosing() {
        return CageFigures.ofPath(GEARS_NOT_CLOSING, Unit.NONE, 1)
                .better(Direction.LOWER_IS_BETTER)
                .formula(
                        "gears in use in which the chain is too tight, hangs slack or the guide pulley meets the cog, at rest"
                                + " or at full chain growth")
                .example(GEARS_NOT_CLOSING + " C-901 B-901", "0")
                .computedBy(ChainTakeUpFigures::countOpen);
    }

    private static Answer countOpen(Inputs in) {
        List<ChainPaths.Sprung> open = ChainPaths.inUse(in).stream()
                .filter(gear -> !gear.path().closes())
                .toList();
        long count = open.stream().map(gear -> gear.path().gear()).distinct().count();
        return new Quantity(
                count,
                Unit.NONE,
                open.isEmpty() ? "" : open.get(0).path().trouble() + open.get(0).end());
    }

    private static Figure leftOver() {
        return CageFigures.ofPath("chain-left-over", Unit.MILLIMETRE, 1)
                .with(WHICH)
                .formula(
                        "chain that hangs loose at the rearward stop; below 0: that is lacking at the forward stop; the worse"
                                + " end of the suspension travel")
                .example("chain-left-over C-901 B-901 gear=smallest", "0")
                .computedBy(ChainTakeUpFigures::leftOverOf);
    }

    private static Answer leftOverOf(Inputs in) {
        boolean smallest = in.word(WHICH.name()).equals("smallest");
        List<Integer> rings = in.get(in.subject(Scope.CONCEPT), Concept.RINGS); // largest first
        List<Integer> cogs = in.get(in.subject(Scope.CONCEPT), Concept.COGS); // smallest first
        String gear = smallest
                ? rings.get(rings.size() - 1) + "/" + cogs.get(0)
                : rings.get(0) + "/" + cogs.get(cogs.size() - 1);
        Comparator<ChainPaths.Sprung> byChain = Comparator.comparingDouble(
                sprung -> Math.abs(sprung.path().number(GearPath.LEFT_OVER).orElseThrow()));
        Optional<ChainPaths.Sprung> worst = ChainPaths.sprung(in).stream()
                .filter(sprung -> sprung.path().gear().equals(gear))
                .filter(sprung -> sprung.path().number(GearPath.LEFT_OVER).isPresent())
                .max(byChain);
        if (worst.isEmpty()) {
            throw in.missing(
                    in.subject(Scope.CONCEPT),
                    Concept.DERAILLEUR,
                    gear + " has the guide pulley on the cog; check pivot, path and stops");
        }
        double over = worst.get().path().number(GearPath.LEFT_OVER).orElseThrow();
        String state = over == 0 ? "closes" : over > 0 ? "hangs slack" : "too tight";
        return new Quantity(over, Unit.MILLIMETRE, worst.get().name() + " " + state);
    }

    private static Figure leftOvers() {
        return CageFigures.ofPath("chain-left-overs", Unit.MILLIMETRE, 1)
                .with(ChainPaths.SUSPENSION)
                .formula(
                        "chain that hangs loose at the rearward stop, below 0 that is lacking at the forward stop; each gear in"
                                + " use")
                .example("chain-left-overs C-901 B-901", "20/10=0 20/12=0 …")
                .computedBy(in -> CageFigures.each(in, Unit.MILLIMETRE, path -> path.number(GearPath.LEFT_OVER)));
    }

    private static Figure contact() {
        return CageFigures.ofPath("contact-teeth", Unit.TEETH, 0.1)
                .with(ON)
                .better(Direction.HIGHER_IS_BETTER)
                .formula("least z · wrap / 360° over the gears in use, at both ends of the suspension travel")
                .example("contact-teeth C-901 B-901", "2.3")
                .computedBy(ChainTakeUpFigures::fewestTeeth);
    }

    private static Answer fewestTeeth(Inputs in) {
        return ChainPaths.inUse(in).stream()
                .flatMap(gear ->
                        teeth(in, gear.path()).map(teeth -> new Quantity(teeth, Unit.TEETH, gear.name())).stream())
                .min(Comparator.comparingDouble(Quantity::value))
                .orElseThrow(() -> in.missing(
                        in.subject(Scope.CONCEPT),
                        Concept.DERAILLEUR,
                        "the chain has no way round in any gear; check pivot, path, stops and chain"));
    }

    private static Optional<Double> teeth(Inputs in, GearPath path) {
        boolean cog = in.word(ON.name()).equals("cog");
        String[] wheels = path.gear().split("/");
        int teeth = Integer.parseInt(wheels[cog ? 1 : 0]);
        return path.number(cog ? GearPath.WRAP_COG : GearPath.WRAP_RING).map(wrap -> ContactTeeth.of(teeth, wrap));
    }

    private static Figure contacts() {
        return CageFigures.ofPath("contact-teeth-each", Unit.TEETH, 0.1)
                .with(ON)
                .with(ChainPaths.SUSPENSION)
                .formula("z · wrap / 360°, each gear in use")
                .example("contact-teeth-each C-901 B-901", "20/10=2.7 20/12=3.3 …")
                .computedBy(in -> CageFigures.each(in, Unit.TEETH, path -> teeth(in, path)));
    }
}
