package groupwright.workbench.lists;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import javax.swing.table.AbstractTableModel;

/** Maps rows to cells; what a cell says was worked out before. */
final class ListModel<R> extends AbstractTableModel {
    private static final long serialVersionUID = 1L;

    private final transient List<ListColumn<R>> columns;
    private transient List<ListRow<R>> rows = List.of();

    ListModel(List<ListColumn<R>> columns) {
        this.columns = List.copyOf(columns);
    }

    void show(List<ListRow<R>> next) {
        rows = List.copyOf(next);
        fireTableDataChanged();
    }

    ListRow<R> row(int index) {
        return rows.get(index);
    }

    Optional<R> item(int index) {
        return index >= 0 && index < rows.size() && rows.get(index) instanceof ListRow.Item<R> item
                ? Optional.of(item.value())
                : Optional.empty();
    }

    int find(Predicate<R> meant) {
        for (int i = 0; i < rows.size(); i++) {
            if (item(i).filter(meant).isPresent()) {
                return i;
            }
        }
        return -1;
    }

    List<R> items() {
        return rows.stream()
                .filter(ListRow.Item.class::isInstance)
                .map(row -> ((ListRow.Item<R>) row).value())
                .toList();
    }

    @Override
    public int getRowCount() {
        return rows == null ? 0 : rows.size(); // Swing asks before construction is done
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
        return item(row)
                .flatMap(item -> columns.get(column).value().apply(item).map(Object.class::cast))
                .orElse("");
    }
}
