package groupwright.workbench.requirements;

import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * How wide the columns are, at 100 %. Numbers, units and verdicts always get the room they need; what is left goes to titles,
 * figures and bars.
 *
 * @param targetNumber widest number of the targets
 * @param targetUnit room for units behind the targets
 * @param valueNumber widest value
 * @param valueUnit room for units behind the values
 * @param margin widest margin
 */
record Widths(
        double comparator,
        double targetNumber,
        double targetUnit,
        double valueNumber,
        double valueUnit,
        double margin,
        double verdict) {
    static final double PADDING = 8;
    private static final double LADDER = 32;
    private static final double ID = 58;
    private static final double GAP = 8;
    private static final double UNIT_GAP = 8;
    private static final double TITLE_LEAST = 86;
    private static final double TITLE_MOST = 320;
    private static final double FIGURE_LEAST = 62;
    private static final double FIGURE_MOST = 300;
    private static final double MARK = 18;

    /** Room beyond the least from which on the figure has a column; below it the detail and Workings tell it. */
    private static final double FIGURE_FROM = 150;

    /** The room the lines of a listing need. O(lines), measuring only the longest texts. */
    static Widths of(
            Listing listing, List<String> comparators, List<String> verdicts, String missing, String marginHead) {
        List<Row.Measured> rows = listing.lines().stream()
                .map(Listing.Line::row)
                .filter(Row.Measured.class::isInstance)
                .map(Row.Measured.class::cast)
                .toList();
        return new Widths(
                widest(comparators, text -> text, Weight.REGULAR, Type.TABLE),
                number(rows, row -> row.limit().number(), row -> row.limit().unit(), Weight.REGULAR),
                Metric.UNIT_COLUMN.units(),
                Math.max(
                        Type.TABLE.width(missing, Weight.REGULAR),
                        number(
                                rows,
                                row -> row.value().map(v -> v.value()).orElse(""),
                                row -> row.value().map(v -> v.unit()).orElse(""),
                                Weight.STRONG)),
                Metric.UNIT_COLUMN.units(),
                Math.max(
                        Type.SECONDARY.width(marginHead, Weight.REGULAR),
                        widest(rows, Row.Measured::margin, Weight.REGULAR, Type.TABLE)),
                MARK + widest(verdicts, text -> text, Weight.STRONG, Type.TABLE));
    }

    /** Room for the numbers before the column of units; a unit that is too long for its column pushes its own number. */
    private static double number(
            List<Row.Measured> rows,
            Function<Row.Measured, String> number,
            Function<Row.Measured, String> unit,
            Weight weight) {
        double widest = widest(rows, number, weight, Type.TABLE);
        for (Row.Measured row : rows) {
            double beyond = unitRoom(unit.apply(row)) - Metric.UNIT_COLUMN.units();
            if (beyond > 0) {
                widest = Math.max(widest, Type.TABLE.width(number.apply(row), weight) + beyond);
            }
        }
        return widest;
    }

    /** Room a unit takes behind its number. */
    static double unitRoom(String unit) {
        return Math.max(Metric.UNIT_COLUMN.units(), UNIT_GAP + Type.CAPTION.width(unit, Weight.REGULAR));
    }

    private static <T> double widest(Collection<T> all, Function<T, String> text, Weight weight, Type type) {
        int longest = all.stream().map(text).mapToInt(String::length).max().orElse(0);
        return all.stream()
                .map(text)
                .filter(one -> one.length() > 0 && one.length() >= longest - 2)
                .distinct()
                .mapToDouble(one -> type.width(one, weight))
                .max()
                .orElse(0);
    }

    private double target() {
        return PADDING + comparator + GAP + targetNumber + targetUnit;
    }

    private double value() {
        return GAP + valueNumber + valueUnit;
    }

    /** Below this the table scrolls sideways. */
    double least() {
        return fixed() + TITLE_LEAST + FIGURE_LEAST + barLeast();
    }

    private static double barLeast() {
        return Metric.BAR_LEAST.units() + PADDING;
    }

    private double fixed() {
        return LADDER + ID + target() + value() + marginWidth() + verdictWidth();
    }

    private double marginWidth() {
        return margin + PADDING;
    }

    private double verdictWidth() {
        return Math.max(Metric.VERDICT_COLUMN.units(), verdict + 2 * PADDING);
    }

    /** The width of each column in so much room; their sum is the room, or {@link #least}. */
    Map<Column, Double> in(double room) {
        double left = Math.max(0, room - least());
        if (left < FIGURE_FROM) { // a title that can be read says more than half a title and half a figure
            return widths(room, 0, barLeast());
        }
        double bar = Math.min(Metric.BAR_MOST.units() + PADDING - barLeast(), left * 0.08);
        double title = Math.min(TITLE_MOST - TITLE_LEAST, (left - bar) * 0.55);
        double figure = Math.min(FIGURE_MOST - FIGURE_LEAST, left - bar - title);
        bar = Math.min(Metric.BAR_MOST.units() + PADDING - barLeast(), left - title - figure);
        double rest = left - bar - title - figure;
        return widths(room, FIGURE_LEAST + figure + rest / 2, barLeast() + bar);
    }

    private Map<Column, Double> widths(double room, double figure, double bar) {
        Map<Column, Double> widths = new EnumMap<>(Column.class);
        widths.put(Column.LADDER, LADDER);
        widths.put(Column.ID, ID);
        widths.put(Column.FIGURE, figure);
        widths.put(Column.TARGET, target());
        widths.put(Column.VALUE, value());
        widths.put(Column.BAR, bar);
        widths.put(Column.MARGIN, marginWidth());
        widths.put(Column.VERDICT, verdictWidth());
        widths.put(
                Column.TITLE,
                Math.max(room, least())
                        - widths.values().stream()
                                .mapToDouble(Double::doubleValue)
                                .sum());
        return widths;
    }
}
