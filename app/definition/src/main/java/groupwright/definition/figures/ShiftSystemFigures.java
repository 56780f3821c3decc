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
import groupwright.definition.record.Amount;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Field;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.ShiftSystem;
import groupwright.drivetrain.derailleur.ImpactCoupling;
import groupwright.drivetrain.derailleur.IndexError;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** How well the shifter meets the cogs, and how blows work on the mechanism. */
public final class ShiftSystemFigures implements FigureFamily {
    private static final Field<Concept, Optional<ShiftSystem.Actuation>> ACTUATION =
            Field.inside(Concept.SHIFT_SYSTEM, ShiftSystem.ACTUATION);
    private static final Field<Concept, Optional<Integer>> POSITIONS =
            Field.inside(Concept.SHIFT_SYSTEM, ShiftSystem.POSITIONS);
    private static final Field<Concept, Optional<Amount>> PULL =
            Field.optionalInside(Concept.SHIFT_SYSTEM, ShiftSystem.PULL);
    private static final Field<Concept, Optional<Amount>> RATIO =
            Field.optionalInside(Concept.SHIFT_SYSTEM, ShiftSystem.ACTUATION_RATIO);
    private static final Field<Concept, Optional<Amount>> TOLERANCE =
            Field.optionalInside(Concept.SHIFT_SYSTEM, ShiftSystem.INDEX_TOLERANCE);
    private static final Parameter SET_ON = Parameter.choice(
            "set-on",
            List.of("best", "smallest"),
            "how the cable is adjusted: so that the worst cog is missed least, or so that the smallest is met");
    private static final String LEAVES_OUT =
            "that the ratio changes along the path, play and friction of the cable, tolerance of hanger and spacers";

    @Override
    public List<Figure> figures() {
        return List.of(coupling(), error(), errors(), margin());
    }

    private static Figure coupling() {
        return Names.figure("impact-coupling")
                .of(Scope.CONCEPT)
                .in(Unit.PERCENT)
                .better(Direction.LOWER_IS_BETTER)
                .formula("100 · sin(slope of the pivot's path against the axle)")
                .source(
                        "component of a vertical force along a sloped line; that it is a measure: common practice, no source")
                .leavesOut("that the path may lean forward as well, damping, the cage's own inertia")
                .resolution(0.1)
                .example("impact-coupling C-901", "66.9")
                .computedBy(in -> Quantity.of(
                        ImpactCoupling.pct(Gathering.number(
                                in,
                                in.subject(Scope.CONCEPT),
                                DerailleurFields.PATH_SLOPE,
                                "write the slope of the pivot's path in degrees, 0 where it is axial")),
                        Unit.PERCENT));
    }

    private static Figure.Builder ofIndex(String id) {
        return Names.figure(id)
                .of(Scope.CONCEPT)
                .in(Unit.MILLIMETRE)
                .source("common practice, no source")
                .leavesOut(LEAVES_OUT)
                .resolution(0.001);
    }

    private static Figure error() {
        return ofIndex("index-error")
                .with(SET_ON)
                .better(Direction.LOWER_IS_BETTER)
                .formula("largest |Σ (pull · ratio - spacing)| over the cogs; set best: half of greatest - least sum")
                .example("index-error C-901", "0.075")
                .computedBy(in -> Quantity.of(worst(in, in.word(SET_ON.name())), Unit.MILLIMETRE));
    }

    private static double worst(Inputs in, String setOn) {
        IndexError errors = of(in);
        return setOn.equals("best") ? errors.worstSetBestMm() : errors.worstSetOnSmallestMm();
    }

    private static Figure errors() {
        return ofIndex("index-errors")
                .formula("Σ (pull · ratio - spacing) from the smallest cog on, each cog")
                .example("index-errors C-901", "10=0.000 12=0.025 15=0.050 18=0.075 21=0.100 25=0.125 30=0.150")
                .computedBy(ShiftSystemFigures::each);
    }

    private static Answer each(Inputs in) {
        List<Integer> cogs = in.get(in.subject(Scope.CONCEPT), Concept.COGS);
        List<Double> stacked = of(in).stackedMm();
        List<Series.At> values = new ArrayList<>();
        for (int i = 0; i < cogs.size(); i++) {
            values.add(new Series.At(Integer.toString(cogs.get(i)), stacked.get(i)));
        }
        return new Series(Unit.MILLIMETRE, values);
    }

    private static Figure margin() {
        return ofIndex("index-margin")
                .with(SET_ON)
                .better(Direction.HIGHER_IS_BETTER)
                .formula("tolerance of a cog position - index error; below 0 a cog is missed")
                .example("index-margin C-901", "0.225")
                .computedBy(ShiftSystemFigures::marginOf);
    }

    private static Answer marginOf(Inputs in) {
        Gathering all = new Gathering(in);
        Optional<Double> tolerance =
                all.number(in.subject(Scope.CONCEPT), TOLERANCE, "write how far a cog position may be off, in mm");
        Optional<Double> worst = all.read(() -> worst(in, in.word(SET_ON.name())));
        all.end();
        return Quantity.of(tolerance.orElseThrow() - worst.orElseThrow(), Unit.MILLIMETRE);
    }

    /** Errors at the cogs; none where positions are programmed. */
    private static IndexError of(Inputs in) {
        RecordId concept = in.subject(Scope.CONCEPT);
        List<Double> spacings = Gears.cogSpacings(in);
        checkPositions(in, spacings.size() + 1);
        if (in.get(concept, ACTUATION)
                .filter(how -> how == ShiftSystem.Actuation.ELECTRONIC)
                .isPresent()) {
            return IndexError.of(spacings, spacings, 1);
        }
        Gathering all = new Gathering(in);
        Optional<Double> pull = all.number(concept, PULL, "write the cable pulled by one click in mm");
        Optional<Double> ratio =
                all.number(concept, RATIO, "write the side travel of the derailleur for each mm of cable");
        all.end();
        return IndexError.of(spacings, Collections.nCopies(spacings.size(), pull.orElseThrow()), ratio.orElseThrow());
    }

    private static void checkPositions(Inputs in, int cogs) {
        RecordId concept = in.subject(Scope.CONCEPT);
        int positions = in.get(concept, POSITIONS)
                .orElseThrow(() -> in.missing(concept, Concept.SHIFT_SYSTEM, "describe how shifts are made"));
        if (positions < cogs) {
            throw in.missing(
                    concept,
                    POSITIONS,
                    "the shifter has " + positions + " positions for " + cogs
                            + " cogs; write as many as there are cogs");
        }
    }
}
