package groupwright.definition.figures;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Direction;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.FigureFamily;
import groupwright.definition.figure.Inputs;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Unit;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Derailleur;
import groupwright.definition.record.Field;
import groupwright.definition.record.RecordId;
import groupwright.drivetrain.gearing.Capacity;
import groupwright.drivetrain.gearing.GearSet;
import groupwright.drivetrain.gearing.SideTravel;
import java.util.List;
import java.util.Optional;

/** What the rear derailleur has to take up and how far it has to move. */
public final class CapacityFigures implements FigureFamily {
    private static final Field<Concept, Optional<Amount>> DECLARED =
            Field.optionalInside(Concept.DERAILLEUR, Derailleur.DECLARED_CAPACITY);
    private static final Field<Concept, Optional<Amount>> OVERSHOOT_SMALLEST =
            Field.optionalInside(Concept.DERAILLEUR, Derailleur.OVERSHOOT_SMALLEST);
    private static final Field<Concept, Optional<Amount>> OVERSHOOT_LARGEST =
            Field.optionalInside(Concept.DERAILLEUR, Derailleur.OVERSHOOT_LARGEST);
    private static final Field<Concept, Optional<Amount>> HANGER_TOLERANCE =
            Field.inside(Concept.DERAILLEUR, Derailleur.HANGER_TOLERANCE);

    @Override
    public List<Figure> figures() {
        return List.of(totalCapacity(), totalCapacityInUse(), margin(), slack(), sideTravel());
    }

    private static Figure totalCapacity() {
        return Names.figure("total-capacity")
                .of(Scope.CONCEPT)
                .in(Unit.TEETH)
                .formula("(largest - smallest ring) + (largest - smallest cog)")
                .source("common practice, no source")
                .leavesOut("excluded gears; see total-capacity-in-use")
                .example("total-capacity C-901", "40")
                .computedBy(in -> Quantity.of(Capacity.totalTeeth(allGears(in)), Unit.TEETH));
    }

    private static GearSet allGears(Inputs in) {
        return GearSet.of(Gears.crankset(in), Gears.cassette(in));
    }

    private static Figure totalCapacityInUse() {
        return Names.figure("total-capacity-in-use")
                .of(Scope.CONCEPT)
                .in(Unit.TEETH)
                .formula("most - least (ring + cog) over the gears in use")
                .source("common practice, no source")
                .leavesOut("that a rider may shift into an excluded gear all the same")
                .example("total-capacity-in-use C-901", "35")
                .computedBy(in -> Quantity.of(Capacity.usedTeeth(Gears.inUse(in)), Unit.TEETH));
    }

    private static Figure margin() {
        return Names.figure("capacity-margin")
                .of(Scope.CONCEPT)
                .in(Unit.TEETH)
                .better(Direction.HIGHER_IS_BETTER)
                .formula("declared capacity in whole teeth - total capacity")
                .source("common practice, no source")
                .leavesOut("whether the cage really reaches: see the chain path of each gear")
                .example("capacity-margin C-901", "5")
                .computedBy(in -> Quantity.of(marginTeeth(in), Unit.TEETH));
    }

    private static int marginTeeth(Inputs in) {
        double declared = Gathering.number(
                in,
                in.subject(Scope.CONCEPT),
                DECLARED,
                "write the capacity that the maker of the derailleur declares, in teeth");
        return Capacity.marginTeeth((int) Math.floor(declared), Capacity.totalTeeth(allGears(in)));
    }

    private static Figure slack() {
        return Names.figure("capacity-slack")
                .of(Scope.CONCEPT)
                .in(Unit.MILLIMETRE)
                .better(Direction.HIGHER_IS_BETTER)
                .formula("capacity margin · 12.7 / 2")
                .source("geometry: a chain wraps half of each of two wheels; pitch from ISO 9633")
                .leavesOut("the term of chain length that grows with the square of ring - cog")
                .resolution(0.1)
                .example("capacity-slack C-901", "31.8")
                .computedBy(in -> Quantity.of(Capacity.slackMm(marginTeeth(in)), Unit.MILLIMETRE));
    }

    private static Figure sideTravel() {
        return Names.figure("side-travel")
                .of(Scope.CONCEPT)
                .in(Unit.MILLIMETRE)
                .better(Direction.LOWER_IS_BETTER)
                .formula("sum of cog spacings + overshoot at both ends + hanger tolerance")
                .source("common practice, no source")
                .leavesOut("bending of hanger and linkage under cable pull")
                .resolution(0.01)
                .example("side-travel C-901", "27.50")
                .computedBy(CapacityFigures::travel);
    }

    private static Answer travel(Inputs in) {
        RecordId concept = in.subject(Scope.CONCEPT);
        Gathering all = new Gathering(in);
        Optional<List<Double>> spacings = all.read(() -> Gears.cogSpacings(in));
        Optional<Double> small =
                all.number(concept, OVERSHOOT_SMALLEST, "write the travel beyond the smallest cog in mm");
        Optional<Double> large =
                all.number(concept, OVERSHOOT_LARGEST, "write the travel beyond the largest cog in mm");
        all.end();
        SideTravel.Extra extra = new SideTravel.Extra(
                small.orElseThrow(),
                large.orElseThrow(),
                in.get(concept, HANGER_TOLERANCE).map(Amount::value).orElse(0.0));
        return Quantity.of(SideTravel.mm(spacings.orElseThrow(), extra), Unit.MILLIMETRE);
    }
}
