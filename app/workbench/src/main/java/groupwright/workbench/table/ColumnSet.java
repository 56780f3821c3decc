package groupwright.workbench.table;

import groupwright.workbench.look.Look;
import groupwright.workbench.look.Words;
import java.awt.event.ActionEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.swing.AbstractAction;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JComponent;
import javax.swing.JPopupMenu;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.table.TableColumnModel;

/** Which columns are shown; a menu on the heads (or Shift+F10 in the table) chooses among all there are. */
final class ColumnSet {
    private final JTable table;
    private final RecordTableModel model;
    private final CellEditor editor;
    private final Words words;

    ColumnSet(JTable table, RecordTableModel model, CellEditor editor, Locale locale) {
        this.table = table;
        this.model = model;
        this.editor = editor;
        this.words = Words.of(ColumnSet.class, locale);
        table.setAutoCreateColumnsFromModel(false);
        table.getTableHeader().setComponentPopupMenu(new JPopupMenu() {
            private static final long serialVersionUID = 1L;

            @Override
            public void show(java.awt.Component invoker, int x, int y) {
                chooser().show(invoker, x, y);
            }
        });
        String key = "choose columns";
        table.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("shift F10"), key);
        table.getActionMap().put(key, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent pressed) {
                chooser().show(table, 0, 0);
            }
        });
    }

    /** A menu of all columns. */
    JPopupMenu chooser() {
        JPopupMenu menu = new JPopupMenu(words.text("columns"));
        List<String> shown = keys();
        for (TableColumn column : model.columns()) {
            JCheckBoxMenuItem item = new JCheckBoxMenuItem(column.head(), shown.contains(column.key()));
            item.setToolTipText(column.help());
            item.addActionListener(chosen -> toggle(column.key()));
            menu.add(item);
        }
        return menu;
    }

    /** Shows a column at the end, or no more; the last one stays. */
    void toggle(String key) {
        List<String> keys = new ArrayList<>(keys());
        if (!keys.remove(key)) {
            keys.add(key);
        }
        if (!keys.isEmpty()) {
            show(keys);
        }
    }

    private List<String> keys() {
        return shownPositions().stream()
                .map(at -> model.columns().get(at).key())
                .toList();
    }

    /** Positions among all columns, in their order on the screen. */
    List<Integer> shownPositions() {
        List<Integer> positions = new ArrayList<>();
        TableColumnModel shown = table.getColumnModel();
        for (int i = 0; i < shown.getColumnCount(); i++) {
            positions.add(shown.getColumn(i).getModelIndex());
        }
        return positions;
    }

    void show(List<String> keys) {
        if (table.isEditing()) {
            table.getCellEditor().cancelCellEditing();
        }
        TableColumnModel shown = table.getColumnModel();
        while (shown.getColumnCount() > 0) {
            shown.removeColumn(shown.getColumn(0));
        }
        for (String key : keys) {
            shown.addColumn(column(position(key)));
        }
    }

    private int position(String key) {
        for (int i = 0; i < model.columns().size(); i++) {
            if (model.columns().get(i).key().equals(key)) {
                return i;
            }
        }
        throw new IllegalArgumentException("there is no column " + key);
    }

    private javax.swing.table.TableColumn column(int position) {
        TableColumn described = model.columns().get(position);
        javax.swing.table.TableColumn column =
                new javax.swing.table.TableColumn(position, Look.pixels(described.width()));
        column.setIdentifier(described.key());
        column.setHeaderValue(described.head());
        column.setCellRenderer(described.renderer().orElseGet(() -> new TextCell(described.kind())));
        column.setCellEditor(editor);
        return column;
    }
}
