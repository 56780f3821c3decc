package groupwright.definition.figures;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Band;
import groupwright.definition.figure.Direction;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.FigureFamily;
import groupwright.definition.figure.Inputs;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Unit;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Part;
import groupwright.definition.record.Project;
import groupwright.definition.record.RecordId;
import groupwright.drivetrain.cost.PartCost;
import groupwright.drivetrain.cost.UnitCost;
import java.util.ArrayList;
import java.util.List;

/** What a set of a concept costs. */
public final class CostFigures implements FigureFamily {
    @Override
    public List<Figure> figures() {
        return List.of(unitCost());
    }

    private static Figure unitCost() {
        return Names.figure("unit-cost")
                .of(Scope.CONCEPT)
                .in(Unit.CURRENCY)
                .better(Direction.LOWER_IS_BETTER)
                .uses(PartFigures.PIECES)
                .formula("Σ pieces · unit cost · (1 + scrap / 100) + Σ tooling / life volume;"
                        + " band: the project's costBand, or where there is none the root of the sum of squares of"
                        + " the ± stated with the parts' costs")
                .source("common practice, no source")
                .leavesOut("freight, duty, warranty, interest on tooling, price breaks")
                .resolution(0.01)
                .band(CostFigures::band)
                .example("unit-cost C-901", "43.00")
                .computedBy(CostFigures::cost);
    }

    private static Answer cost(Inputs in) {
        Gathering all = new Gathering(in);
        List<PartCost> parts = new ArrayList<>();
        for (SetOfParts.Counted counted : SetOfParts.of(in)) {
            all.read(() -> part(in, counted)).ifPresent(parts::add);
        }
        boolean tooled = parts.stream().anyMatch(part -> part.tooling() > 0);
        double lifeVolume = tooled ? all.read(() -> lifeVolume(in)).orElse(1.0) : 1; // no tooling, nothing to share
        all.end();
        return MinorUnits.of(in)
                .quantity(UnitCost.of(parts, scrapShare(in), lifeVolume).total());
    }

    private static PartCost part(Inputs in, SetOfParts.Counted counted) {
        return new PartCost(
                Gathering.number(
                        in, counted.part(), Part.UNIT_COST, "write what one piece costs, 0 if it costs nothing"),
                counted.pieces(),
                in.amount(counted.part(), Part.TOOLING));
    }

    private static double lifeVolume(Inputs in) {
        return Gathering.number(
                in,
                RecordId.PROJECT,
                Project.LIFE_VOLUME,
                "write how many sets will be built, which carry the tooling");
    }

    private static double scrapShare(Inputs in) {
        return in.amount(RecordId.PROJECT, Project.SCRAP) / 100;
    }

    private static Band band(Quantity cost, Inputs in) {
        double whole = in.amount(RecordId.PROJECT, Project.COST_BAND);
        double half = MinorUnits.of(in).major(whole > 0 ? whole : statedByParts(in));
        return half > 0 ? Band.around(cost.value(), half) : Band.NOT_STATED;
    }

    /** The cost is a sum, so the root of the sum of squares is exact for independent errors; minor units. */
    private static double statedByParts(Inputs in) {
        double perSet = in.get(RecordId.PROJECT, Project.LIFE_VOLUME)
                .map(volume -> 1 / volume.value())
                .orElse(0.0); // then no tooling went into the cost
        double squares = 0;
        for (SetOfParts.Counted counted : SetOfParts.of(in)) {
            double ofPiece = in.get(counted.part(), Part.UNIT_COST)
                    .map(Amount::plusMinus)
                    .orElse(0.0);
            double ofPieces = ofPiece * counted.pieces() * (1 + scrapShare(in));
            double ofTooling = in.get(counted.part(), Part.TOOLING).plusMinus() * perSet;
            squares += ofPieces * ofPieces + ofTooling * ofTooling;
        }
        return Math.sqrt(squares);
    }
}
