package groupwright.documents.markdown;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Set;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableBody;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TableHead;
import org.commonmark.ext.gfm.tables.TableRow;
import org.commonmark.node.Node;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.markdown.MarkdownNodeRendererContext;
import org.commonmark.renderer.markdown.MarkdownWriter;
import org.commonmark.text.CharMatcher;

/** Writes tables with a space on both sides of each cell, which is what people write by hand. */
final class TableNodes implements NodeRenderer {
    private static final CharMatcher BAR = sign -> sign == '|';

    private final MarkdownNodeRendererContext context;
    private final MarkdownWriter writer;
    private BitSet leftOut = new BitSet(); // of the table being written; tables do not nest

    TableNodes(MarkdownNodeRendererContext context) {
        this.context = context;
        this.writer = context.getWriter();
    }

    @Override
    public Set<Class<? extends Node>> getNodeTypes() {
        return Set.of(TableBlock.class, TableHead.class, TableBody.class, TableRow.class, TableCell.class);
    }

    @Override
    public void render(Node node) {
        if (node instanceof TableBlock table) {
            leftOut = PictureColumns.of(table);
            writer.pushTight(true);
            renderChildren(node);
            writer.popTight();
            writer.block();
        } else if (node instanceof TableRow row) {
            renderRow(row);
        } else {
            renderChildren(node);
        }
    }

    private void renderRow(TableRow row) {
        List<TableCell> cells = shownCells(row);
        cells.forEach(this::renderCell);
        writer.raw("|");
        writer.block();
        if (row.getParent() instanceof TableHead) {
            cells.forEach(cell -> writer.raw("| " + rule(cell.getAlignment()) + " "));
            writer.raw("|");
            writer.block();
        }
    }

    private void renderCell(TableCell cell) {
        writer.raw(cell.getFirstChild() == null ? "|" : "| ");
        writer.pushRawEscape(BAR); // in text and in code alike
        renderChildren(cell);
        writer.popRawEscape();
        writer.raw(" ");
    }

    private List<TableCell> shownCells(TableRow row) {
        List<TableCell> cells = new ArrayList<>();
        int column = 0;
        for (Node cell = row.getFirstChild(); cell != null; cell = cell.getNext()) {
            if (!leftOut.get(column++)) {
                cells.add((TableCell) cell);
            }
        }
        return cells;
    }

    private static String rule(TableCell.Alignment alignment) {
        if (alignment == TableCell.Alignment.RIGHT) {
            return "---:";
        }
        return alignment == TableCell.Alignment.CENTER ? ":---:" : "---";
    }

    private void renderChildren(Node parent) {
        for (Node node = parent.getFirstChild(); node != null; node = node.getNext()) {
            context.render(node);
        }
    }
}
