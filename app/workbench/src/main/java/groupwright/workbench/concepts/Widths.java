package groupwright.workbench.concepts;

import groupwright.workbench.components.VerdictMark;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import java.util.stream.Stream;

/**
 * How wide the parts of the table are, at 100 %.
 *
 * @param figure of a figure's name and what it is asked of
 * @param whereAt where the second begins
 * @param target of a target with its unit
 * @param value of a value with its unit
 * @param concept of the column of one concept
 */
record Widths(double figure, double whereAt, double target, double value, double concept) {
    static final double GAP = 8;
    private static final double OVERHANG = 4;
    /** Left of what is asked and of its target. */
    private static final double BESIDE = 3 * GAP;

    private static final double LEAST_FIGURE = 196;
    private static final double LEAST_NAME = 119;
    /** Share of the room beyond the least that names get; the rest is for what the figure is asked of. */
    private static final double NAME_SHARE = 0.4;

    private static final double WIDEST_CONCEPT = 320;

    /**
     * The widths of a sheet in a room; what is asked gets what the concepts leave, within limits. Those of concepts are
     * whole, so that uprights in cells and between them fall on the same pixel.
     */
    static Widths of(ConceptsSheet sheet, double room) {
        double name = GAP + widest(sheet.rows().stream().map(ConceptsSheet.Row::figure), Type.TABLE, Weight.REGULAR);
        double where = GAP + widest(sheet.rows().stream().map(ConceptsSheet.Row::where), Type.TABLE, Weight.REGULAR);
        double target = GAP
                + widest(limits(sheet).map(ConceptsSheet.Limit::comparator), Type.TABLE, Weight.REGULAR)
                + widest(limits(sheet).map(ConceptsSheet.Limit::number), Type.TABLE, Weight.REGULAR)
                + Metric.UNIT_COLUMN.units();
        double value = 2 * OVERHANG + widest(values(sheet), Type.TABLE, Weight.STRONG) + Metric.UNIT_COLUMN.units();
        double least = GAP + value + GAP + Metric.BAR_LEAST.units() + GAP + VerdictMark.SIZE + 1;
        int count = Math.max(1, sheet.concepts().size());
        double left = room - count * least - target - BESIDE;
        double figure = Math.floor(Math.max(LEAST_FIGURE, Math.min(name + where, left)));
        double whereAt = Math.min(name, LEAST_NAME + NAME_SHARE * (figure - LEAST_FIGURE));
        double share = Math.floor((room - figure - target - BESIDE) / count);
        return new Widths(
                figure,
                whereAt,
                Math.ceil(target),
                Math.ceil(value),
                Math.max(Math.ceil(least), Math.min(WIDEST_CONCEPT, share)));
    }

    private static Stream<ConceptsSheet.Limit> limits(ConceptsSheet sheet) {
        return sheet.rows().stream().flatMap(row -> row.limit().stream());
    }

    private static Stream<String> values(ConceptsSheet sheet) {
        return sheet.rows().stream()
                .flatMap(row -> row.cells().stream())
                .flatMap(cell -> cell.value().stream())
                .map(value -> value.value());
    }

    private static double widest(Stream<String> texts, Type type, Weight weight) {
        return texts.mapToDouble(text -> type.width(text, weight)).max().orElse(0);
    }

    /** Whether a unit fits its column; one that does not stands with the target only. */
    static boolean fits(String unit) {
        return Type.CAPTION.width(unit, Weight.REGULAR) + OVERHANG <= Metric.UNIT_COLUMN.units();
    }

    /** Where the bar begins behind the left edge of a concept's cells. */
    double barAt() {
        return value + GAP;
    }

    /** What stands behind the bar: a mark, or where there is room a mark with its word. */
    double verdict() {
        double word = Metric.VERDICT_COLUMN.units();
        return concept >= 2 * GAP + barAt() + Metric.BAR_LEAST.units() + word ? word : VerdictMark.SIZE;
    }

    /** Length of the bar. */
    double bar() {
        return Math.min(Metric.BAR_MOST.units(), concept - GAP - barAt() - GAP - verdict() - 1);
    }
}
