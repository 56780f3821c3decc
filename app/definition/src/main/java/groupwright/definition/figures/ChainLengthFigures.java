package groupwright.definition.figures;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Direction;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.FigureFamily;
import groupwright.definition.figure.Inputs;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Unit;
import groupwright.definition.record.Bike;
import groupwright.definition.record.Concept;
import groupwright.definition.record.RecordId;
import groupwright.drivetrain.chain.ChainDrive;
import groupwright.drivetrain.chain.ChainLinks;
import groupwright.drivetrain.chain.ChordalSpeed;
import groupwright.drivetrain.quantity.Chainring;
import groupwright.drivetrain.quantity.Cog;
import java.util.List;

/** How long a chain a bike needs, whether the one supplied reaches, and how evenly it runs. */
public final class ChainLengthFigures implements FigureFamily {
    /** The even count of links a bike needs. */
    public static final String CHAIN_LINKS = "chain-links";

    /** Links of the supplied chain that are left over on a bike. */
    public static final String LINKS_TO_SPARE = "links-to-spare";

    private static final String GEOMETRY = "geometry of two circles; arcs counted in pitches";

    @Override
    public List<Figure> figures() {
        return List.of(pitches(), links(), spare(), pulsation());
    }

    private static Figure pitches() {
        return Names.figure("chain-length")
                .of(Scope.CONCEPT, Scope.BIKE)
                .in(Unit.LINKS)
                .formula(
                        "2a/p · cos t + (z₁ + z₂)/2 + t · (z₂ - z₁)/π, sin t = (R₂ - R₁)/a, R = p / (2 sin(π/z)): largest"
                                + " ring and cog without a derailleur, a = chainstay + chain growth")
                .source(GEOMETRY)
                .leavesOut("sag, that links are straight, the way round the pulleys: see chain-links")
                .resolution(0.01)
                .example("chain-length C-901 B-901", "103.58")
                .computedBy(in -> Quantity.of(length(in), Unit.LINKS));
    }

    private static Figure links() {
        return Names.figure(CHAIN_LINKS)
                .of(Scope.CONCEPT, Scope.BIKE)
                .in(Unit.LINKS)
                .formula("chain-length + reserve, up to an even count")
                .source(GEOMETRY
                        + "; an even count, since inner and outer links alternate; the reserve is the concept's")
                .leavesOut("offset links; what the derailleur really needs: see chain-left-over")
                .example("chain-links C-901 B-901", "110")
                .computedBy(in -> Quantity.of(needed(in), Unit.LINKS));
    }

    private static Figure spare() {
        return Names.figure(LINKS_TO_SPARE)
                .of(Scope.CONCEPT, Scope.BIKE)
                .in(Unit.LINKS)
                .better(Direction.HIGHER_IS_BETTER)
                .formula("links of the chain as supplied - chain-links; below 0 a longer chain must be supplied")
                .source(GEOMETRY)
                .leavesOut("offset links")
                .example("links-to-spare C-901 B-901", "2")
                .computedBy(ChainLengthFigures::toSpare);
    }

    private static Answer toSpare(Inputs in) {
        Gathering all = new Gathering(in);
        var needed = all.read(() -> needed(in));
        var supplied = all.number(
                in.subject(Scope.CONCEPT), Concept.CHAIN_SUPPLIED, "write how many links the supplied chain has");
        all.end();
        return Quantity.of(supplied.orElseThrow() - needed.orElseThrow(), Unit.LINKS);
    }

    private static Figure pulsation() {
        return Names.figure("small-cog-pulsation")
                .of(Scope.CONCEPT)
                .in(Unit.PERCENT)
                .better(Direction.LOWER_IS_BETTER)
                .formula(
                        "100 · (π/z) · (1/sin(π/z) - 1/tan(π/z)), z of the smallest cog: greatest less least chain speed,"
                                + " over the mean speed")
                .source("Shigley, Mechanical Engineering Design, ch. 17 (cited from memory)")
                .leavesOut("the ring, which adds its own smaller swing; flex of chain and frame")
                .resolution(0.01)
                .example("small-cog-pulsation C-901", "4.98")
                .computedBy(in -> Quantity.of(
                        ChordalSpeed.swingOfMeanPct(
                                in.get(in.subject(Scope.CONCEPT), Concept.COGS).get(0)),
                        Unit.PERCENT));
    }

    /** Links that largest ring and cog need at the longest point of suspension travel, with the reserve. */
    static int needed(Inputs in) {
        double reserve = in.amount(in.subject(Scope.CONCEPT), Concept.CHAIN_RESERVE);
        return ChainLinks.even(length(in) + reserve);
    }

    private static double length(Inputs in) {
        RecordId concept = in.subject(Scope.CONCEPT);
        RecordId bike = in.subject(Scope.BIKE);
        List<Integer> cogs = in.get(concept, Concept.COGS);
        ChainDrive drive =
                ChainDrive.of(new Chainring(in.get(concept, Concept.RINGS).get(0)), new Cog(cogs.get(cogs.size() - 1)));
        double stay = Gathering.number(in, bike, Bike.CHAINSTAY, "write the length of the chainstay in mm");
        try {
            return drive.exactLengthPitches(stay + in.amount(bike, Bike.CHAIN_GROWTH));
        } catch (IllegalArgumentException tooLarge) {
            throw in.missing(bike, Bike.CHAINSTAY, tooLarge.getMessage() + "; check chainstay, rings and cogs");
        }
    }
}
