package groupwright.workbench.table;

import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import java.awt.Component;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.SwingConstants;
import javax.swing.table.TableCellRenderer;

/** Sorts by a click on a head or F8 in the column in focus: rising, falling, as it came; the head says which. */
final class HeadSort {
    private final JTable table;
    private final RecordTableModel model;
    private final Consumer<Runnable> keepingSelection;

    HeadSort(JTable table, RecordTableModel model, Consumer<Runnable> keepingSelection) {
        this.table = table;
        this.model = model;
        this.keepingSelection = keepingSelection;
        table.getTableHeader().addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent click) {
                int column = table.columnAtPoint(click.getPoint());
                if (column >= 0 && click.getButton() == MouseEvent.BUTTON1) {
                    next(table.convertColumnIndexToModel(column));
                }
            }
        });
        table.getTableHeader().setDefaultRenderer(head(table.getTableHeader().getDefaultRenderer()));
        String key = "sort by column";
        table.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("F8"), key);
        table.getActionMap().put(key, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent pressed) {
                int column = table.getColumnModel().getSelectionModel().getLeadSelectionIndex();
                if (column >= 0 && column < table.getColumnCount()) {
                    next(table.convertColumnIndexToModel(column));
                }
            }
        });
    }

    /** Rising, then falling, then as the rows came. */
    void next(int column) {
        Optional<RowOrder.Sort> now = model.sort().filter(sort -> sort.column() == column);
        Optional<RowOrder.Sort> then;
        if (now.isEmpty()) {
            then = Optional.of(new RowOrder.Sort(column, RowOrder.Direction.RISING));
        } else if (now.get().direction() == RowOrder.Direction.RISING) {
            then = Optional.of(new RowOrder.Sort(column, RowOrder.Direction.FALLING));
        } else {
            then = Optional.empty();
        }
        keepingSelection.accept(() -> model.sort(then));
        table.getTableHeader().repaint();
    }

    private TableCellRenderer head(TableCellRenderer plain) {
        return (of, value, selected, focused, row, column) -> {
            Component head = plain.getTableCellRendererComponent(of, value, selected, focused, row, column);
            if (head instanceof JLabel label) {
                int at = of.convertColumnIndexToModel(column);
                TableColumn shown = model.columns().get(at);
                boolean number = shown.kind() == TableColumn.Kind.NUMBERS;
                label.setHorizontalAlignment(number ? SwingConstants.TRAILING : SwingConstants.LEADING);
                label.setFont(Type.SECONDARY.font(Weight.STRONG));
                if (number) { // above the numbers, not above their units
                    label.setBorder(BorderFactory.createCompoundBorder(
                            label.getBorder(), BorderFactory.createEmptyBorder(0, 0, 0, Metric.UNIT_COLUMN.px())));
                }
                label.setToolTipText(shown.help());
                label.setText(shown.head() + arrow(at));
            }
            return head;
        };
    }

    private String arrow(int column) {
        return model.sort()
                .filter(sort -> sort.column() == column)
                .map(sort -> sort.direction() == RowOrder.Direction.RISING ? " ↑" : " ↓")
                .orElse("");
    }
}
