package groupwright.workbench.bikes;

import groupwright.workbench.bikes.BikesSheet.Row;
import groupwright.workbench.components.Mark;
import groupwright.workbench.components.Marked;
import groupwright.workbench.components.MarkedPainter;
import groupwright.workbench.lists.CellText;
import groupwright.workbench.lists.CellTextPainter;
import groupwright.workbench.lists.ContentCell;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** A bike as it is painted: id and title, measures, and below them its source or what is missing. */
record BikeCell(Row row, Drawn drawn, Measures measures) implements ContentCell.Content {
    /** Whether the bike is the one in the drawing. */
    enum Drawn {
        HERE,
        ELSEWHERE
    }

    private static final MarkedPainter MARKED = new MarkedPainter(Type.TABLE);
    private static final double LINE = 24;
    private static final double EDGE = 2;

    @Override
    public String name() {
        return row.name();
    }

    @Override
    public void paint(Drawing drawing) {
        if (drawn == Drawn.HERE) {
            drawing.box(0, 0, drawing.width(), drawing.height(), Token.WASH);
            drawing.level(0, drawing.width(), drawing.height() - EDGE, EDGE, Token.ACCENT);
        }
        double right = drawing.width() - Measures.PADDING;
        double first = Type.TABLE.baseline(Measures.FIRST_LINE);
        drawing.text(
                row.id().text(),
                Measures.PADDING,
                first,
                Type.TABLE,
                drawn == Drawn.HERE ? Weight.STRONG : Weight.REGULAR,
                drawn == Drawn.HERE ? Token.INK : Token.MUTED);
        String title = Type.TABLE.cut(row.title(), Weight.STRONG, right - measures.titleAt());
        drawing.text(title, measures.titleAt(), first, Type.TABLE, Weight.STRONG, Token.INK);
        double second = Type.TABLE.baseline(Measures.SECOND_LINE);
        for (int i = 0; i < row.measures().size(); i++) {
            drawing.text(row.measures().get(i), measures.stops().get(i), second, Type.TABLE, Weight.REGULAR, Token.INK);
        }
        paintNote(drawing, right);
    }

    private void paintNote(Drawing drawing, double right) {
        double x = measures.titleAt();
        if (row.lacks().isEmpty()) {
            String source = Type.SECONDARY.cut(row.source(), Weight.REGULAR, right - x);
            drawing.text(
                    source,
                    x,
                    Type.SECONDARY.baseline(Measures.THIRD_LINE),
                    Type.SECONDARY,
                    Weight.REGULAR,
                    Token.MUTED);
            return;
        }
        Marked mark = new Marked(Mark.MISSING, "", Weight.REGULAR);
        double wide = MARKED.extent(mark).width();
        try (Drawing part = drawing.part(x, Measures.THIRD_LINE - LINE / 2, wide, LINE)) {
            MARKED.paint(part, mark);
        }
        try (Drawing part = drawing.part(x + wide, Measures.THIRD_LINE - LINE / 2, right - x - wide, LINE)) {
            CellTextPainter.PLAIN.paint(
                    part, CellText.link(row.lacks().orElseThrow().words()));
        }
    }

    /** The link to what is missing. */
    List<Zone> zones() {
        double x = measures.titleAt();
        return row.lacks().stream()
                .map(lack -> Zone.leading(
                        new Rectangle2D.Double(
                                x, Measures.THIRD_LINE - LINE / 2, measures.bike() - Measures.PADDING - x, LINE),
                        lack.input().address()))
                .toList();
    }
}
