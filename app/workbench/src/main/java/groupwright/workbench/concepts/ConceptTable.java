package groupwright.workbench.concepts;

import groupwright.workbench.lists.FixedTable;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import java.awt.Graphics;
import java.awt.Rectangle;

/** The columns of concepts; in each, the targets of all rows stand on one upright. */
final class ConceptTable extends FixedTable {
    private static final long serialVersionUID = 1L;

    private transient double[] uprights = new double[0];
    private int figures;

    ConceptTable() {
        super(Widths.GAP, Metric.TABLE_HEAD.px(), Metric.CLOSE_ROW.px());
    }

    void fill(Contents contents) {
        double width = contents.widths().concept();
        int concepts = contents.sheet().concepts().size();
        double[] widths = new double[concepts];
        uprights = new double[concepts];
        figures = contents.rows() - 1;
        double target = Math.floor(contents.widths().bar() / 2);
        for (int i = 0; i < concepts; i++) {
            widths[i] = width;
            uprights[i] = i * width + Widths.GAP + contents.widths().barAt() + target;
        }
        fill(new Filling(contents.rows(), widths, contents::head, contents::cell));
    }

    /** Lines between rows would cut it. */
    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        try (Drawing drawing = Drawing.on(graphics, new Rectangle(0, 0, getWidth(), getHeight()))) {
            double row = drawing.height() / Math.max(1, getRowCount());
            for (double x : uprights) {
                for (int i = 1; i <= figures; i++) {
                    drawing.upright(x, i * row - 1, i * row, 1, Token.INK);
                }
            }
        }
    }
}
