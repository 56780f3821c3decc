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
import groupwright.drivetrain.gearing.ShiftPositions;
import groupwright.drivetrain.gearing.Step;
import groupwright.drivetrain.quantity.Chainring;
import java.util.Comparator;
import java.util.List;

/** Where round a pair of cogs the chain can change over. */
public final class ShiftFigures implements FigureFamily {
    private static final Parameter CADENCE = Parameter.number("cadence", 70, "cadence in rpm at which one shifts")
            .within(1, 250);

    @Override
    public List<Figure> figures() {
        return List.of(likePositions(), longestWait(), phaseMismatch());
    }

    private static Figure.Builder ofPairs(String id) {
        return Names.figure(id)
                .of(Scope.CONCEPT)
                .with(Gears.FROM_TEETH)
                .leavesOut("chain flex, ramps, pins and sideways motion, which decide how well a position works");
    }

    private static Figure likePositions() {
        return ofPairs("like-positions")
                .in(Unit.PER_TURN)
                .better(Direction.HIGHER_IS_BETTER)
                .formula("greatest common divisor of z₁ and z₂, for each pair of neighbouring cogs")
                .source("number theory: two rigid coaxial cogs stand to each other alike so often a turn")
                .example("like-positions C-901", "10-12=2 12-15=3 15-18=3 18-21=3 21-25=1 25-30=5")
                .computedBy(ShiftFigures::positions);
    }

    private static Answer positions(Inputs in) {
        return new Series(
                Unit.PER_TURN,
                Gears.steps(in).stream()
                        .map(step -> new Series.At(Gears.pair(step), ShiftPositions.likePositions(step)))
                        .toList());
    }

    private static Figure longestWait() {
        return ofPairs("longest-wait")
                .in(Unit.SECOND)
                .better(Direction.LOWER_IS_BETTER)
                .with(CADENCE)
                .formula("longest 60 · z₁ / (cadence · ring · like positions) over neighbouring cogs, smallest ring")
                .source("own derivation: the cassette turns cadence · ring / z₁ times a minute")
                .resolution(0.01)
                .example("longest-wait C-901 cadence=70", "0.90")
                .computedBy(ShiftFigures::wait);
    }

    private static Answer wait(Inputs in) {
        Chainring ring = Gears.crankset(in).smallest();
        double cadence = in.number(CADENCE.name());
        Step longest = Gears.steps(in).stream()
                .max(Comparator.comparingDouble(step -> ShiftPositions.longestWaitS(step, ring, cadence)))
                .orElseThrow(() -> Gears.tooFewCogs(in, 2));
        return new Quantity(ShiftPositions.longestWaitS(longest, ring, cadence), Unit.SECOND, Gears.pair(longest));
    }

    private static Figure phaseMismatch() {
        return ofPairs("phase-mismatch")
                .in(Unit.MILLIMETRE)
                .better(Direction.LOWER_IS_BETTER)
                .formula("largest 12.7 · (d - g) / (2 · z₁) over neighbouring cogs; d = z₂ - z₁, g = gcd(z₁, d)")
                .source("own derivation: least over clockings of the largest distance from ideal meshing")
                .resolution(0.01)
                .example("phase-mismatch C-901 from-teeth=16", "0.91")
                .computedBy(ShiftFigures::mismatch);
    }

    private static Answer mismatch(Inputs in) {
        Step worst = ShiftPositions.worstPhaseMismatch(Gears.steps(in)).orElseThrow(() -> Gears.tooFewCogs(in, 2));
        return new Quantity(ShiftPositions.phaseMismatchMm(worst), Unit.MILLIMETRE, Gears.pair(worst));
    }
}
