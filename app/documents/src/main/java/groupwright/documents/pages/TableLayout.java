package groupwright.documents.pages;

import java.util.ArrayList;
import java.util.List;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableHead;
import org.commonmark.ext.gfm.tables.TableRow;
import org.commonmark.node.Node;

/** Lays a table out as slabs: its head, repeated on each page, and a slab for each row. */
final class TableLayout {
    private static final int LONGEST_UNSPLIT = 15;
    private static final double LEADING = 10.5;
    private static final double PADDING = 1.9;
    /** What a row needs beside its lines, and the end of the table. */
    private static final double ROW_EXTRA = 8;

    private final InlineSetter setter;
    private final LineBreaker breaker;
    private final double x;
    private final double textWidth;
    private final double widest;
    private final double tallest;
    private double width;

    /**
     * @param textWidth of the column it stands in
     * @param widest how wide it may become where that is not enough
     * @param tallest height of a page
     */
    TableLayout(InlineSetter setter, LineBreaker breaker, double x, double textWidth, double widest, double tallest) {
        this.setter = setter;
        this.breaker = breaker;
        this.x = x;
        this.textWidth = textWidth;
        this.widest = widest;
        this.tallest = tallest;
        this.width = textWidth;
    }

    List<Slab> layOut(TableBlock table) {
        List<TableCells> rows = new ArrayList<>();
        for (Node part = table.getFirstChild(); part != null; part = part.getNext()) {
            Style style = part instanceof TableHead
                    ? Style.TABLE.ofSize(7.75).strong().in(Paper.MUTED)
                    : Style.TABLE;
            for (Node row = part.getFirstChild(); row != null; row = row.getNext()) {
                rows.add(TableCells.of((TableRow) row, setter, style));
            }
        }
        TableFit fit = TableFit.of(rows, textWidth);
        width = widest > textWidth && fit.wants(widest, textWidth) ? widest : textWidth;
        List<TableColumn> columns = fit.columns(x, width);
        Slab head = head(rows.get(0), columns);
        List<Slab> body = new ArrayList<>();
        for (TableCells row : rows.subList(1, rows.size())) {
            List<Slab> parts = row(row, columns, tallest - head.height());
            parts.forEach(part -> body.add(part.under(head.withBefore(0))));
        }
        Slab.Reach reach = width > textWidth ? Slab.Reach.PAGE : Slab.Reach.TEXT;
        return joined(head, body, rows.size() - 1).stream()
                .map(slab -> slab.reaching(reach))
                .toList();
    }

    private List<Slab> joined(Slab head, List<Slab> body, int rows) {
        List<Slab> slabs = new ArrayList<>();
        slabs.add(head.keepingNext());
        for (int i = 0; i < body.size(); i++) {
            boolean last = i == body.size() - 1;
            boolean keeps = !last && (rows <= LONGEST_UNSPLIT || i == 0 || i == body.size() - 2);
            slabs.add(keeps ? body.get(i).keepingNext() : body.get(i));
        }
        Slab end = slabs.remove(slabs.size() - 1).padded(0, 1.5);
        double height = end.height();
        slabs.add(end.withBefore(slabs.isEmpty() ? head.before() : 0)
                .over((canvas, top) -> canvas.line(x, top + height, x + width, top + height, 1.1, Paper.INK)));
        return slabs;
    }

    private Slab head(TableCells cells, List<TableColumn> columns) {
        List<List<Line>> lines = lines(cells, columns);
        int most = lines.stream().mapToInt(List::size).max().orElse(1);
        double height = most * LEADING + 2 * PADDING + 3.5;
        Slab text = slab(lines, columns, most, height, 2.5);
        return text.withBefore(5).over((canvas, top) -> {
            canvas.line(x, top, x + width, top, 1.1, Paper.INK);
            canvas.line(x, top + height - 1, x + width, top + height - 1, 0.75, Paper.EDGE);
        });
    }

    /** One slab, or several for a row that is taller than a page. */
    private List<Slab> row(TableCells cells, List<TableColumn> columns, double room) {
        int mostLines = Math.max(1, (int) ((room - ROW_EXTRA) / LEADING));
        List<List<Line>> lines = lines(cells, columns);
        int most = Math.max(1, lines.stream().mapToInt(List::size).max().orElse(1));
        List<Slab> slabs = new ArrayList<>();
        for (int from = 0; from < most; from += mostLines) {
            int start = from;
            int count = Math.min(mostLines, most - from);
            List<List<Line>> part = lines.stream()
                    .map(cell -> cell.subList(Math.min(start, cell.size()), Math.min(start + count, cell.size())))
                    .toList();
            slabs.add(slab(part, columns, count, count * LEADING + 2 * PADDING, 0));
        }
        return slabs;
    }

    private List<List<Line>> lines(TableCells cells, List<TableColumn> columns) {
        List<List<Line>> lines = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            lines.add(lines(cells.cell(i), columns.get(i).width()));
        }
        return lines;
    }

    /** Words that follow a mark stay clear of it in the next lines, too. */
    private List<Line> lines(List<Piece> cell, double room) {
        if (cell.isEmpty() || !(cell.get(0) instanceof Piece.Mark mark)) {
            return breaker.lines(cell, room);
        }
        List<Line> words = breaker.lines(cell.subList(1, cell.size()), room - mark.width());
        List<Line> lines = new ArrayList<>();
        for (Line line : words) {
            List<Piece> indented = new ArrayList<>(line.pieces());
            indented.add(0, lines.isEmpty() ? mark : new Piece.Room(mark.width()));
            lines.add(new Line(indented));
        }
        return lines;
    }

    private Slab slab(List<List<Line>> cells, List<TableColumn> columns, int count, double height, double lower) {
        double first = PADDING + lower + LEADING * Paragraphs.ABOVE_BASELINE;
        List<Slab.Sighting> sightings = new ArrayList<>();
        for (int line = 0; line < count; line++) {
            for (List<Line> cell : cells) {
                double baseline = first + line * LEADING;
                if (line < cell.size()) {
                    cell.get(line).uses().forEach(use -> sightings.add(new Slab.Sighting(use, baseline)));
                }
            }
        }
        return Slab.of(0, height, sightings, (canvas, top) -> {
            for (int i = 0; i < cells.size(); i++) {
                double baseline = top + first;
                for (Line line : cells.get(i)) {
                    double left = columns.get(i).start(line);
                    LinePainter.paint(canvas, line, left, baseline, top, top + height);
                    baseline += LEADING;
                }
            }
        });
    }
}
