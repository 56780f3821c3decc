package groupwright.workbench.table;

import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Rectangle;
import javax.swing.JTable;
import javax.swing.table.DefaultTableCellRenderer;

/** Paints words, or a number with its unit behind it; one for all cells. */
final class TextCell extends DefaultTableCellRenderer {
    private static final long serialVersionUID = 1L;

    private static final double PATCH = 4; // the patch is wider than its number
    private static final double LINE = 2;

    private final TableColumn.Kind kind;
    private transient TableCell cell = TableCell.of("");
    private transient Weight weight = Weight.REGULAR;
    private boolean marked;
    private boolean ringed;

    TextCell(TableColumn.Kind kind) {
        this.kind = kind;
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean selected, boolean focused, int row, int column) {
        super.getTableCellRendererComponent(table, "", selected, focused, row, column);
        setBorder(null);
        cell = (TableCell) value;
        marked = selected;
        ringed = focused;
        weight = selected
                        && "title"
                                .equals(table.getColumnModel().getColumn(column).getIdentifier())
                ? Weight.STRONG
                : Weight.REGULAR;
        getAccessibleContext().setAccessibleName(cell.copied());
        double room = table.getColumnModel().getColumn(column).getWidth() / Look.scale() - 2.0 * Metric.STEP.units();
        setToolTipText(Type.TABLE.width(cell.text(), weight) > room - units() ? cell.copied() : null);
        return this;
    }

    private int units() {
        return kind == TableColumn.Kind.NUMBERS ? Metric.UNIT_COLUMN.units() : 0;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        try (Drawing drawing = Drawing.on(graphics, new Rectangle(0, 0, getWidth(), getHeight()))) {
            double left = Metric.STEP.units();
            double right = drawing.width() - Metric.STEP.units() - units();
            String text = Type.TABLE.cut(cell.text(), weight, Math.max(0, right - left));
            double start = kind == TableColumn.Kind.NUMBERS ? right - Type.TABLE.width(text, weight) : left;
            double baseline = Type.TABLE.baseline(drawing.height() / 2);
            drawing.text(text, patch(drawing, start, text), baseline, Type.TABLE, weight, ink());
            if (units() > 0) {
                drawing.text(cell.unit(), right + PATCH, baseline, Type.CAPTION, Weight.REGULAR, Token.MUTED);
            }
            if (marked) {
                drawing.level(0, drawing.width(), drawing.height() - LINE, LINE, Token.ACCENT);
            }
            if (ringed) {
                drawing.frame(0, 0, drawing.width(), drawing.height(), LINE, Token.ACCENT);
            }
        }
    }

    private double patch(Drawing drawing, double start, String text) {
        if (cell.state() == TableCell.State.CHANGED && !text.isEmpty()) {
            double width = Type.TABLE.width(text, weight) + 2 * PATCH;
            drawing.box(start - PATCH, PATCH, width, drawing.height() - 2 * PATCH, Token.CHANGED);
            drawing.level(start - PATCH, start - PATCH + width, drawing.height() - PATCH, 1, Token.INK);
        }
        return start;
    }

    private Token ink() {
        return switch (cell.state()) {
            case PLAIN -> Token.INK;
            case CHANGED -> Token.CHANGED_INK;
            case MUTED -> Token.MUTED;
        };
    }
}
