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

/** What one part, with all its pieces in a set, weighs; figures of whole sets add these up. */
public final class PartFigures implements FigureFamily {
    static final String PIECES = "pieces";
    static final String BASIC = "part-mass-basic";
    static final String ALLOWANCE = "part-allowance";
    static final String SPREAD = "part-mass-spread";
    private static final int MOST_PIECES = 10_000;

    @Override
    public List<Figure> figures() {
        return List.of(pieces(), basic(), allowance(), predicted(), spread());
    }

    private static Figure pieces() {
        return Names.figure(PIECES)
                .of(Scope.PART)
                .uses(PIECES)
                .formula("quantity · pieces of its assembly; the quantity alone where it stands in none")
                .source("elementary arithmetic")
                .leavesOut("spares; which concepts use it")
                .example("pieces P-902", "2")
                .computedBy(PartFigures::pieces);
    }

    private static Answer pieces(Inputs in) {
        RecordId part = in.subject(Scope.PART);
        List<RecordId> circle = in.circle(Part.PARENT, part);
        if (!circle.isEmpty()) {
            throw in.missing(
                    circle.get(0),
                    Part.PARENT,
                    "is its own assembly in the end: " + way(circle) + "; change one of these parents");
        }
        double ofAssembly = in.get(part, Part.PARENT)
                .map(parent -> in.value(PIECES, Subject.of(parent)))
                .orElse(1.0);
        double pieces = ofAssembly * in.get(part, Part.QUANTITY);
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
                .uses(PIECES)
                .formula("mass_g · pieces in a set")
                .source("the part's basis: estimated, calculated or weighed")
                .leavesOut("growth until series; what an assembly holds, which counts for itself")
                .example("part-mass-basic P-902", "200")
                .computedBy(in -> Quantity.of(mass(in, 0, 0).basicG(), Unit.GRAM));
    }

    private static PartMass mass(Inputs in, double allowanceShare, double pieceSpreadG) {
        Gathering all = new Gathering(in);
        Optional<Double> piece = all.number(
                in.subject(Scope.PART), Part.MASS, "estimate, calculate or weigh the part and write it in g");
        Optional<Double> pieces = all.read(() -> in.value(PIECES, in.subject()));
        all.end();
        return new PartMass(piece.orElseThrow(), pieces.orElseThrow().intValue(), allowanceShare, pieceSpreadG);
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
                .example("part-mass-predicted P-902", "216.0")
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
                .uses(PIECES)
                .formula("pieces · standard deviation of one: spread_g of the part, else the ± stated with its weight,"
                        + " else mass_g · the project's spread for the part's basis / 100")
                .source("house rule of the project")
                .leavesOut("how many were weighed; pieces of one part are taken to be wrong together")
                .resolution(0.1)
                .example("part-mass-spread P-902", "10.0")
                .computedBy(PartFigures::spread);
    }

    private static Answer spread(Inputs in) {
        RecordId part = in.subject(Scope.PART);
        Optional<Double> own = in.get(part, Part.SPREAD)
                .map(Amount::value)
                .or(() -> in.get(part, Part.MASS).filter(Amount::isBanded).map(Amount::plusMinus));
        double ofPiece = own.orElseGet(() -> in.get(part, Part.MASS)
                .map(mass -> mass.value() * houseSpreadShare(in, part))
                .orElse(0.0));
        return Quantity.of(mass(in, 0, ofPiece).spreadG(), Unit.GRAM);
    }

    private static double houseSpreadShare(Inputs in, RecordId part) {
        Field<Project, Amount> pct = byBasis(
                in.get(part, Part.BASIS), Project.SPREAD_ESTIMATED, Project.SPREAD_CALCULATED, Project.SPREAD_WEIGHED);
        return in.amount(RecordId.PROJECT, pct) / 100;
    }
}
