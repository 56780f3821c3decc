package groupwright.workbench.lists;

import groupwright.workbench.components.VerdictMark;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import java.awt.Cursor;
import java.awt.Graphics;
import java.awt.KeyboardFocusManager;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import javax.swing.AbstractAction;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import javax.swing.event.ListSelectionEvent;
import javax.swing.table.TableColumn;

/**
 * A list whose cells lead on. Arrow keys walk cells, Enter or Space does what the cell does, Tab leaves the list. Columns are
 * left out as the list gets narrow; what they show stands in the detail too.
 *
 * @param <R> what a row shows
 */
public final class ListTable<R> extends JTable {
    private static final long serialVersionUID = 1L;

    private final transient List<ListColumn<R>> columns;
    private final transient Consumer<Optional<R>> chosen;
    private final transient Consumer<R> opened;
    private final transient ListModel<R> rows;
    private boolean quiet;

    /**
     * @param name for those who do not see it
     * @param chosen told what is selected, whenever that changes by the person at the keys
     * @param opened told of the row on which Enter was pressed, where its cell leads nowhere
     */
    public ListTable(String name, List<ListColumn<R>> columns, Consumer<Optional<R>> chosen, Consumer<R> opened) {
        super(new ListModel<>(columns));
        this.columns = List.copyOf(columns);
        this.chosen = chosen;
        this.opened = opened;
        @SuppressWarnings("unchecked") // set just above
        ListModel<R> own = (ListModel<R>) getModel();
        this.rows = own;
        setAutoCreateColumnsFromModel(false);
        rebuild(List.of());
        setAutoResizeMode(AUTO_RESIZE_OFF);
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setRowHeight(Metric.CLOSE_ROW.px() + Metric.HALF_STEP.px() / 2);
        getTableHeader().setDefaultRenderer(new HeadCell());
        getTableHeader().setReorderingAllowed(false);
        getTableHeader().setResizingAllowed(false);
        getAccessibleContext().setAccessibleName(name);
        setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null); // Tab leaves the list
        setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        bind("ENTER");
        bind("SPACE");
        follow();
    }

    private void bind(String key) {
        getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke(key), "lead on");
        getActionMap().put("lead on", new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent event) {
                leadOn(getSelectedRow(), getColumnModel().getSelectionModel().getLeadSelectionIndex());
            }
        });
    }

    private void follow() {
        MouseAdapter mouse = new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                if (SwingUtilities.isLeftMouseButton(event)) {
                    action(event.getPoint()).ifPresent(Runnable::run);
                }
            }

            @Override
            public void mouseMoved(MouseEvent event) {
                boolean leads = action(event.getPoint()).isPresent();
                setCursor(Cursor.getPredefinedCursor(leads ? Cursor.HAND_CURSOR : Cursor.DEFAULT_CURSOR));
            }
        };
        addMouseListener(mouse);
        addMouseMotionListener(mouse);
    }

    private Optional<Runnable> action(Point at) {
        return action(rowAtPoint(at), columnAtPoint(at));
    }

    private Optional<Runnable> action(int row, int column) {
        if (column < 0) {
            return Optional.empty();
        }
        ListColumn<R> own = columns.get(convertColumnIndexToModel(column));
        return rows.item(row).flatMap(own::action);
    }

    private void leadOn(int row, int column) {
        Optional<Runnable> action = action(row, column);
        action.ifPresentOrElse(Runnable::run, () -> rows.item(row).ifPresent(opened));
    }

    /** Shows other rows; the selection stays where the same row is still there, by the id given. */
    public void show(List<ListRow<R>> next, Predicate<R> selected) {
        quiet = true;
        int column = Math.max(0, getColumnModel().getSelectionModel().getLeadSelectionIndex());
        rows.show(next);
        quiet = false;
        select(selected, column);
    }

    private void toSight() {
        if (getSelectedRow() >= 0) {
            scrollRectToVisible(getCellRect(getSelectedRow(), 0, true));
        }
    }

    /** Selects the first row that is meant, and brings it into sight; nobody is told. */
    public void select(Predicate<R> meant) {
        select(meant, Math.max(0, getColumnModel().getSelectionModel().getLeadSelectionIndex()));
        toSight();
    }

    private void select(Predicate<R> meant, int column) {
        quiet = true;
        int row = rows.find(meant);
        if (row < 0) {
            clearSelection();
        } else {
            setRowSelectionInterval(row, row);
            getColumnModel().getSelectionModel().setSelectionInterval(column, column);
        }
        quiet = false;
    }

    /** What is selected. */
    public Optional<R> selected() {
        return rows.item(getSelectedRow());
    }

    /** What the rows show, heads left out. */
    public List<R> items() {
        return rows.items();
    }

    @Override
    public void valueChanged(ListSelectionEvent event) {
        super.valueChanged(event);
        if (rows != null && !quiet && !event.getValueIsAdjusting()) {
            chosen.accept(selected());
        }
    }

    /** Heads are passed over. */
    @Override
    public void changeSelection(int row, int column, boolean toggle, boolean extend) {
        int step = row >= getSelectedRow() ? 1 : -1;
        int next = row;
        while (next >= 0 && next < getRowCount() && rows.item(next).isEmpty()) {
            next += step;
        }
        if (next >= 0 && next < getRowCount()) {
            super.changeSelection(next, column, false, false);
        }
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public void doLayout() {
        List<Integer> shown = shown();
        if (!shown.equals(current())) {
            rebuild(shown);
        }
        int fixed = shown.stream()
                .mapToInt(i -> Look.pixels(columns.get(i).width()))
                .sum();
        List<Integer> growing = shown.stream()
                .filter(i -> columns.get(i).room() == ListColumn.Room.GROWS)
                .toList();
        int left = Math.max(0, getWidth() - fixed);
        for (int i = 0; i < shown.size(); i++) {
            ListColumn<R> own = columns.get(shown.get(i));
            int more = growing.contains(shown.get(i)) ? left / growing.size() : 0;
            getColumnModel().getColumn(i).setPreferredWidth(Look.pixels(own.width()) + more);
            getColumnModel().getColumn(i).setWidth(Look.pixels(own.width()) + more);
        }
    }

    private List<Integer> shown() {
        List<Integer> shown = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            if (getWidth() / Look.scale() >= columns.get(i).from()) {
                shown.add(i);
            }
        }
        return shown;
    }

    private List<Integer> current() {
        List<Integer> current = new ArrayList<>();
        for (int i = 0; i < getColumnCount(); i++) {
            current.add(getColumnModel().getColumn(i).getModelIndex());
        }
        return current;
    }

    private void rebuild(List<Integer> shown) {
        quiet = true;
        while (getColumnCount() > 0) {
            removeColumn(getColumnModel().getColumn(0));
        }
        for (int i : shown) {
            ListColumn<R> own = columns.get(i);
            TableColumn column = new TableColumn(i, Look.pixels(own.width()), own.renderer(), null);
            column.setMinWidth(0);
            column.setHeaderValue(own.head());
            addColumn(column);
        }
        quiet = false;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        for (int row = 0; row < getRowCount(); row++) {
            Rectangle first = getCellRect(row, 0, true);
            if (rows.row(row) instanceof ListRow.Head<R> head
                    && graphics.hitClip(0, first.y, getWidth(), first.height)) {
                paintHead(graphics, new Rectangle(0, first.y, getWidth(), first.height), head);
            }
        }
    }

    private void paintHead(Graphics graphics, Rectangle place, ListRow.Head<R> head) {
        double padding = Metric.STEP.units();
        try (Drawing drawing = Drawing.on(graphics, place)) {
            drawing.box(0, 0, drawing.width(), drawing.height(), Token.SURFACE);
            drawing.level(0, drawing.width(), drawing.height() - 1, 1, Token.HAIRLINE);
            head.mark().ifPresent(mark -> {
                try (Drawing own = drawing.part(padding, 0, VerdictMark.SIZE, drawing.height())) {
                    new VerdictMark(Locale.ROOT).paint(own, mark);
                }
            });
            double x = padding + columns.get(0).width();
            double baseline = Type.TABLE.baseline(drawing.height() / 2);
            drawing.text(head.word(), x, baseline, Type.TABLE, Weight.STRONG, Token.INK);
            double after = x + Type.TABLE.width(head.word(), Weight.STRONG) + Metric.GAP.units();
            drawing.text(head.about(), after, baseline, Type.SECONDARY, Weight.REGULAR, Token.MUTED);
        }
    }
}
