package groupwright.workbench.lists;

import groupwright.workbench.look.Look;
import groupwright.workbench.look.Token;
import java.awt.Component;
import java.awt.Dimension;
import java.util.function.BiFunction;
import java.util.function.IntFunction;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.TableCellRenderer;
import javax.swing.table.TableColumn;

/** A table of painted contents whose columns keep their widths. */
public class FixedTable extends JTable {
    private static final long serialVersionUID = 1L;

    private final transient ContentCell head;
    private final transient ContentCell cells;

    /** What stands where. */
    public record Filling(
            int rows,
            double[] widths,
            IntFunction<ContentCell.Content> heads,
            BiFunction<Integer, Integer, ContentCell.Content> contents) {
        static final Filling NOTHING = new Filling(
                0,
                new double[0],
                column -> {
                    throw new IndexOutOfBoundsException(column);
                },
                (row, column) -> {
                    throw new IndexOutOfBoundsException(row);
                });
    }

    private final Model model = new Model();

    private static final class Model extends AbstractTableModel {
        private static final long serialVersionUID = 1L;
        private transient Filling filling = Filling.NOTHING;

        @Override
        public int getRowCount() {
            return filling.rows();
        }

        @Override
        public int getColumnCount() {
            return filling.widths().length;
        }

        @Override
        public String getColumnName(int column) {
            return filling.heads().apply(column).name();
        }

        @Override
        public Object getValueAt(int row, int column) {
            return filling.contents().apply(row, column);
        }
    }

    /**
     * A table.
     *
     * @param padding at the left of each cell, at 100 %
     * @param headHeight of the heads, in pixels of the screen
     * @param rowHeight of the rows, in pixels of the screen
     */
    public FixedTable(double padding, int headHeight, int rowHeight) {
        this.head = new ContentCell(padding);
        this.cells = new ContentCell(padding);
        head.setPreferredSize(new Dimension(0, headHeight));
        setModel(model);
        setAutoResizeMode(AUTO_RESIZE_OFF);
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setCellSelectionEnabled(true);
        setRowHeight(rowHeight);
        setBackground(Token.RAISED.colour());
        getTableHeader().setReorderingAllowed(false);
        getTableHeader().setResizingAllowed(false);
        getTableHeader().setDefaultRenderer((table, value, selected, focus, row, column) -> {
            head.getTableCellRendererComponent(table, model.filling.heads().apply(column), false, false, row, column);
            return head;
        });
    }

    /** Fills it; one stays where one stands. */
    public final void fill(Filling filling) {
        int row = getSelectedRow();
        int column = getSelectedColumn();
        boolean same =
                model.filling.widths().length == filling.widths().length && model.filling.rows() == filling.rows();
        model.filling = filling;
        if (same) {
            model.fireTableRowsUpdated(0, Math.max(0, filling.rows() - 1));
        } else {
            model.fireTableStructureChanged();
        }
        for (int i = 0; i < filling.widths().length; i++) {
            TableColumn of = getColumnModel().getColumn(i);
            int width = Look.pixels(filling.widths()[i]);
            of.setMinWidth(width);
            of.setMaxWidth(width);
            of.setPreferredWidth(width);
        }
        if (row < filling.rows() && column < filling.widths().length && row >= 0 && column >= 0) {
            changeSelection(row, column, false, false);
        }
        getTableHeader().repaint();
        revalidate();
        repaint();
    }

    @Override
    public TableCellRenderer getCellRenderer(int row, int column) {
        return cells;
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return false;
    }

    @Override
    public Component prepareRenderer(TableCellRenderer renderer, int row, int column) {
        boolean here = isFocusOwner() && row == getSelectedRow() && column == getSelectedColumn();
        return renderer.getTableCellRendererComponent(this, getValueAt(row, column), here, here, row, column);
    }
}
