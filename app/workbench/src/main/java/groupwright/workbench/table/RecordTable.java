package groupwright.workbench.table;

import groupwright.definition.record.Address;
import groupwright.definition.record.Component;
import groupwright.definition.record.Entry;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.ObjectEdit;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Shape;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.components.Mark;
import groupwright.workbench.form.Sentence;
import groupwright.workbench.look.Metric;
import groupwright.workbench.notation.FieldWords;
import groupwright.workbench.notation.Notations;
import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;

/**
 * Records of any kind as a table. It shows rows made elsewhere; sorting and filtering cost O(n log n) on the event thread,
 * painting only what is in sight. A field edited in its cell is one edit of the project.
 */
public final class RecordTable extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Bench bench;
    private final transient Notations notations;
    private final RecordTableModel model;
    private final JTable table;
    private final transient ColumnSet columns;
    private final Sentence sentence = new Sentence(Mark.MISSES);
    private final transient List<Consumer<Set<RecordId>>> listeners = new ArrayList<>();
    private boolean quiet;

    /**
     * @param columns all columns there are; rows have a cell for each
     * @param shown keys of the columns shown at first, in their order
     * @param name what the table holds, for screen readers
     */
    public RecordTable(Bench bench, Notations notations, List<TableColumn> columns, List<String> shown, String name) {
        super(new BorderLayout());
        this.bench = bench;
        this.notations = notations;
        this.model = new RecordTableModel(columns);
        this.table = new JTable(model);
        CellEditor editor = new CellEditor(this::subject, this::commit, this::say);
        this.columns = new ColumnSet(table, model, editor, bench.locale());
        this.columns.show(shown);
        table.setAutoResizeMode(JTable.AUTO_RESIZE_OFF);
        table.setFillsViewportHeight(true);
        table.putClientProperty("terminateEditOnFocusLost", Boolean.TRUE);
        table.setSurrendersFocusOnKeystroke(true);
        table.getAccessibleContext().setAccessibleName(name);
        table.setTransferHandler(new CopyHandler(this::copied));
        table.getSelectionModel().addListSelectionListener(change -> {
            if (!change.getValueIsAdjusting() && !quiet) {
                tellSelection();
            }
        });
        new HeadSort(table, model, this::keepingSelection);
        JScrollPane scroll = new JScrollPane(table);
        scroll.setColumnHeaderView(table.getTableHeader());
        scroll.setBorder(BorderFactory.createEmptyBorder());
        sentence.setBorder(BorderFactory.createEmptyBorder(
                Metric.HALF_STEP.px(), Metric.STEP.px(), Metric.HALF_STEP.px(), Metric.STEP.px()));
        add(scroll, BorderLayout.CENTER);
        add(sentence, BorderLayout.SOUTH);
    }

    /** Shows rows; what was selected and still is there stays selected. */
    public void show(List<TableRow> rows) {
        if (table.isEditing()) {
            table.getCellEditor().cancelCellEditing();
        }
        keepingSelection(() -> model.show(rows));
    }

    /** Shows only rows that hold all these words; blank for all. */
    public void filter(String words) {
        keepingSelection(() -> model.filter(words));
    }

    /** How many rows are in sight of the filter. */
    public int shownRows() {
        return model.getRowCount();
    }

    /** How many rows there are. */
    public int allRows() {
        return model.allRows();
    }

    /** Rows 24 high in place of 28. */
    public void rows(Density density) {
        table.setRowHeight((density == Density.CLOSE ? Metric.CLOSE_ROW : Metric.ROW).px());
    }

    /** How high rows are. */
    public enum Density {
        NORMAL,
        CLOSE
    }

    /** The records selected, in the order of the rows. */
    public Set<RecordId> selected() {
        Set<RecordId> ids = new LinkedHashSet<>();
        for (int row : table.getSelectedRows()) {
            ids.add(model.rows().get(row).id());
        }
        return ids;
    }

    /** Selects these records, those of them that are shown, and brings the first into sight. */
    public void select(Set<RecordId> ids) {
        Set<RecordId> wanted = new HashSet<>(ids);
        quiet = true;
        table.clearSelection();
        int first = -1;
        for (int row = 0; row < model.getRowCount(); row++) {
            if (wanted.contains(model.rows().get(row).id())) {
                table.addRowSelectionInterval(row, row);
                first = first < 0 ? row : first;
            }
        }
        quiet = false;
        if (first >= 0) {
            table.scrollRectToVisible(table.getCellRect(first, 0, true));
        }
    }

    /** Told the selected records whenever the person at the table selects others. */
    public void onSelection(Consumer<Set<RecordId>> listener) {
        listeners.add(listener);
    }

    /** Told which record is opened, by Enter or a double click on a cell that cannot be edited. */
    public void onOpen(Consumer<RecordId> listener) {
        OpenKeys.bind(table, row -> listener.accept(model.rows().get(row).id()));
    }

    /** The table itself, for focus and keys. */
    public JTable table() {
        return table;
    }

    /** Shows these columns, by key. */
    public void columns(List<String> keys) {
        columns.show(keys);
    }

    private void tellSelection() {
        Set<RecordId> ids = selected();
        listeners.forEach(listener -> listener.accept(ids));
    }

    private void keepingSelection(Runnable change) {
        Set<RecordId> before = selected();
        quiet = true;
        change.run();
        quiet = false;
        int[] rows = java.util.stream.IntStream.range(0, model.getRowCount())
                .filter(row -> before.contains(model.rows().get(row).id()))
                .toArray();
        quiet = true;
        for (int row : rows) {
            table.addRowSelectionInterval(row, row);
        }
        quiet = false;
        if (rows.length != before.size()) {
            tellSelection();
        }
    }

    /** What is selected, or everything shown, as text. */
    String copied() {
        List<TableRow> rows = new ArrayList<>();
        for (int row : table.getSelectedRows()) {
            rows.add(model.rows().get(row));
        }
        return CopyText.of(model.columns(), columns.shownPositions(), rows.isEmpty() ? model.rows() : rows);
    }

    private CellEditor.Subject subject(int row, int column) {
        Component field = model.columns().get(column).field().orElseThrow();
        Entry record = bench.definition().get(model.rows().get(row).id()).orElseThrow();
        Shape<?> shape = Shape.of(record.getClass());
        String name = FieldWords.label(field) + ", " + record.id();
        return new CellEditor.Subject(
                notations.of(shape, field, record),
                ObjectEdit.value(record, List.of(field.name())),
                name,
                model.columns().get(column).kind());
    }

    private void commit(int row, int column, Optional<?> value) {
        Component field = model.columns().get(column).field().orElseThrow();
        Address record = Address.of(model.rows().get(row).id());
        bench.edit(
                Optional.empty(),
                definition -> ObjectEdit.with(definition, record, Map.of(field.name(), value)),
                invalid -> refused(invalid, field));
    }

    private void refused(Invalid invalid, Component field) {
        say(notations.words().refusal(invalid, FieldWords.label(field)));
    }

    private void say(String wrong) {
        sentence.say(wrong);
        revalidate();
    }

    String sentence() {
        return sentence.said();
    }

    RecordTableModel model() {
        return model;
    }
}
