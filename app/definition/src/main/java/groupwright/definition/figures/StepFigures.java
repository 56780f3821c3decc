package groupwright.definition.figures;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Direction;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.FigureFamily;
import groupwright.definition.figure.Inputs;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Series;
import groupwright.definition.figure.Unit;
import groupwright.drivetrain.gearing.ShiftSequence;
import groupwright.drivetrain.gearing.Step;
import groupwright.drivetrain.gearing.Steps;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;

/** How large the steps from gear to gear are and how even. */
public final class StepFigures implements FigureFamily {
    @Override
    public List<Figure> figures() {
        return List.of(steps(), largestStep(), meanStep(), unevenness(), stepChange(), sequenceStep());
    }

    private static Figure.Builder ofSteps(String id) {
        return Names.figure(id)
                .of(Scope.CONCEPT)
                .in(Unit.PERCENT)
                .better(Direction.LOWER_IS_BETTER)
                .with(Gears.FROM_TEETH)
                .resolution(0.1)
                .leavesOut("excluded gears; the rings");
    }

    private static Figure steps() {
        return ofSteps("steps")
                .formula("100 · (z₂ / z₁ - 1) for each pair of neighbouring cogs")
                .source("common practice, no source")
                .example("steps C-901 from-teeth=18", "18-21=16.7 21-25=19.0 25-30=20.0")
                .computedBy(in -> new Series(
                        Unit.PERCENT,
                        Gears.steps(in).stream()
                                .map(step -> new Series.At(Gears.pair(step), step.pct()))
                                .toList()));
    }

    private static Figure largestStep() {
        return ofSteps("largest-step")
                .formula("largest 100 · (z₂ / z₁ - 1) over neighbouring cogs")
                .source("common practice, no source")
                .example("largest-step C-901 from-teeth=12", "25.0")
                .computedBy(StepFigures::largest);
    }

    private static Answer largest(Inputs in) {
        Step step = Steps.largest(Gears.steps(in)).orElseThrow(() -> Gears.tooFewCogs(in, 2));
        return new Quantity(step.pct(), Unit.PERCENT, Gears.pair(step));
    }

    private static Figure meanStep() {
        return ofSteps("mean-step")
                .formula("mean of 100 · (z₂ / z₁ - 1) over neighbouring cogs")
                .source("common practice, no source")
                .example("mean-step C-901 from-teeth=21", "19.5")
                .computedBy(in -> over(in, 2, Steps::meanPct));
    }

    private static Figure unevenness() {
        return ofSteps("step-unevenness")
                .formula("100 · root mean square deviation of ln(z₂ / z₁) from its mean, over neighbouring cogs")
                .source("own definition: equal ratios feel equal")
                .example("step-unevenness C-901 from-teeth=21", "0.4")
                .computedBy(in -> over(in, 2, Steps::unevennessPct));
    }

    private static Figure stepChange() {
        return ofSteps("step-change")
                .formula("largest |difference| of 100 · (z₂ / z₁ - 1) between a step and the next one")
                .source("own definition")
                .example("step-change C-901", "5.0")
                .computedBy(in -> over(in, 3, Steps::changePct));
    }

    private static Answer over(Inputs in, int cogs, Function<List<Step>, OptionalDouble> function) {
        double value = function.apply(Gears.steps(in)).orElseThrow(() -> Gears.tooFewCogs(in, cogs));
        return Quantity.of(value, Unit.PERCENT);
    }

    private static Figure sequenceStep() {
        return Names.figure("sequence-step")
                .of(Scope.CONCEPT)
                .in(Unit.PERCENT)
                .better(Direction.LOWER_IS_BETTER)
                .formula("largest 100 · (next ratio / ratio - 1) over all gears in use by rising ratio")
                .source("common practice, no source")
                .leavesOut("that few riders shift through all gears in this order")
                .resolution(0.1)
                .example("sequence-step C-901", "25.0")
                .computedBy(in -> Quantity.of(
                        ShiftSequence.of(Gears.inUse(in)).largestStepPct().orElseThrow(() -> Gears.tooFewCogs(in, 2)),
                        Unit.PERCENT));
    }
}
