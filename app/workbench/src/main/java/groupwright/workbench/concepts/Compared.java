package groupwright.workbench.concepts;

import groupwright.definition.figure.Ask;
import groupwright.documents.trace.ShownValue;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.components.Bar;
import groupwright.workbench.components.Chip;
import groupwright.workbench.components.ChipPainter;
import groupwright.workbench.components.CriterionBar;
import groupwright.workbench.components.Extent;
import groupwright.workbench.components.Mark;
import groupwright.workbench.components.Marked;
import groupwright.workbench.components.MarkedPainter;
import groupwright.workbench.components.Painter;
import groupwright.workbench.components.VerdictMark;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import java.util.Optional;

/**
 * A figure of one concept as it is painted: number, bar from the target, mark.
 *
 * @param marked nothing where there is no target
 */
record Compared(Chip chip, Optional<Bar> bar, Optional<Marked> marked, Widths widths) {
    /** How it is painted. */
    static final Painter<Compared> PAINTER = new Painting();

    static Compared of(ConceptsSheet.Cell cell, Weight weight, Bench bench, Words words, Widths widths) {
        String said = changed(cell, bench.recent()) ? words.text("changed", cell.name()) : cell.name();
        Chip chip = cell.value()
                .map(value -> Chip.of(value.value(), unit(cell, value), said, cell.copy())
                        .in(Type.TABLE, weight))
                .orElseGet(() -> Chip.missing(
                        words.text("value.missing"),
                        said,
                        cell.copy(),
                        cell.lacks()
                                .map(input -> input.address() + ": " + input.remedy())
                                .orElse("")));
        Chip since = changed(cell, bench.recent()) ? chip.changed() : chip;
        boolean here = cell.ask().isPresent() && cell.ask().equals(bench.selected());
        Optional<Bar> bar = cell.bar().map(drawn -> Bar.of(drawn, cell.name()));
        return new Compared(
                here ? since.at(Chip.Line.SELECTED) : since,
                bar.map(drawn -> cell.stretch().map(drawn::withStretch).orElse(drawn)),
                cell.verdict().map(verdict -> Marked.of(Mark.of(verdict), bench.locale())),
                widths);
    }

    /** Beside a target, a long unit is said there. */
    private static String unit(ConceptsSheet.Cell cell, ShownValue value) {
        return cell.verdict().isEmpty() || Widths.fits(value.unit()) ? value.unit() : "";
    }

    private static boolean changed(ConceptsSheet.Cell cell, Bench.Recent recent) {
        return contains(recent, cell.ask()) || contains(recent, cell.watched());
    }

    private static boolean contains(Bench.Recent recent, Optional<Ask> ask) {
        return ask.filter(recent.asks()::contains).isPresent();
    }

    private static final class Painting implements Painter<Compared> {
        private static final MarkedPainter MARKED = new MarkedPainter(Type.TABLE);

        @Override
        public Extent extent(Compared value) {
            return new Extent(value.widths.concept() - Widths.GAP, Metric.CLOSE_ROW.units(), -1);
        }

        @Override
        public String name(Compared value) {
            return value.chip.name();
        }

        @Override
        public void paint(Drawing drawing, Compared value) {
            Widths widths = value.widths;
            try (Drawing part = drawing.part(0, 0, widths.value(), drawing.height())) {
                ChipPainter.IN_COLUMN.paint(part, value.chip);
            }
            double length = widths.bar();
            try (Drawing part = drawing.part(widths.barAt(), 0, length, drawing.height())) {
                if (value.bar.isPresent()) {
                    CriterionBar.IN_ROW.paint(part, value.bar.get());
                } else {
                    part.upright(Math.floor(length / 2), 0, part.height(), 1, Token.INK);
                }
            }
            value.marked.ifPresent(marked -> paintMark(drawing, marked, widths));
        }

        private static void paintMark(Drawing drawing, Marked marked, Widths widths) {
            double x = widths.barAt() + widths.bar() + Widths.GAP;
            boolean word = widths.verdict() > VerdictMark.SIZE;
            try (Drawing part = drawing.part(x, 0, widths.verdict(), drawing.height())) {
                MARKED.paint(part, word ? marked : new Marked(marked.mark(), "", Weight.REGULAR));
            }
        }
    }
}
