package groupwright.documents.pages;

import java.util.ArrayList;
import java.util.List;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TableRow;
import org.commonmark.node.Node;

/** The cells of a row as pieces, with the row's alignments. */
record TableCells(List<List<Piece>> cells, List<TableCell.Alignment> alignments) {
    static TableCells of(TableRow row, InlineSetter setter, Style style) {
        List<List<Piece>> cells = new ArrayList<>();
        List<TableCell.Alignment> alignments = new ArrayList<>();
        for (Node node = row.getFirstChild(); node != null; node = node.getNext()) {
            TableCell.Alignment alignment = ((TableCell) node).getAlignment();
            cells.add(setter.pieces(node, style, Piece.Number.Line.NONE));
            alignments.add(alignment == null ? TableCell.Alignment.LEFT : alignment);
        }
        return new TableCells(cells, alignments);
    }

    List<Piece> cell(int column) {
        return column < cells.size() ? cells.get(column) : List.of();
    }
}
