package groupwright.workbench.components;

import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Token;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Rectangle;
import java.util.Objects;
import java.util.Optional;
import javax.swing.JTable;
import javax.swing.table.DefaultTableCellRenderer;

/**
 * Paints the values of a column with one painter, however many rows there are. A selected row has the wash and an accent
 * line at its lower edge, the cell in focus a ring.
 *
 * @param <V> what the column holds; a cell without a value stays empty
 */
public final class PaintedCell<V> extends DefaultTableCellRenderer {
    private static final double LINE = 2;

    private final transient Painter<V> painter;
    private final Class<V> type;
    private final int padding;
    private transient Optional<V> value = Optional.empty();
    private transient Token line = Token.RAISED;
    private transient Optional<Token> ring = Optional.empty();

    /**
     * A renderer for columns of this type.
     *
     * @param padding at the left and right, in pixels at 100 %; 0 for criterion bars
     */
    public PaintedCell(Class<V> type, Painter<V> painter, int padding) {
        this.type = Objects.requireNonNull(type, "type");
        this.painter = Objects.requireNonNull(painter, "painter");
        this.padding = padding;
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object cell, boolean selected, boolean focused, int row, int column) {
        super.getTableCellRendererComponent(table, "", selected, focused, row, column);
        setBorder(null);
        value = type.isInstance(cell) ? Optional.of(type.cast(cell)) : Optional.empty();
        line = selected ? Token.ACCENT : Token.RAISED;
        ring = focused ? Optional.of(Token.ACCENT) : Optional.empty();
        String name = value.map(painter::name).orElse("");
        getAccessibleContext().setAccessibleName(name);
        int room = table.getColumnModel().getColumn(column).getWidth();
        setToolTipText(value.filter(v -> painter.extent(v).width() + 2 * padding > room / Look.scale())
                .map(v -> name)
                .orElse(null));
        return this;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        try (Drawing all = Drawing.on(graphics, new Rectangle(0, 0, getWidth(), getHeight()))) {
            value.ifPresent(shown -> {
                try (Drawing inner = all.part(padding, 0, all.width() - 2 * padding, all.height())) {
                    painter.paint(inner, shown);
                }
            });
            if (line == Token.ACCENT) {
                all.level(0, all.width(), all.height() - LINE, LINE, line);
            }
            ring.ifPresent(colour -> all.frame(0, 0, all.width(), all.height(), LINE, colour));
        }
    }
}
