package groupwright.workbench.bikes;

import groupwright.workbench.components.Chip;
import groupwright.workbench.components.ChipPainter;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * How wide the parts of the matrix are, at 100 %.
 *
 * @param bike of the column of bikes
 * @param stops where the measures of a bike begin
 * @param concept of the column of one concept
 * @param counted of the number beside a bar
 */
record Measures(double bike, List<Double> stops, double concept, double counted) {
    static final double PADDING = 16;
    /** What stands behind a mark or an id. */
    static final double INDENT = 26;

    /** At the right of a concept's cells. */
    static final double RIGHT = 10;

    static final double ROW = 66;
    static final double HEAD = 46;
    static final double FOOT = 36;
    /** Where the middles of the three lines of a row lie. */
    static final double FIRST_LINE = 15;

    static final double SECOND_LINE = 34;
    static final double THIRD_LINE = 52;
    private static final double BETWEEN = 8;
    private static final double LEAST_CONCEPT = 200;
    private static final double WIDEST_CONCEPT = 360;
    private static final double WIDEST_BIKE = 400;

    Measures {
        stops = List.copyOf(stops);
    }

    /**
     * The widths of a sheet in a room; concepts share what the bikes leave, within limits.
     *
     * @param heads over the measures of bikes
     */
    static Measures of(BikesSheet sheet, List<String> heads, double room) {
        double title = PADDING
                + Type.TABLE.width(
                        widest(sheet.rows().stream().map(row -> row.id().text())), Weight.STRONG)
                + BETWEEN;
        double at = title;
        double[] stops = new double[heads.size()];
        for (int i = 0; i < stops.length; i++) {
            int column = i;
            stops[i] = at;
            double numbers = sheet.rows().stream()
                    .mapToDouble(row -> Type.TABLE.width(row.measures().get(column), Weight.REGULAR))
                    .max()
                    .orElse(0);
            at += Math.max(numbers, Type.CAPTION.width(heads.get(i), Weight.REGULAR)) + BETWEEN;
        }
        double least = Math.ceil(at - BETWEEN + PADDING / 2);
        int count = Math.max(1, sheet.concepts().size());
        double concept = Math.floor(Math.max(leastConcept(sheet), Math.min(WIDEST_CONCEPT, (room - least) / count)));
        double bike = Math.max(least, Math.min(WIDEST_BIKE, Math.floor(room - count * concept)));
        return new Measures(
                bike, IntStream.range(0, stops.length).mapToObj(i -> stops[i]).toList(), concept, counted(sheet));
    }

    /** Room for the three numbers below the bar. */
    private static double leastConcept(BikesSheet sheet) {
        return sheet.rows().stream()
                .flatMap(row -> row.cells().stream())
                .mapToDouble(cell -> PADDING
                        + RIGHT
                        + cell.below().stream().mapToDouble(ConceptCell::width).sum())
                .reduce(LEAST_CONCEPT, Math::max);
    }

    private static String widest(Stream<String> texts) {
        return texts.max(java.util.Comparator.comparingDouble(text -> Type.TABLE.width(text, Weight.STRONG)))
                .orElse("");
    }

    private static double counted(BikesSheet sheet) {
        return sheet.rows().stream()
                .flatMap(row -> row.cells().stream())
                .flatMap(cell -> cell.counted().stream())
                .flatMap(number -> number.value().stream())
                .mapToDouble(value -> ChipPainter.ALONE
                        .extent(Chip.of(value.value(), value.unit(), "widest", "")
                                .in(Type.TABLE, Weight.STRONG))
                        .width())
                .max()
                .orElse(Metric.BAR_LEAST.units());
    }

    double titleAt() {
        return stops.get(0);
    }

    /** Right end of what stands in a concept's cell. */
    double right() {
        return concept - RIGHT;
    }

    /** Where the bar begins. */
    double barAt() {
        return PADDING + INDENT / 2;
    }

    /** Length of the bar; all of a column have it, so that their targets stand on one upright. */
    double bar() {
        return Math.max(
                Metric.BAR_LEAST.units() - PADDING,
                Math.min(Metric.BAR_MOST.units(), right() - Math.max(counted, Metric.BAR_LEAST.units()) - barAt()));
    }
}
