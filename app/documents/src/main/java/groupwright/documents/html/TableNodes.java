package groupwright.documents.html;

import groupwright.documents.labels.Labels;
import groupwright.documents.tree.Caption;
import groupwright.documents.tree.ChartBlock;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableBody;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TableHead;
import org.commonmark.ext.gfm.tables.TableRow;
import org.commonmark.node.Node;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.html.HtmlNodeRendererContext;

/** Writes tables and charts, each as a figure with its caption above. */
final class TableNodes implements NodeRenderer {
    /** Tables with more rows can be filtered and sorted. */
    static final int FEW_ROWS = 8;

    /** Ids and the like, which stay on one line. */
    private static final int SHORT = 7;

    private final HtmlNodeRendererContext context;
    private final Html html;
    private final Anchors anchors;
    private final Labels labels;
    private final ChartWriter charts;

    TableNodes(HtmlNodeRendererContext context, Anchors anchors, Labels labels, ChartWriter charts) {
        this.context = context;
        this.html = new Html(context.getWriter());
        this.anchors = anchors;
        this.labels = labels;
        this.charts = charts;
    }

    @Override
    public Set<Class<? extends Node>> getNodeTypes() {
        return Set.of(
                TableBlock.class, TableHead.class, TableBody.class, TableRow.class, TableCell.class, ChartBlock.class);
    }

    @Override
    public void render(Node node) {
        if (node instanceof ChartBlock chart) {
            write(chart);
        } else if (node instanceof TableBlock table) {
            write(table);
        } else if (node instanceof TableCell cell) {
            write(cell);
        } else {
            String element = node instanceof TableHead ? "thead" : node instanceof TableBody ? "tbody" : "tr";
            html.line().open(element);
            renderChildren(node);
            html.close(element);
        }
    }

    private void write(ChartBlock block) {
        String name = anchors.of(block);
        html.line().open("figure", "id", name, "class", "chart").line();
        caption(block, name);
        charts.write(block.chart(), name, html);
        html.line().open("details").element("summary", labels.text("html.chartNumbers"));
        for (Node child = block.getFirstChild(); child != null; child = child.getNext()) {
            if (child instanceof TableBlock) { // its paragraph is the drawing's description
                context.render(child);
            }
        }
        html.close("details").line().close("figure").line();
    }

    private void write(TableBlock table) {
        String name = anchors.of(table);
        String element = table.getParent() instanceof ChartBlock ? "div" : "figure";
        if (rows(table) > FEW_ROWS) {
            html.line()
                    .open(element, "id", name, "class", "rows", "data-many", "")
                    .line();
        } else {
            html.line().open(element, "id", name, "class", "rows").line();
        }
        boolean named = caption(table, name);
        html.open("div", "class", "scroll");
        if (named) {
            html.open("table", "aria-labelledby", name + "-caption");
        } else {
            html.open("table");
        }
        renderChildren(table);
        html.line().close("table").close("div").line().close(element).line();
    }

    private boolean caption(Node block, String name) {
        if (!(block.getPrevious() instanceof Caption caption)) {
            return false;
        }
        html.open("figcaption", "id", name + "-caption")
                .element("b", caption.number())
                .text(" ");
        renderChildren(caption);
        html.close("figcaption").line();
        return true;
    }

    private static int rows(TableBlock table) {
        int rows = 0;
        for (Node part = table.getFirstChild(); part != null; part = part.getNext()) {
            for (Node row = part.getFirstChild(); part instanceof TableBody && row != null; row = row.getNext()) {
                rows++;
            }
        }
        return rows;
    }

    /** The first cell of a row names it; an empty cell names nothing. */
    private void write(TableCell cell) {
        boolean head = cell.getParent().getParent() instanceof TableHead;
        boolean names = head || cell.getPrevious() == null;
        String element = names && cell.getFirstChild() != null ? "th" : "td";
        List<String> attributes = new ArrayList<>();
        if (element.equals("th")) {
            attributes.addAll(List.of("scope", head ? "col" : "row"));
        }
        String look = look(cell);
        if (!look.isEmpty()) {
            attributes.addAll(List.of("class", look));
        }
        html.open(element, attributes.toArray(String[]::new));
        renderChildren(cell);
        html.close(element);
    }

    private static String look(TableCell cell) {
        if (cell.getAlignment() == TableCell.Alignment.RIGHT) {
            return "end";
        } else if (cell.getAlignment() == TableCell.Alignment.CENTER) {
            return "centre";
        }
        return Wording.of(cell).length() <= SHORT ? "short" : "";
    }

    private void renderChildren(Node parent) {
        for (Node child = parent.getFirstChild(); child != null; child = child.getNext()) {
            context.render(child);
        }
    }
}
