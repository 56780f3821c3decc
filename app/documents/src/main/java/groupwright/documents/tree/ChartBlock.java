package groupwright.documents.tree;

import groupwright.documents.charts.Chart;
import java.util.Objects;
import org.commonmark.node.CustomBlock;

/** A chart. Its children say the same without a drawing: a paragraph and a table. */
public final class ChartBlock extends CustomBlock {
    private final Chart chart;

    public ChartBlock(Chart chart) {
        this.chart = Objects.requireNonNull(chart, "chart");
    }

    /** What is drawn. */
    public Chart chart() {
        return chart;
    }
}
