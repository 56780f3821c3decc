package groupwright.definition.figures;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Band;
import groupwright.definition.figure.BandRule;
import groupwright.definition.figure.Direction;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.FigureFamily;
import groupwright.definition.figure.Inputs;
import groupwright.definition.figure.Parameter;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Subject;
import groupwright.definition.figure.Unit;
import groupwright.definition.record.Project;
import groupwright.definition.record.RecordId;
import groupwright.drivetrain.mass.MassBudget;
import groupwright.drivetrain.mass.PartMass;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** What a set of a concept weighs; the band of these figures is one standard deviation to either side. */
public final class WeightFigures implements FigureFamily {
    private static final String ADDING_UP = "common practice of mass budgets; band: standard deviation of the sum,"
            + " sqrt((1 - ρ) · Σ s² + ρ · (Σ s)²), s from part-mass-spread, ρ = weightCorrelation";
    private static final Parameter BUDGET =
            Parameter.number("budget", "what a set may weigh in g").within(0, 1e7);
    private static final Parameter CORRELATION = Parameter.optionalNumber(
                    "correlation", "between the errors of two parts; left out, the project's weightCorrelation")
            .within(0, 1);

    @Override
    public List<Figure> figures() {
        return List.of(basic(), predicted(), p90(), margin());
    }

    private static Figure.Builder ofSets(String id) {
        return Names.figure(id)
                .of(Scope.CONCEPT)
                .in(Unit.GRAM)
                .better(Direction.LOWER_IS_BETTER)
                .uses(PartFigures.PIECES, PartFigures.BASIC, PartFigures.ALLOWANCE, PartFigures.SPREAD)
                .source(ADDING_UP)
                .band(WeightFigures::oneStandardDeviation);
    }

    private static Figure basic() {
        return ofSets("mass-basic")
                .formula("Σ basic weight of the parts, each with all its pieces")
                .leavesOut("growth until series")
                .example("mass-basic C-901", "950")
                .computedBy(in -> gram(MassBudget::basicG, new MassBudget(parts(in, What.BASIC))));
    }

    private static Figure predicted() {
        return ofSets("mass-predicted")
                .formula("Σ basic weight of the parts, each with all its pieces, · (1 + allowance / 100)")
                .leavesOut("growth beyond the allowance")
                .example("mass-predicted C-901", "986")
                .computedBy(in -> gram(MassBudget::predictedG, new MassBudget(parts(in, What.PREDICTED))));
    }

    private static Figure p90() {
        BandRule none = (value, in) -> Band.NOT_STATED; // what is not known is in the figure already
        return ofSets("mass-p90")
                .with(CORRELATION)
                .formula("predicted weight + 1.2816 · standard deviation of the sum")
                .leavesOut("that errors are not quite normal, and that parts tend to grow rather than shrink")
                .band(none)
                .example("mass-p90 C-901 correlation=1", "1016")
                .computedBy(WeightFigures::p90);
    }

    private static Answer p90(Inputs in) {
        double correlation = in.optionalNumber(CORRELATION.name()).orElseGet(() -> projectCorrelation(in));
        return Quantity.of(new MassBudget(parts(in, What.SPREAD)).p90G(correlation), Unit.GRAM);
    }

    private static Figure margin() {
        return ofSets("mass-margin")
                .better(Direction.HIGHER_IS_BETTER)
                .with(BUDGET)
                .formula("budget - predicted weight")
                .leavesOut("growth beyond the allowance")
                .example("mass-margin C-901 budget=1000", "14")
                .computedBy(in -> Quantity.of(
                        new MassBudget(parts(in, What.PREDICTED)).marginG(in.number(BUDGET.name())), Unit.GRAM));
    }

    private static Answer gram(Function<MassBudget, Double> sum, MassBudget budget) {
        return Quantity.of(sum.apply(budget), Unit.GRAM);
    }

    private static Band oneStandardDeviation(Quantity weight, Inputs in) {
        double half = new MassBudget(parts(in, What.SPREAD)).spreadG(projectCorrelation(in));
        return half > 0 ? Band.around(weight.value(), half) : Band.NOT_STATED;
    }

    private static double projectCorrelation(Inputs in) {
        return in.amount(RecordId.PROJECT, Project.WEIGHT_CORRELATION);
    }

    /** How much has to be known of each part; whatever is not needed is not read and stands as 0. */
    private enum What {
        BASIC,
        PREDICTED,
        SPREAD
    }

    private static List<PartMass> parts(Inputs in, What what) {
        Gathering all = new Gathering(in);
        List<PartMass> parts = new ArrayList<>();
        for (SetOfParts.Counted counted : SetOfParts.of(in)) {
            all.read(() -> part(in, counted, what)).ifPresent(parts::add);
        }
        all.end();
        return parts;
    }

    private static PartMass part(Inputs in, SetOfParts.Counted counted, What what) {
        Subject part = Subject.of(counted.part());
        return new PartMass(
                in.value(PartFigures.BASIC, part), // all pieces as one
                1,
                what == What.BASIC ? 0 : in.value(PartFigures.ALLOWANCE, part) / 100,
                what == What.SPREAD ? in.value(PartFigures.SPREAD, part) : 0);
    }
}
