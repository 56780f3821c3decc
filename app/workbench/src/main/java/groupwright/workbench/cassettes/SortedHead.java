package groupwright.workbench.cassettes;

import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Rectangle;
import java.util.Optional;
import javax.swing.JTable;
import javax.swing.table.DefaultTableCellRenderer;

/** Heads of columns: over the numbers, the one that sorts in ink with an arrow. */
final class SortedHead extends DefaultTableCellRenderer {
    private static final long serialVersionUID = 1L;

    private final transient FoundModel model;
    private transient String text = "";
    private int column;
    private boolean sorts;

    SortedHead(FoundModel model) {
        this.model = model;
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean selected, boolean focused, int row, int at) {
        column = table.convertColumnIndexToModel(at);
        Optional<Sorting> sorting = model.shown().map(Shown::sorting);
        sorts = FoundModel.measure(column).isPresent()
                && sorting.flatMap(Sorting::by).equals(FoundModel.measure(column));
        boolean best =
                sorting.filter(one -> one.way() == Sorting.Way.BEST_FIRST).isPresent();
        text = value + (sorts ? best ? " ↑" : " ↓" : "");
        getAccessibleContext().setAccessibleName(text);
        return this;
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(Metric.UNIT_COLUMN.px(), Metric.TABLE_HEAD.px());
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        try (Drawing drawing = Drawing.on(graphics, new Rectangle(0, 0, getWidth(), getHeight()))) {
            drawing.box(0, 0, drawing.width(), drawing.height(), Token.GROUND);
            double baseline = Type.CAPTION.baseline(drawing.height() / 2);
            double width = Type.CAPTION.width(text, Weight.STRONG);
            double x = Metric.STEP.units();
            if (column >= FoundModel.FIRST_RIDERS) {
                x = (drawing.width() - width) / 2;
            } else if (column >= FoundModel.FIRST_MEASURE) {
                x = Math.max(0, drawing.width() - Metric.HALF_STEP.units() - width);
            }
            drawing.text(text, x, baseline, Type.CAPTION, Weight.STRONG, sorts ? Token.INK : Token.MUTED);
        }
    }
}
