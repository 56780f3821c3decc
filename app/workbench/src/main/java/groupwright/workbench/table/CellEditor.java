package groupwright.workbench.table;

import groupwright.workbench.look.Metric;
import groupwright.workbench.notation.Notation;
import groupwright.workbench.notation.Typed;
import java.awt.Component;
import java.util.EventObject;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.AbstractCellEditor;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.table.TableCellEditor;

/** Edits one field in its cell; what is typed wrong stays, with its sentence, until it is mended or given up by Escape. */
final class CellEditor extends AbstractCellEditor implements TableCellEditor {
    private static final long serialVersionUID = 1L;

    /** What a cell is edited with. */
    record Subject(Notation notation, Optional<?> value, String name, TableColumn.Kind kind) {}

    /** Which field stands in a cell. */
    interface Subjects {
        Subject at(int row, int column);
    }

    /** Takes a new value for a cell. */
    interface Commit {
        void commit(int row, int column, Optional<?> value);
    }

    private final JTextField field = new JTextField();
    private final transient Subjects subjects;
    private final transient Commit commit;
    private final transient Consumer<String> say;
    private transient Optional<Subject> subject = Optional.empty();
    private int row;
    private int column;

    CellEditor(Subjects subjects, Commit commit, Consumer<String> say) {
        this.subjects = subjects;
        this.commit = commit;
        this.say = say;
        field.putClientProperty("FlatLaf.style", "font: $medium.font");
        field.setMargin(new java.awt.Insets(0, Metric.HALF_STEP.units(), 0, Metric.HALF_STEP.units()));
        field.addActionListener(entered -> stopCellEditing());
    }

    @Override
    public Component getTableCellEditorComponent(
            JTable table, Object value, boolean selected, int atRow, int atColumn) {
        row = atRow;
        column = table.convertColumnIndexToModel(atColumn);
        Subject at = subjects.at(row, column);
        subject = Optional.of(at);
        field.setHorizontalAlignment(at.kind() == TableColumn.Kind.NUMBERS ? JTextField.TRAILING : JTextField.LEADING);
        field.setText(at.notation().shown(at.value()));
        field.selectAll();
        field.getAccessibleContext().setAccessibleName(at.name());
        say.accept("");
        return field;
    }

    JTextField field() {
        return field;
    }

    @Override
    public Object getCellEditorValue() {
        return field.getText();
    }

    /** A second click, F2 or typing; one click only selects. */
    @Override
    public boolean isCellEditable(EventObject event) {
        return !(event instanceof java.awt.event.MouseEvent mouse) || mouse.getClickCount() >= 2;
    }

    @Override
    public boolean stopCellEditing() {
        Subject at = subject.orElseThrow();
        if (field.getText().equals(at.notation().shown(at.value()))) {
            cancelCellEditing();
            return true;
        }
        Typed typed = at.notation().read(field.getText());
        if (typed instanceof Typed.Refused refused) {
            say.accept(refused.sentence());
            field.getAccessibleContext().setAccessibleDescription(refused.sentence());
            field.putClientProperty("JComponent.outline", "error");
            return false;
        }
        Optional<?> value = ((Typed.Value) typed).value();
        cancelCellEditing(); // the value comes back with the next rows
        if (!value.equals(at.value())) {
            commit.commit(row, column, value);
        }
        return true;
    }

    @Override
    public void cancelCellEditing() {
        field.putClientProperty("JComponent.outline", null);
        say.accept("");
        super.cancelCellEditing();
    }
}
