package groupwright.workbench.table;

import java.util.List;
import java.util.Optional;
import javax.swing.table.AbstractTableModel;

/** Maps rows to cells and nothing else. A cell is its {@link TableCell}, or what its painter paints. */
final class RecordTableModel extends AbstractTableModel {
    private static final long serialVersionUID = 1L;

    private final transient List<TableColumn> columns;
    private transient List<TableRow> all = List.of();
    private transient List<TableRow> shown = List.of();
    private transient Optional<RowOrder.Sort> sort = Optional.empty();
    private String filter = "";

    RecordTableModel(List<TableColumn> columns) {
        this.columns = List.copyOf(columns);
    }

    List<TableColumn> columns() {
        return columns;
    }

    void show(List<TableRow> rows) {
        all = List.copyOf(rows);
        arrange();
    }

    void filter(String words) {
        filter = words;
        arrange();
    }

    void sort(Optional<RowOrder.Sort> by) {
        sort = by;
        arrange();
    }

    Optional<RowOrder.Sort> sort() {
        return sort;
    }

    private void arrange() {
        List<TableRow> filtered = RowOrder.filtered(all, filter);
        shown = sort.map(by -> RowOrder.sorted(filtered, by)).orElse(filtered);
        fireTableDataChanged();
    }

    /** The rows as they stand on the screen. */
    List<TableRow> rows() {
        return shown;
    }

    int allRows() {
        return all.size();
    }

    TableCell cell(int row, int column) {
        return shown.get(row).cells().get(column);
    }

    @Override
    public int getRowCount() {
        return shown.size();
    }

    @Override
    public int getColumnCount() {
        return columns.size();
    }

    @Override
    public String getColumnName(int column) {
        return columns.get(column).head();
    }

    @Override
    public Object getValueAt(int row, int column) {
        TableCell cell = cell(row, column);
        return columns.get(column).renderer().isPresent() ? cell.value() : cell;
    }

    @Override
    public boolean isCellEditable(int row, int column) {
        return columns.get(column)
                .field()
                .filter(field -> !(field.type() instanceof groupwright.definition.record.FieldType.OwnId))
                .isPresent();
    }
}
