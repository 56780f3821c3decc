package groupwright.workbench.table;

import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.function.IntConsumer;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.KeyStroke;

/** Enter opens the row in focus, F2 edits the cell; a double click opens where nothing can be edited. */
final class OpenKeys {
    private OpenKeys() {}

    static void bind(JTable table, IntConsumer open) {
        table.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("ENTER"), "open");
        table.getActionMap().put("open", new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent pressed) {
                int row = table.getSelectionModel().getLeadSelectionIndex();
                if (!table.isEditing() && row >= 0 && row < table.getRowCount()) {
                    open.accept(row);
                }
            }
        });
        table.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent click) {
                int row = table.rowAtPoint(click.getPoint());
                if (click.getClickCount() == 2 && row >= 0 && !table.isEditing()) {
                    open.accept(row);
                }
            }
        });
    }
}
