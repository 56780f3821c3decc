package groupwright.definition.figures;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Band;
import groupwright.definition.figure.Direction;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.FigureFamily;
import groupwright.definition.figure.Inputs;
import groupwright.definition.figure.Parameter;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Unit;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Project;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RiderGroup;
import groupwright.definition.record.Settings;
import groupwright.drivetrain.wear.ArticulationEnergy;
import groupwright.drivetrain.wear.ChainFriction;
import groupwright.drivetrain.wear.ConditionFactors;
import groupwright.drivetrain.wear.RiddenGears;
import groupwright.drivetrain.wear.RidingConditions;
import groupwright.drivetrain.wear.WornPart;
import java.util.List;
import java.util.Optional;

/** How fast chain, cogs and ring wear beside those of another concept. */
public final class WearFigures implements FigureFamily {
    private static final String ENERGY = "articulation-energy";
    private static final Parameter PART = Parameter.choice(
            "part",
            List.of("chain", "small-cogs", "big-cogs", "ring"),
            "which part: each pin, or each tooth of its wheels");
    private static final Parameter BIG_FROM = Parameter.whole("big-from", 24, "teeth from which on a cog is a big one")
            .within(5, 80);

    @Override
    public List<Figure> figures() {
        return List.of(energy(), wear(), conditions());
    }

    private static Figure.Builder ofRide(String id) {
        return Names.figure(id)
                .of(Scope.CONCEPT, Scope.RIDERS)
                .with(PredictedRide.LENGTH)
                .with(Riders.HEADWIND)
                .with(PART)
                .with(BIG_FROM)
                .better(Direction.LOWER_IS_BETTER)
                .source("own derivation; wear as friction energy after Archard (from memory)")
                .resolution(0.01);
    }

    private static Figure energy() {
        return ofRide(ENERGY)
                .in(Unit.JOULE_PER_KILOMETRE)
                .uses(RideFigures.RIDE)
                .formula(
                        "Σ μ · r/p · work · (2π/z ring + 2π/z cog) / links of the supplied chain / km, work in each gear of the"
                                + " predicted ride; for cogs and ring their own term over the teeth used")
                .leavesOut(
                        "slack run, pulleys, crossed running, shifting; friction 0.1 and pin radius 1.8 mm are assumptions,"
                                + " ± 50 %; a design estimate, no proof of conformity: test to current standards")
                .band((value, in) -> Band.around(value.value(), value.value() * ChainFriction.UNCERTAINTY_PCT / 100))
                .example("articulation-energy C-901 G-901", "2.42")
                .computedBy(WearFigures::energyOf);
    }

    private static Answer energyOf(Inputs in) {
        Gathering all = new Gathering(in);
        Optional<RideSums> ride = all.read(() -> RideFigures.asked(in, in.subject()));
        Optional<Double> links = all.number(
                in.subject(Scope.CONCEPT), Concept.CHAIN_SUPPLIED, "write how many links the supplied chain has");
        all.end();
        RiddenGears ridden = new RiddenGears(
                ride.orElseThrow().gearWork(), ride.orElseThrow().lengthKm());
        var energy = ArticulationEnergy.of(
                        ridden, (int) Math.round(links.orElseThrow()), in.whole(BIG_FROM.name()), ChainFriction.ASSUMED)
                .of(part(in));
        if (energy.isEmpty()) {
            throw in.missing(
                    in.subject(Scope.CONCEPT),
                    Concept.COGS,
                    "on this ride no " + in.word(PART.name()) + " are used; choose other terrain or another big-from");
        }
        return Quantity.of(energy.getAsDouble(), Unit.JOULE_PER_KILOMETRE);
    }

    private static WornPart part(Inputs in) {
        return switch (in.word(PART.name())) {
            case "chain" -> WornPart.CHAIN;
            case "small-cogs" -> WornPart.SMALL_COGS;
            case "big-cogs" -> WornPart.BIG_COGS;
            default -> WornPart.RINGS;
        };
    }

    private static Figure wear() {
        return ofRide("relative-wear")
                .with(Reference.AGAINST)
                .uses(ENERGY, CONDITIONS)
                .formula(
                        "articulation energy / that of the concept compared with, in the dry · condition factor of the riders")
                .leavesOut(
                        "other materials, lubricant, care; that mud stays for the next dry ride; how uncertain the condition"
                                + " factors are (no band is stated)")
                .band((value, in) -> Band.NOT_STATED)
                .example("relative-wear C-901 G-901", "1.00")
                .computedBy(WearFigures::relative);
    }

    private static Answer relative(Inputs in) {
        Settings settings = LoadFigures.ride(in)
                .with(PART.name(), in.word(PART.name()))
                .with(BIG_FROM.name(), in.word(BIG_FROM.name()));
        double own = in.value(ENERGY, in.subject(), settings);
        double reference = in.value(ENERGY, Reference.subject(in), settings);
        if (reference == 0) {
            throw in.missing(
                    Riders.group(in), RiderGroup.TERRAIN, "nothing is pedalled on this ride; add terrain that climbs");
        }
        double factor = in.value(CONDITIONS, groupwright.definition.figure.Subject.of(in.subject(Scope.RIDERS)));
        return Quantity.of(own / reference * factor, Unit.NONE);
    }

    private static final String CONDITIONS = "condition-factor";

    private static Figure conditions() {
        return Names.figure(CONDITIONS)
                .of(Scope.RIDERS)
                .better(Direction.LOWER_IS_BETTER)
                .formula(
                        "mean of the house factors of wear in dry (1), dust, mud and cold, weighted with the shares of riding")
                .source("House rule; the factors are assumptions of the project until its own tests replace them")
                .leavesOut("the order of dry and wet; cleaning")
                .resolution(0.01)
                .example("condition-factor G-901", "1.00")
                .computedBy(WearFigures::factor);
    }

    private static Answer factor(Inputs in) {
        RecordId riders = Riders.group(in);
        ConditionFactors factors = new ConditionFactors(
                1,
                in.amount(RecordId.PROJECT, Project.WEAR_IN_DUST),
                in.amount(RecordId.PROJECT, Project.WEAR_IN_MUD),
                in.amount(RecordId.PROJECT, Project.WEAR_IN_COLD));
        RidingConditions shares = RidingConditions.ofPct(
                in.amount(riders, RiderGroup.DUST),
                in.amount(riders, RiderGroup.MUD),
                in.amount(riders, RiderGroup.COLD));
        return Quantity.of(factors.mean(shares), Unit.NONE);
    }
}
