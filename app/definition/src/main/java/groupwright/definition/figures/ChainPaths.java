package groupwright.definition.figures;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.FigureFamily;
import groupwright.definition.figure.Inputs;
import groupwright.definition.figure.Missing;
import groupwright.definition.figure.Parameter;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Series;
import groupwright.definition.figure.Unit;
import groupwright.definition.record.Bike;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Settings;
import groupwright.drivetrain.derailleur.ChainClosure;
import groupwright.drivetrain.derailleur.ChainRun;
import groupwright.drivetrain.derailleur.Closure;
import groupwright.drivetrain.derailleur.Mechanism;
import groupwright.drivetrain.derailleur.Point;
import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.gearing.Crankset;
import groupwright.drivetrain.quantity.Chainring;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The chain's way in every gear of a concept on a bike, excluded gears too. All other figures about the derailleur ask
 * {@code chain-path}, so that each gear is solved once for each chain length and end of suspension travel.
 */
public final class ChainPaths implements FigureFamily {
    /** The figure that solves; the others take their numbers from it. */
    public static final String CHAIN_PATH = "chain-path";

    /** How many links the chain has. */
    static final Parameter LINKS = Parameter.whole("links", 0, "links of the chain; 0 means those of chain-links")
            .within(0, 200);

    /** Where in its travel the suspension stands. */
    static final Parameter SUSPENSION = Parameter.choice(
            "suspension", List.of("rest", "full"), "where the suspension stands: at rest, or at full chain growth");

    static final String SOURCE = "own derivation: circles and tangents in the plane of the chain, arcs counted in"
            + " pitches; three independent computations agree";
    static final String LEAVES_OUT =
            "sag, stiffness, that links are straight, the chain's slant, bending of hanger and cage";

    @Override
    public List<Figure> figures() {
        return List.of(Names.figure(CHAIN_PATH)
                .of(Scope.CONCEPT, Scope.BIKE)
                .with(LINKS)
                .with(SUSPENSION)
                .uses(ChainLengthFigures.CHAIN_LINKS)
                .formula(
                        "the cage angle, from the forward stop rearwards, at which arcs and tangents round ring, cog, guide"
                                + " and tension pulley add up to the links; each gear, excluded ones too, each number ending in its"
                                + " unit")
                .source(SOURCE)
                .leavesOut(LEAVES_OUT)
                .resolution(0.01)
                .example("chain-path C-901 B-901", "20/10:closes=1.00 20/10:left-over_mm=0.00 20/10:cage_deg=-135.31 …")
                .computedBy(ChainPaths::solve));
    }

    private static Answer solve(Inputs in) {
        RecordId bike = in.subject(Scope.BIKE);
        Cassette cassette = Gears.cassette(in);
        Gathering all = new Gathering(in);
        Optional<Mechanism> mechanism = all.read(() -> new Mounting(in).onBike());
        Optional<Double> stay = all.number(bike, Bike.CHAINSTAY, "write the length of the chainstay in mm");
        Optional<Double> drop = all.number(
                bike, Bike.BOTTOM_BRACKET_DROP, "write how far the bottom bracket lies below the axles, in mm");
        Optional<List<Double>> lines = all.read(() -> sideTravels(in));
        Optional<Integer> links = all.read(() -> links(in));
        all.end();
        double growth = in.word(SUSPENSION.name()).equals("full") ? in.amount(bike, Bike.CHAIN_GROWTH) : 0;
        try {
            Point bracket = ChainRun.bottomBracket(stay.orElseThrow() + growth, drop.orElseThrow());
            return new Series(
                    Unit.NONE,
                    GearPath.positions(paths(
                            Gears.crankset(in),
                            cassette,
                            lines.orElseThrow(),
                            (ring, cog, travel) -> ChainClosure.solve(
                                    mechanism.orElseThrow(),
                                    new ChainRun(bracket, ring, cog, travel, last(lines.orElseThrow())),
                                    links.orElseThrow()))));
        } catch (IllegalArgumentException impossible) {
            throw in.missing(bike, Bike.CHAINSTAY, impossible.getMessage() + "; correct the bike or the concept");
        }
    }

    /** Solves one gear. */
    private interface Solver {
        Closure solve(int ring, int cog, double sideTravelMm);
    }

    private static List<GearPath> paths(Crankset crankset, Cassette cassette, List<Double> travels, Solver solver) {
        List<GearPath> paths = new ArrayList<>();
        for (Chainring ring : crankset.rings()) {
            for (int i = 0; i < cassette.cogs().size(); i++) {
                int cog = cassette.cogs().get(i).teeth();
                paths.add(GearPath.of(ring.teeth() + "/" + cog, solver.solve(ring.teeth(), cog, travels.get(i))));
            }
        }
        return paths;
    }

    private static double last(List<Double> travels) {
        return travels.get(travels.size() - 1);
    }

    private static int links(Inputs in) {
        int asked = in.whole(LINKS.name());
        return asked == 0 ? (int) in.value(ChainLengthFigures.CHAIN_LINKS, in.subject()) : asked;
    }

    /** Side travel from the smallest cog to each. */
    private static List<Double> sideTravels(Inputs in) {
        List<Double> travels = new ArrayList<>(List.of(0.0));
        Gears.cogSpacings(in).forEach(spacing -> travels.add(last(travels) + spacing));
        return travels;
    }

    /** The paths of the gears, as the ledger knows them. */
    static List<GearPath> asked(Inputs in, int links, String suspension) {
        Settings settings =
                Settings.NONE.with(LINKS.name(), Integer.toString(links)).with(SUSPENSION.name(), suspension);
        Answer answer = in.ask(CHAIN_PATH, in.subject(), settings);
        if (answer instanceof Missing missing) {
            throw in.missing(missing);
        }
        return GearPath.of((Series) answer);
    }

    /**
     * A gear at one end of the suspension travel.
     *
     * @param path what the chain does
     * @param end empty at rest, else the words for full travel
     */
    record Sprung(GearPath path, String end) {
        String name() {
            return path.gear() + end;
        }
    }

    /** The gears in use at both ends of the suspension travel, or at the one there is. */
    static List<Sprung> inUse(Inputs in) {
        Set<String> used = Gears.inUse(in).gears().stream().map(RideSums::name).collect(Collectors.toSet());
        return sprung(in).stream()
                .filter(gear -> used.contains(gear.path().gear()))
                .toList();
    }

    /** All gears, excluded ones too, at both ends of the suspension travel, or at the one there is. */
    static List<Sprung> sprung(Inputs in) {
        int links = in.whole(LINKS.name());
        List<Sprung> all = new ArrayList<>();
        asked(in, links, "rest").forEach(path -> all.add(new Sprung(path, "")));
        if (in.amount(in.subject(Scope.BIKE), Bike.CHAIN_GROWTH) > 0) {
            asked(in, links, "full").forEach(path -> all.add(new Sprung(path, " at full travel")));
        }
        return all;
    }
}
