package groupwright.workbench.bikes;

import groupwright.definition.record.RecordId;
import groupwright.documents.charts.ConceptSign;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.bikes.BikesSheet.Column;
import groupwright.workbench.components.ConceptMark;
import groupwright.workbench.components.ConceptTag;
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
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Makes what stands in the cells of the matrix out of the sheet. */
record Contents(BikesSheet sheet, Measures measures, Bench bench, Words words) {
    private static final double FIRST_HEAD = 15;
    private static final double SECOND_HEAD = 33;
    private static final double LINE = 24;
    private static final List<Mark> ORDER = List.of(Mark.MEETS, Mark.CLOSE, Mark.MISSES, Mark.MISSING);

    private record Painted(String name, Consumer<Drawing> painting) implements ContentCell.Content {
        @Override
        public void paint(Drawing drawing) {
            painting.accept(drawing);
        }
    }

    /** What stands over the measures of bikes. */
    static List<String> measureHeads(Words words) {
        return List.of(
                words.text("head.chainstay"),
                words.text("head.centre"),
                words.text("head.front"),
                words.text("head.ring"));
    }

    /** Bikes, and one row for the counts. */
    int rows() {
        return sheet.rows().size() + 1;
    }

    boolean isLast(int row) {
        return row == sheet.rows().size();
    }

    ContentCell.Content bikesHead() {
        return new Painted(words.text("head.bike"), drawing -> {
            drawing.text(
                    words.text("head.bike"),
                    Measures.PADDING,
                    Type.TABLE.baseline(FIRST_HEAD),
                    Type.TABLE,
                    Weight.STRONG,
                    Token.MUTED);
            List<String> heads = measureHeads(words);
            for (int i = 0; i < heads.size(); i++) {
                drawing.text(
                        heads.get(i),
                        measures.stops().get(i),
                        Type.CAPTION.baseline(SECOND_HEAD),
                        Type.CAPTION,
                        Weight.REGULAR,
                        Token.MUTED);
            }
        });
    }

    ContentCell.Content conceptHead(int concept) {
        Column column = sheet.concepts().get(concept);
        double room = measures.right() - Measures.PADDING;
        String limit = sheet.counted().map(BikesSheet.Counted::words).orElseGet(() -> words.text("head.noLimit"));
        String inFull = sheet.counted().map(BikesSheet.Counted::name).orElse(limit);
        ConceptTag whole = ConceptTag.of(column.sign(), column.id().text(), column.title(), words.locale());
        return new Painted(whole.name() + ", " + inFull, drawing -> {
            drawing.upright(0, 0, drawing.height(), 1, Token.HAIRLINE);
            ConceptMark mark = new ConceptMark(Type.TABLE, Token.GROUND);
            double code = mark.extent(ConceptTag.of(column.sign(), column.id().text(), " ", words.locale()))
                    .width();
            String title = Type.TABLE.cut(column.title(), Weight.REGULAR, room - code);
            try (Drawing part = drawing.part(Measures.PADDING, FIRST_HEAD - LINE / 2, room, LINE)) {
                mark.paint(part, ConceptTag.of(column.sign(), column.id().text(), title, words.locale()));
            }
            String cut = Type.CAPTION.cut(limit, Weight.REGULAR, room);
            drawing.text(
                    cut,
                    Measures.PADDING,
                    Type.CAPTION.baseline(SECOND_HEAD),
                    Type.CAPTION,
                    Weight.REGULAR,
                    Token.MUTED);
        });
    }

    private Optional<RecordId> drawn() {
        return sheet.drawing().map(BikesSheet.Picture::bike);
    }

    ContentCell.Content bike(int row) {
        if (isLast(row)) {
            String text =
                    words.text("fits.foot", words.text("fits.of", sheet.rows().size()));
            return new Painted(text, drawing -> {
                drawing.level(0, drawing.width(), 0, 1, Token.EDGE);
                drawing.text(
                        text,
                        Measures.PADDING,
                        Type.TABLE.baseline(drawing.height() / 2),
                        Type.TABLE,
                        Weight.STRONG,
                        Token.INK);
            });
        }
        return bikeCell(row);
    }

    BikeCell bikeCell(int row) {
        BikesSheet.Row shown = sheet.rows().get(row);
        boolean here = drawn().equals(Optional.of(shown.id()));
        return new BikeCell(shown, here ? BikeCell.Drawn.HERE : BikeCell.Drawn.ELSEWHERE, measures);
    }

    ContentCell.Content concept(int row, int concept) {
        return isLast(row) ? counts(sheet.concepts().get(concept)) : conceptCell(row, concept);
    }

    ConceptCell conceptCell(int row, int concept) {
        BikesSheet.Cell cell = sheet.rows().get(row).cells().get(concept);
        boolean opened =
                sheet.opened().filter(open -> open.pair().equals(cell.pair())).isPresent();
        return new ConceptCell(
                cell,
                new ConceptCell.Look(
                        weight(sheet.concepts().get(concept)),
                        opened ? ConceptCell.Opened.HERE : ConceptCell.Opened.ELSEWHERE),
                measures,
                bench,
                words);
    }

    private static Weight weight(Column column) {
        return column.sign().standing() == ConceptSign.Standing.LEAD ? Weight.STRONG : Weight.REGULAR;
    }

    /** How many bikes it fits, by mark. */
    private ContentCell.Content counts(Column column) {
        MarkedPainter marked = new MarkedPainter(Type.TABLE);
        return new Painted(column.fits(), drawing -> {
            drawing.level(0, drawing.width(), 0, 1, Token.EDGE);
            drawing.upright(0, 0, drawing.height(), 1, Token.HAIRLINE);
            double x = Measures.PADDING;
            for (Mark mark : ORDER) {
                long count = column.verdicts().stream()
                        .filter(verdict -> Mark.of(verdict) == mark)
                        .count();
                if (count > 0) {
                    Marked shown = new Marked(mark, Long.toString(count), weight(column));
                    double wide = marked.extent(shown).width();
                    try (Drawing part = drawing.part(x, drawing.height() / 2 - LINE / 2, wide, LINE)) {
                        marked.paint(part, shown);
                    }
                    x += wide + Metric.WIDE_GAP.units();
                }
            }
        });
    }
}
