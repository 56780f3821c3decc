package groupwright.workbench.cassettes;

import groupwright.definition.record.RecordId;
import groupwright.drivetrain.gearing.Cassette;
import groupwright.workbench.components.PaintedCell;
import groupwright.workbench.lists.CellText;
import groupwright.workbench.lists.CellTextPainter;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import java.awt.KeyboardFocusManager;
import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.event.ListSelectionEvent;
import javax.swing.table.TableCellRenderer;
import javax.swing.table.TableColumn;

/** The cassettes as rows. A click on a head or F8 sorts by its column; P pins the row. */
final class FoundTable extends JTable {
    private static final long serialVersionUID = 1L;

    private static final int LETTER = 28;
    private static final int COGS = 226;
    private static final int COGS_MORE = 120;
    private static final int RIDERS = 38;
    /** Left out one after the other where there is no room. */
    private static final List<Measure> FIRST_TO_GO = List.of(Measure.RANGE, Measure.WAIT, Measure.MISMATCH);

    private static final int PADDING = 8;

    /** What is asked for at the table. */
    interface Acts {
        void select(Cassette cassette);

        void sort(Sorting sorting);

        void pin(Cassette cassette);
    }

    private final transient FoundModel rows;
    private final transient Acts acts;
    private transient List<RecordId> riders = List.of();
    private boolean quiet;

    FoundTable(CassetteWords say, Acts acts) {
        super(new FoundModel(say));
        this.rows = (FoundModel) getModel();
        this.acts = acts;
        setName("cassettes");
        getAccessibleContext().setAccessibleName(say.words().text("table.name"));
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setRowHeight(Metric.CLOSE_ROW.px());
        setAutoResizeMode(AUTO_RESIZE_OFF);
        getTableHeader().setReorderingAllowed(false);
        getTableHeader().setDefaultRenderer(new SortedHead(rows));
        setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null); // Tab leaves the table
        setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        getTableHeader().addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                sort(columnAtPoint(event.getPoint()));
            }
        });
        Keys.bind(this, "F8", () -> sort(getColumnModel().getSelectionModel().getLeadSelectionIndex()));
        Keys.bind(this, "P", () -> here().ifPresent(acts::pin));
        setAutoCreateColumnsFromModel(false);
    }

    private Optional<Cassette> here() {
        int row = getSelectedRow();
        return row < 0 ? Optional.empty() : Optional.of(rows.row(row).cassette());
    }

    private void sort(int column) {
        Optional.of(column)
                .filter(at -> at >= 0 && at < getColumnCount())
                .flatMap(at -> FoundModel.measure(convertColumnIndexToModel(at)))
                .flatMap(measure -> rows.shown().map(now -> now.sorting().next(measure)))
                .ifPresent(acts::sort);
    }

    private static TableCellRenderer cell(int column) {
        if (column < FoundModel.FIRST_MEASURE) {
            return new PaintedCell<>(CellText.class, CellTextPainter.PLAIN, PADDING);
        } else if (column < FoundModel.FIRST_RIDERS) {
            return new PaintedCell<>(Amounts.Amount.class, Amounts.PLAIN, 0);
        }
        return new PaintedCell<>(ForRiders.class, ForRiders.Painting.PLAIN, 0);
    }

    private static int width(int column) {
        if (column == FoundModel.LETTER) {
            return LETTER;
        } else if (column == FoundModel.COGS) {
            return COGS;
        }
        return FoundModel.measure(column).map(FoundTable::width).orElse(RIDERS);
    }

    private static int width(Measure measure) {
        return switch (measure) {
            case LARGEST_STEP -> 74;
            case UNEVENNESS -> 78;
            case MISMATCH -> 66;
            case WEIGHT -> 70;
            case WAIT, RANGE -> 58;
        };
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return getParent() != null && getParent().getWidth() >= least();
    }

    private static int least(List<Integer> columns) {
        return columns.stream().mapToInt(i -> Look.pixels(width(i))).sum();
    }

    private int least() {
        return least(fitting(0));
    }

    /** The columns that fit a width; those that may not go always do. */
    private List<Integer> fitting(int width) {
        List<Integer> fitting = new ArrayList<>();
        for (int i = 0; i < rows.getColumnCount(); i++) {
            fitting.add(i);
        }
        for (Measure measure : FIRST_TO_GO) {
            if (least(fitting) > width) {
                fitting.remove(Integer.valueOf(FoundModel.FIRST_MEASURE + measure.ordinal()));
            }
        }
        return fitting;
    }

    private List<Integer> current() {
        List<Integer> current = new ArrayList<>();
        for (int i = 0; i < getColumnCount(); i++) {
            current.add(getColumnModel().getColumn(i).getModelIndex());
        }
        return current;
    }

    private void columns(List<Integer> shown) {
        while (getColumnCount() > 0) {
            removeColumn(getColumnModel().getColumn(0));
        }
        for (int i : shown) {
            TableColumn column = new TableColumn(i, Look.pixels(width(i)), cell(i), null);
            column.setMinWidth(0);
            column.setHeaderValue(rows.getColumnName(i));
            addColumn(column);
        }
    }

    @Override
    public void doLayout() {
        List<Integer> shown = fitting(getWidth());
        if (!shown.equals(current())) {
            quiet = true;
            columns(shown);
            quiet = false;
        }
        int left = Math.max(0, getWidth() - least(shown));
        for (int i = 0; i < shown.size(); i++) {
            int own = Look.pixels(width(shown.get(i))) + more(shown.get(i), left, shown.size());
            getColumnModel().getColumn(i).setPreferredWidth(own);
            getColumnModel().getColumn(i).setWidth(own);
        }
    }

    /** What a column takes of the room that is left: the cogs a little, the others the rest, so that rows can be followed. */
    private static int more(int column, int left, int columns) {
        int cogs = Math.min(left, Look.pixels(COGS_MORE));
        if (column == FoundModel.COGS) {
            return cogs;
        }
        return column == FoundModel.LETTER ? 0 : (left - cogs) / Math.max(1, columns - FoundModel.FIRST_MEASURE);
    }

    @Override
    public java.awt.Dimension getPreferredSize() {
        return new java.awt.Dimension(least(), super.getPreferredSize().height);
    }

    /** Shows what was found, with a column for each of these groups. */
    void show(Shown next, List<RecordId> groups) {
        quiet = true;
        int column = Math.max(0, getColumnModel().getSelectionModel().getLeadSelectionIndex());
        if (!groups.equals(riders)) {
            riders = groups;
            rows.riders(groups);
            columns(fitting(getWidth()));
        }
        rows.show(next);
        for (int i = 0; i < rows.rows().size(); i++) {
            if (next.selected().equals(Optional.of(rows.row(i).cassette()))) {
                setRowSelectionInterval(i, i);
                getColumnModel().getSelectionModel().setSelectionInterval(column, column);
                scrollRectToVisible(getCellRect(i, 0, true));
            }
        }
        quiet = false;
        getTableHeader().repaint();
    }

    @Override
    public void valueChanged(ListSelectionEvent event) {
        super.valueChanged(event);
        if (rows != null && !quiet && !event.getValueIsAdjusting()) {
            here().ifPresent(acts::select);
        }
    }

    @Override
    public String getToolTipText(MouseEvent event) {
        Point at = event.getPoint();
        int row = rowAtPoint(at);
        int column = columnAtPoint(at);
        return row >= 0 && column >= 0 && getValueAt(row, column) instanceof ForRiders riders
                ? riders.words()
                : super.getToolTipText(event);
    }

    FoundModel found() {
        return rows;
    }
}
