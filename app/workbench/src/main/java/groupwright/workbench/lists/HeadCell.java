package groupwright.workbench.lists;

import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Rectangle;
import javax.swing.JTable;
import javax.swing.table.DefaultTableCellRenderer;

/** Paints the heads of columns: muted, at the left, where the cells begin. */
final class HeadCell extends DefaultTableCellRenderer {
    private static final long serialVersionUID = 1L;

    private String text = "";

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean selected, boolean focused, int row, int column) {
        text = value.toString();
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
            double room = drawing.width() - 2 * Metric.STEP.units();
            drawing.box(0, 0, drawing.width(), drawing.height(), Token.GROUND);
            drawing.text(
                    Type.CAPTION.cut(text, Weight.STRONG, room + Metric.STEP.units()),
                    Metric.STEP.units(),
                    Type.CAPTION.baseline(drawing.height() / 2),
                    Type.CAPTION,
                    Weight.STRONG,
                    Token.MUTED);
        }
    }
}
