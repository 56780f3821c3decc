package groupwright.workbench.requirements;

import groupwright.workbench.components.PaintedCell;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import java.awt.AWTKeyStroke;
import java.awt.Container;
import java.awt.Graphics;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.event.TableModelEvent;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableColumnModel;
import javax.swing.table.TableColumn;

/** The table of requirements: a row for each criterion, the upright of all targets running through all rows. */
final class RequirementsTable extends JTable {
    private static final long serialVersionUID = 1L;

    private final transient Words words;
    private transient List<Listing.Line> lines = List.of();
    private transient Optional<Cells> cells = Optional.empty();
    private transient Widths widths = new Widths(0, 0, 0, 0, 0, 0, 0);

    RequirementsTable(Words words) {
        this.words = words;
        setAutoCreateColumnsFromModel(false);
        setModel(new Lines());
        setColumnModel(columns());
        setAutoResizeMode(AUTO_RESIZE_OFF);
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setFillsViewportHeight(true);
        getTableHeader().setReorderingAllowed(false);
        getTableHeader().setResizingAllowed(false);
        getAccessibleContext().setAccessibleName(words.text("title"));
        leaveTabToTheWindow();
    }

    private static DefaultTableColumnModel columns() {
        DefaultTableColumnModel columns = new DefaultTableColumnModel();
        for (Column column : Column.values()) {
            TableColumn own = new TableColumn(
                    column.ordinal(), 10, new PaintedCell<>(Cell.class, Cell.PAINTER, column.padding()), null);
            own.setIdentifier(column);
            own.setMinWidth(0);
            columns.addColumn(own);
        }
        columns.setColumnMargin(0);
        return columns;
    }

    /** Arrow keys walk the cells; Tab goes on to what comes next in the window. */
    private void leaveTabToTheWindow() {
        setFocusTraversalKeys(
                KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, Set.of(AWTKeyStroke.getAWTKeyStroke(KeyEvent.VK_TAB, 0)));
        setFocusTraversalKeys(
                KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS,
                Set.of(AWTKeyStroke.getAWTKeyStroke(KeyEvent.VK_TAB, InputEvent.SHIFT_DOWN_MASK)));
    }

    /** Shows lines; the selection is the caller's to restore. */
    void show(Listing listing, Cells shown, String valueHead) {
        lines = listing.lines();
        cells = Optional.of(shown);
        widths = shown.widths();
        TableHead.dress(this, words, valueHead);
        tableChanged(new TableModelEvent(getModel()));
        revalidate();
    }

    /** Paints with other marks of what is changed or in Workings; the lines stay. */
    void repaintWith(Cells shown) {
        cells = Optional.of(shown);
        repaint();
    }

    Widths widths() {
        return widths;
    }

    List<Listing.Line> lines() {
        return lines;
    }

    Optional<Listing.Line> line(int row) {
        return row >= 0 && row < lines.size() ? Optional.of(lines.get(row)) : Optional.empty();
    }

    @Override
    public void doLayout() {
        double scale = Look.scale();
        int room = getWidth();
        int used = 0;
        var own = widths.in(room / scale);
        for (Column column : Column.values()) {
            int width = column == Column.VERDICT
                    ? Math.max(room - used, Look.pixels(own.get(column)))
                    : Look.pixels(own.get(column));
            TableColumn at = getColumnModel().getColumn(column.ordinal());
            at.setWidth(width);
            at.setPreferredWidth(width);
            used += width;
        }
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        Container viewport = getParent();
        return viewport != null && viewport.getWidth() >= Look.pixels(widths.least());
    }

    @Override
    public java.awt.Dimension getPreferredSize() {
        java.awt.Dimension size = super.getPreferredSize();
        size.width = Math.max(Look.pixels(widths.least()), getScrollableTracksViewportWidth() ? getWidth() : 0);
        return size;
    }

    @Override
    public String getToolTipText(MouseEvent event) {
        int row = rowAtPoint(event.getPoint());
        int column = columnAtPoint(event.getPoint());
        if (row < 0 || column < 0) {
            return null;
        }
        if (lines.get(row).row() instanceof Row.Note note && isUnderSentence(Column.at(column))) {
            return note.sentence();
        }
        return getValueAt(row, column) instanceof Cell.Amount amount
                        && !amount.chip().tip().isEmpty()
                ? amount.chip().tip()
                : super.getToolTipText(event);
    }

    private static boolean isUnderSentence(Column column) {
        return column.compareTo(Column.FIGURE) >= 0 && column.compareTo(Column.MARGIN) <= 0;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        Rectangle clip = graphics.getClipBounds();
        int first = Math.max(0, rowAtPoint(new java.awt.Point(0, clip.y)));
        for (int row = first; row < lines.size(); row++) {
            Rectangle place = getCellRect(row, Column.FIGURE.ordinal(), false);
            if (place.y > clip.y + clip.height) {
                return;
            }
            if (lines.get(row).row() instanceof Row.Note note) {
                paintSentence(graphics, note, place, row);
            } else {
                paintUprightOverRule(graphics, row);
            }
        }
    }

    private void paintSentence(Graphics graphics, Row.Note note, Rectangle from, int row) {
        Rectangle to = getCellRect(row, Column.MARGIN.ordinal(), false);
        Rectangle room = from.union(to);
        try (Drawing all = Drawing.on(graphics, room);
                Drawing inner = all.part(Widths.PADDING, 0, all.width() - 2 * Widths.PADDING, all.height())) {
            new Cell.Words(note.sentence(), Weight.REGULAR, Token.MUTED, "").paint(inner);
        }
    }

    /** The rule between rows must not break the upright. */
    private void paintUprightOverRule(Graphics graphics, int row) {
        if (isRowSelected(row) || !(getValueAt(row, Column.BAR.ordinal()) instanceof Cell.Reach)) {
            return;
        }
        Rectangle cell = getCellRect(row, Column.BAR.ordinal(), true);
        double padding = Column.BAR.padding();
        try (Drawing all = Drawing.on(graphics, cell);
                Drawing inner = all.part(padding, 0, all.width() - 2 * padding, all.height())) {
            inner.upright(Math.floor(inner.width() / 2), inner.height() - 1, inner.height(), 1, Token.INK);
        }
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setRowHeight(Metric.ROW.px());
        setShowHorizontalLines(true);
        setFont(Type.TABLE.font(Weight.REGULAR));
    }

    private final class Lines extends AbstractTableModel {
        private static final long serialVersionUID = 1L;

        @Override
        public int getRowCount() {
            return lines == null ? 0 : lines.size(); // Swing asks before the fields are set
        }

        @Override
        public int getColumnCount() {
            return Column.values().length;
        }

        @Override
        public String getColumnName(int column) {
            return words.text(Column.at(column).key());
        }

        @Override
        public Class<?> getColumnClass(int column) {
            return Cell.class;
        }

        @Override
        public Object getValueAt(int row, int column) {
            Cells.Chosen chosen = isRowSelected(row) ? Cells.Chosen.SELECTED : Cells.Chosen.OTHER;
            return cells.orElseThrow().of(lines.get(row), Column.at(column), chosen);
        }
    }
}
