package groupwright.definition.figures;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Direction;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.FigureFamily;
import groupwright.definition.figure.Inputs;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Subject;
import groupwright.definition.figure.Unit;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Field;
import groupwright.definition.record.Part;
import groupwright.definition.record.Project;
import groupwright.definition.record.RecordId;
import groupwright.drivetrain.mass.PartMass;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What one part is and weighs; figures of whole sets add these up. */
public final class PartFigures implements FigureFamily {
    static final String BASIC = "part-mass-basic";
    static final String ALLOWANCE = "part-allowance";
    static final String SPREAD = "part-mass-spread";
    private static final int MOST_PIECES = 10_000;

    @Override
    public List<Figure> figures() {
        return List.of(pieces(), basic(), allowance(), predicted(), spread());
    }

    private static Figure pieces() {
        return Names.figure(SetOfParts.PIECES)
                .of(Scope.CONCEPT, Scope.PART)
                .uses(SetOfParts.PIECES)
                .formula("product of the quantities of the part and of all assemblies it stands in;"
                        + " 0 if one of them is retired or names other concepts only")
                .source("elementary arithmetic")
                .leavesOut("spares")
                .example("pieces C-901 P-902", "2")
                .computedBy(PartFigures::pieces);
    }

    private static Answer pieces(Inputs in) {
        RecordId concept = in.subject(Scope.CONCEPT);
        RecordId part = in.subject(Scope.PART);
        List<RecordId> circle = in.circle(Part.PARENT, part);
        if (!circle.isEmpty()) {
            throw in.missing(
                    circle.get(0),
                    Part.PARENT,
                    "is its own assembly in the end: " + way(circle) + "; change one of these parents");
        }
        List<RecordId> concepts = in.get(part, Part.CONCEPTS);
        boolean belongs = in.get(part, Part.RETIRED).isEmpty() && (concepts.isEmpty() || concepts.contains(concept));
        Optional<RecordId> parent = in.get(part, Part.PARENT);
        double ofParent = belongs && parent.isPresent()
                ? in.value(SetOfParts.PIECES, Subject.of(concept, parent.get()))
                : belongs ? 1 : 0;
        double pieces = ofParent * in.get(part, Part.QUANTITY);
        if (pieces > MOST_PIECES) {
            throw in.missing(
                    part,
                    Part.QUANTITY,
                    "would stand in a set more than " + MOST_PIECES + " times; lower the quantity");
        }
        return Quantity.of(pieces, Unit.NONE);
    }

    private static String way(List<RecordId> circle) {
        List<RecordId> closed = new ArrayList<>(circle);
        closed.add(circle.get(0));
        return closed.stream().map(RecordId::text).collect(Collectors.joining(" → "));
    }

    private static Figure basic() {
        return Names.figure(BASIC)
                .of(Scope.PART)
                .in(Unit.GRAM)
                .better(Direction.LOWER_IS_BETTER)
                .formula("mass_g as entered")
                .source("the part's basis: estimated, calculated or weighed")
                .leavesOut("growth until series")
                .example("part-mass-basic P-902", "100")
                .computedBy(in -> Quantity.of(massG(in), Unit.GRAM));
    }

    private static double massG(Inputs in) {
        return Gathering.number(
                in, in.subject(Scope.PART), Part.MASS, "estimate, calculate or weigh the part and write it in g");
    }

    private static Figure allowance() {
        return Names.figure(ALLOWANCE)
                .of(Scope.PART)
                .in(Unit.PERCENT)
                .formula("allowance_pct of the part, else the project's allowance for the part's basis")
                .source("house rule of the project")
                .leavesOut("how far the design has come beyond its basis")
                .resolution(0.1)
                .example("part-allowance P-902", "8.0")
                .computedBy(PartFigures::allowance);
    }

    private static Answer allowance(Inputs in) {
        RecordId part = in.subject(Scope.PART);
        double pct = in.get(part, Part.ALLOWANCE)
                .map(Amount::value)
                .orElseGet(() -> in.amount(
                        RecordId.PROJECT,
                        byBasis(
                                in.get(part, Part.BASIS),
                                Project.ALLOWANCE_ESTIMATED,
                                Project.ALLOWANCE_CALCULATED,
                                Project.ALLOWANCE_WEIGHED)));
        return Quantity.of(pct, Unit.PERCENT);
    }

    private static Field<Project, Amount> byBasis(
            Part.Basis basis,
            Field<Project, Amount> estimated,
            Field<Project, Amount> calculated,
            Field<Project, Amount> weighed) {
        return switch (basis) {
            case ESTIMATED -> estimated;
            case CALCULATED -> calculated;
            case WEIGHED -> weighed;
        };
    }

    private static Figure predicted() {
        return Names.figure("part-mass-predicted")
                .of(Scope.PART)
                .in(Unit.GRAM)
                .better(Direction.LOWER_IS_BETTER)
                .uses(BASIC, ALLOWANCE)
                .formula("basic · (1 + allowance / 100)")
                .source("common practice of mass budgets")
                .leavesOut("spread: see part-mass-spread")
                .resolution(0.1)
                .example("part-mass-predicted P-902", "108.0")
                .computedBy(PartFigures::predicted);
    }

    private static Answer predicted(Inputs in) {
        double share = in.value(ALLOWANCE, in.subject()) / 100;
        return Quantity.of(new PartMass(in.value(BASIC, in.subject()), 1, share, 0).predictedG(), Unit.GRAM);
    }

    private static Figure spread() {
        return Names.figure(SPREAD)
                .of(Scope.PART)
                .in(Unit.GRAM)
                .better(Direction.LOWER_IS_BETTER)
                .uses(BASIC)
                .formula("standard deviation of one piece: spread_g of the part, else the ± stated with its weight,"
                        + " else basic · the project's spread for the part's basis / 100")
                .source("house rule of the project")
                .leavesOut("how many were weighed")
                .resolution(0.1)
                .example("part-mass-spread P-902", "5.0")
                .computedBy(PartFigures::spread);
    }

    private static Answer spread(Inputs in) {
        RecordId part = in.subject(Scope.PART);
        double basic = in.value(BASIC, in.subject());
        Optional<Double> own = in.get(part, Part.SPREAD)
                .map(Amount::value)
                .or(() -> in.get(part, Part.MASS).filter(Amount::isBanded).map(Amount::plusMinus));
        return Quantity.of(own.orElseGet(() -> houseSpread(in, part, basic)), Unit.GRAM);
    }

    private static double houseSpread(Inputs in, RecordId part, double basic) {
        return basic
                * in.amount(
                        RecordId.PROJECT,
                        byBasis(
                                in.get(part, Part.BASIS),
                                Project.SPREAD_ESTIMATED,
                                Project.SPREAD_CALCULATED,
                                Project.SPREAD_WEIGHED))
                / 100;
    }
}
