package groupwright.workbench.bikes;

import groupwright.documents.trace.ShownValue;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.bikes.BikesSheet.Cell;
import groupwright.workbench.bikes.BikesSheet.Check;
import groupwright.workbench.bikes.BikesSheet.Number;
import groupwright.workbench.bikes.BikesSheet.Place;
import groupwright.workbench.components.Bar;
import groupwright.workbench.components.Chip;
import groupwright.workbench.components.ChipPainter;
import groupwright.workbench.components.CriterionBar;
import groupwright.workbench.components.DimensionLine;
import groupwright.workbench.components.Mark;
import groupwright.workbench.components.Marked;
import groupwright.workbench.components.MarkedPainter;
import groupwright.workbench.lists.ContentCell;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A concept on a bike as it is painted: how it fits, the bar of what counts most, the other numbers.
 *
 * @param opened whether its checks are shown below
 */
record ConceptCell(Cell cell, Look look, Measures measures, Bench bench, Words words) implements ContentCell.Content {
    /** How a cell stands out. */
    record Look(Weight weight, Opened opened) {}

    /** Whether the checks of a cell are shown. */
    enum Opened {
        HERE,
        ELSEWHERE
    }

    private static final MarkedPainter MARKED = new MarkedPainter(Type.TABLE);
    private static final double LINE = 24;
    private static final double WORD_GAP = -1; // a chip begins with room for its line
    private static final double MISSING_GAP = 4;
    private static final double EDGE = 2;
    private static final double WORST_AT = 5;
    /** A chip ends with room for its line. */
    private static final double OVERHANG = 4;

    /** A number where it stands. */
    private record Placed(Number number, Chip chip, Rectangle2D room) {}

    @Override
    public String name() {
        return cell.name();
    }

    @Override
    public void paint(Drawing drawing) {
        if (look.opened() == Opened.HERE) {
            drawing.box(0, 0, drawing.width(), drawing.height(), Token.WASH);
            drawing.level(0, drawing.width(), drawing.height() - EDGE, EDGE, Token.ACCENT);
        } else if (cell.place() == Place.WORST) {
            drawing.box(0, 0, drawing.width(), drawing.height(), Token.SURFACE);
        }
        drawing.upright(0, 0, drawing.height(), 1, Token.HAIRLINE);
        if (cell.place() == Place.WORST) {
            DimensionLine.STRONG.upright(drawing, WORST_AT, EDGE + 1, drawing.height() - EDGE - 1, Token.INK);
        }
        paintState(drawing);
        cell.bar().ifPresent(bar -> {
            try (Drawing part = drawing.part(measures.barAt(), Measures.SECOND_LINE - LINE / 2, measures.bar(), LINE)) {
                CriterionBar.IN_ROW.paint(part, Bar.of(bar, cell.name()));
            }
        });
        placed().forEach(placed -> paint(drawing, placed));
    }

    private void paintState(Drawing drawing) {
        Marked state = Marked.of(Mark.of(cell.fits()), bench.locale());
        Marked shown = look.weight() == Weight.STRONG || cell.fits().missesForCertain() ? state.strong() : state;
        double left = Measures.PADDING;
        double right = measures.right();
        double baseline = Type.TABLE.baseline(Measures.FIRST_LINE);
        if (cell.place() == Place.WORST) {
            String worst = words.text("worst");
            drawing.textUpTo(worst, right, baseline, Type.CAPTION, Weight.STRONG, Token.INK);
            right -= Type.CAPTION.width(worst, Weight.STRONG) + Metric.STEP.units();
        }
        double width = MARKED.extent(shown).width();
        try (Drawing part = drawing.part(left, Measures.FIRST_LINE - LINE / 2, width, LINE)) {
            MARKED.paint(part, shown);
        }
        double causeAt = left + width + Metric.STEP.units();
        if (!cell.cause().isEmpty() && right - causeAt > Metric.UNIT_COLUMN.units()) {
            String cause = Type.CAPTION.cut(cell.cause(), Weight.REGULAR, right - causeAt);
            drawing.text(cause, causeAt, baseline, Type.CAPTION, Weight.REGULAR, Token.MUTED);
        }
    }

    private void paint(Drawing drawing, Placed placed) {
        Rectangle2D room = placed.room();
        String word = placed.number().word();
        double wide = word.isEmpty() ? 0 : Type.CAPTION.width(word, weight(placed.number())) + WORD_GAP;
        double middle = room.getCenterY();
        boolean fails = placed.number().check() == Check.FAILS;
        drawing.text(
                word,
                room.getX(),
                Type.TABLE.baseline(middle),
                Type.CAPTION,
                weight(placed.number()),
                fails ? Token.INK : Token.MUTED);
        if (placed.number().value().isEmpty() && !word.isEmpty()) { // the word says what is missing
            drawing.text(
                    placed.chip().number(),
                    room.getX() + wide + MISSING_GAP,
                    Type.TABLE.baseline(middle),
                    Type.TABLE,
                    Weight.REGULAR,
                    Token.MUTED);
            return;
        }
        double height = ChipPainter.ALONE.extent(placed.chip()).height();
        double top = Type.TABLE.baseline(middle)
                - ChipPainter.ALONE.extent(placed.chip()).baseline();
        try (Drawing part = drawing.part(room.getX() + wide, top, room.getWidth() - wide, height)) {
            ChipPainter.ALONE.paint(part, placed.chip());
        }
    }

    /** The numbers with their rooms: one at the right of the bar, three below it. */
    private List<Placed> placed() {
        List<Placed> all = new ArrayList<>();
        cell.counted().ifPresent(number -> {
            Chip chip = chip(number, look.weight());
            double width = width(number, chip);
            all.add(new Placed(number, chip, room(measures.right() - width + OVERHANG, Measures.SECOND_LINE, width)));
        });
        List<Number> below = cell.below();
        List<Chip> chips =
                below.stream().map(number -> chip(number, Weight.REGULAR)).toList();
        double used = 0;
        for (int i = 0; i < chips.size(); i++) {
            used += width(below.get(i), chips.get(i));
        }
        double left = Measures.PADDING;
        double gap = (measures.right() + OVERHANG - left - used) / Math.max(1, chips.size() - 1);
        double x = left;
        for (int i = 0; i < chips.size(); i++) {
            double width = width(below.get(i), chips.get(i));
            all.add(new Placed(below.get(i), chips.get(i), room(x, Measures.THIRD_LINE, width)));
            x += width + gap;
        }
        return all;
    }

    private static Rectangle2D room(double x, double middle, double width) {
        return new Rectangle2D.Double(x, middle - LINE / 2, width, LINE);
    }

    private static Weight weight(Number number) {
        return number.check() == Check.FAILS ? Weight.STRONG : Weight.REGULAR;
    }

    private static double width(Number number, Chip chip) {
        double word = number.word().isEmpty() ? 0 : Type.CAPTION.width(number.word(), weight(number)) + WORD_GAP;
        return word + ChipPainter.ALONE.extent(chip).width();
    }

    /** How wide a number with its word is. */
    static double width(Number number) {
        Chip chip = number.value()
                .map(value -> value(value, number.name(), number).in(Type.TABLE, weight(number)))
                .orElseGet(() -> Chip.missing("–", number.name(), "", ""));
        return width(number, chip);
    }

    private Chip chip(Number number, Weight usual) {
        return chip(number, number.check() == Check.FAILS ? Weight.STRONG : usual, bench, words);
    }

    /** A number as a chip: changed by the last step, or the one in Workings. */
    static Chip chip(Number number, Weight weight, Bench bench, Words words) {
        boolean changed = number.ask().filter(bench.recent().asks()::contains).isPresent();
        String said = changed ? words.text("changed", number.name()) : number.name();
        Chip chip = number.value()
                .map(value -> value(value, said, number).in(Type.TABLE, weight))
                .orElseGet(() -> Chip.missing(
                        number.word().isEmpty() ? words.text("value.missing") : words.text("nothing"),
                        said,
                        number.copy(),
                        number.lacks()
                                .map(input -> input.address() + ": " + input.remedy())
                                .orElse("")));
        Chip since = changed ? chip.changed() : chip;
        return number.ask().isPresent() && number.ask().equals(bench.selected()) ? since.at(Chip.Line.SELECTED) : since;
    }

    private static Chip value(ShownValue value, String said, Number number) {
        return Chip.of(value.value(), value.unit(), said, number.copy());
    }

    /** What of it leads somewhere of its own. */
    List<Zone> zones() {
        List<Zone> zones = new ArrayList<>();
        for (Placed placed : placed()) {
            Number number = placed.number();
            if (number.value().isPresent()) {
                number.ask().ifPresent(ask -> zones.add(Zone.asking(placed.room(), ask)));
            } else {
                number.lacks().ifPresent(input -> zones.add(Zone.leading(placed.room(), input.address())));
            }
        }
        return zones;
    }

    /** The number that copying gives: the one with the bar, else the first below. */
    Optional<Number> first() {
        return cell.counted().or(() -> cell.below().stream().findFirst());
    }
}
