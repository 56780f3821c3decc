package groupwright.workbench.ripple;

import groupwright.definition.figure.Ask;
import groupwright.definition.record.Address;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Words;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.table.AbstractTableModel;

/** Everything a step changed, before and after. Enter or a double click goes there. */
final class RippleTable extends JTable {
    private final transient List<RippleSheet.Row> rows;
    private final transient Consumer<Address> open;
    private final transient Consumer<Ask> select;

    RippleTable(RippleSheet sheet, Words words, Consumer<Address> open, Consumer<Ask> select) {
        super(new Model(sheet.rows(), words));
        this.rows = sheet.rows();
        this.open = open;
        this.select = select;
        setName("ripple.rows");
        setRowHeight(Metric.ROW.px());
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        getAccessibleContext().setAccessibleName(words.text("showAll"));
        getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("ENTER"), "go");
        getActionMap().put("go", new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                go();
            }
        });
        addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                if (event.getClickCount() == 2) {
                    go();
                }
            }
        });
    }

    private void go() {
        int row = getSelectedRow();
        if (row >= 0) {
            RippleSheet.Row chosen = rows.get(convertRowIndexToModel(row));
            chosen.ask()
                    .filter(ask -> chosen.section() == RippleSheet.Section.FIGURES)
                    .ifPresentOrElse(select, () -> chosen.leadsTo().ifPresent(open));
        }
    }

    private static final class Model extends AbstractTableModel {
        private final transient List<RippleSheet.Row> rows;
        private final transient Words words;

        Model(List<RippleSheet.Row> rows, Words words) {
            this.rows = rows;
            this.words = words;
        }

        @Override
        public int getRowCount() {
            return rows.size();
        }

        @Override
        public int getColumnCount() {
            return 4;
        }

        @Override
        public String getColumnName(int column) {
            return switch (column) {
                case 0 -> "";
                case 1 -> words.text("head.what");
                case 2 -> words.text("head.before");
                default -> words.text("head.after");
            };
        }

        @Override
        public Object getValueAt(int index, int column) {
            RippleSheet.Row row = rows.get(index);
            return switch (column) {
                case 0 -> words.text("section." + row.section());
                case 1 -> row.what();
                case 2 -> row.before();
                default -> row.after();
            };
        }
    }
}
