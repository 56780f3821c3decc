package groupwright.workbench.records;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.record.Address;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKind;
import groupwright.documents.charts.ChartTable;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.components.ActionLink;
import groupwright.workbench.form.Arrangement;
import groupwright.workbench.form.NewRecordForm;
import groupwright.workbench.form.RecordActions;
import groupwright.workbench.form.RecordForm;
import groupwright.workbench.lists.Keys;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import groupwright.workbench.workings.SubjectWords;
import java.awt.BorderLayout;
import java.util.Map;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.table.DefaultTableModel;

/** Below what is compared: all fields of one record with what can be done with it, a new record, or a chart's numbers. */
public final class SidePane extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Bench bench;
    private final transient Catalogue catalogue;
    private final transient RecordKind<?> kind;
    private final transient Words words;
    private final transient Runnable changed;
    private final JLabel title = new JLabel();
    private final JPanel actions = clear();
    private final JPanel note = clear();
    private final JPanel middle = clear();
    private transient Optional<RecordForm> form = Optional.empty();
    private transient Optional<RecordActions> acting = Optional.empty();
    private transient Optional<NewRecordForm> adding = Optional.empty();

    /**
     * A pane.
     *
     * @param kind of the records it shows
     * @param words with {@code pane.close} and {@code add}
     * @param changed called when the pane opens or closes
     */
    public SidePane(Bench bench, Catalogue catalogue, RecordKind<?> kind, Words words, Runnable changed) {
        super(new BorderLayout(0, Metric.HALF_STEP.px()));
        this.bench = bench;
        this.catalogue = catalogue;
        this.kind = kind;
        this.words = words;
        this.changed = changed;
        setOpaque(false);
        setBorder(BorderFactory.createEmptyBorder(Metric.STEP.px(), Metric.GAP.px(), 0, Metric.GAP.px()));
        title.setFont(Type.HEADING.font(Weight.STRONG));
        ActionLink close = new ActionLink(words.text("pane.close"), this::close);
        close.setName("close");
        JPanel head = clear();
        head.add(title, BorderLayout.LINE_START);
        head.add(actions, BorderLayout.CENTER);
        head.add(close, BorderLayout.LINE_END);
        head.add(note, BorderLayout.SOUTH);
        add(head, BorderLayout.NORTH);
        add(middle, BorderLayout.CENTER);
        Keys.bindInside(this, "ESCAPE", this::close);
    }

    private static JPanel clear() {
        JPanel panel = new JPanel(new BorderLayout(Metric.GAP.px(), 0));
        panel.setOpaque(false);
        return panel;
    }

    /** The record whose fields are shown. */
    public Optional<RecordId> shows() {
        return form.flatMap(RecordForm::shown);
    }

    public boolean isOpen() {
        return middle.getComponentCount() > 0;
    }

    /** Says something above the fields; nothing takes it away. */
    public void note(Optional<? extends JComponent> says) {
        note.removeAll();
        says.ifPresent(component -> note.add(component));
        note.revalidate();
        note.repaint();
    }

    private void put(String head, Optional<? extends JComponent> beside, JComponent shown) {
        form = Optional.empty();
        acting = Optional.empty();
        adding = Optional.empty();
        title.setText(head);
        note.removeAll();
        actions.removeAll();
        beside.ifPresent(component -> actions.add(component));
        middle.removeAll();
        middle.add(shown);
        changed.run();
        revalidate();
        repaint();
    }

    private static JScrollPane scrolled(JComponent shown) {
        JScrollPane pane = new JScrollPane(shown);
        pane.setBorder(BorderFactory.createEmptyBorder());
        pane.getViewport().setOpaque(false);
        pane.setOpaque(false);
        pane.getVerticalScrollBar().setUnitIncrement(Metric.CLOSE_ROW.px());
        return pane;
    }

    /** Closes it. */
    public void close() {
        middle.removeAll();
        form = Optional.empty();
        acting = Optional.empty();
        adding = Optional.empty();
        changed.run();
    }

    /** All fields of a record. */
    public void showForm(RecordId record) {
        if (form.flatMap(RecordForm::shown).equals(Optional.of(record))) {
            return;
        }
        RecordForm fields = new RecordForm(bench, catalogue, Arrangement.usual());
        RecordActions acts = new RecordActions(bench);
        fields.show(record);
        acts.show(record);
        put(SubjectWords.named(bench.definition(), record), Optional.of(acts), scrolled(fields));
        form = Optional.of(fields);
        acting = Optional.of(acts);
    }

    /** A field of a record. */
    public void reveal(Address address) {
        showForm(address.record());
        form.ifPresent(fields -> fields.reveal(address));
    }

    /** A record that is to be added. */
    public void add() {
        NewRecordForm draft = new NewRecordForm(bench, catalogue, kind, Map.of(), this::showForm, this::close);
        put(words.text("add"), Optional.empty(), scrolled(draft));
        adding = Optional.of(draft);
        draft.focusFirst();
    }

    /** The numbers of a chart. */
    public void showTable(String name, ChartTable numbers) {
        DefaultTableModel model = new DefaultTableModel(numbers.heads().toArray(), 0) {
            private static final long serialVersionUID = 1L;

            @Override
            public boolean isCellEditable(int row, int column) {
                return false;
            }
        };
        numbers.rows().forEach(row -> model.addRow(row.toArray()));
        JTable table = new JTable(model);
        table.setName("numbers");
        table.setFont(Type.TABLE.font(Weight.REGULAR));
        table.setBackground(Token.RAISED.colour());
        table.getAccessibleContext().setAccessibleName(name);
        JScrollPane pane = scrolled(table);
        pane.setColumnHeaderView(table.getTableHeader());
        put(name, Optional.empty(), pane);
        table.requestFocusInWindow();
    }

    /** After each step. */
    public void refresh() {
        adding.ifPresent(NewRecordForm::refresh);
        acting.ifPresent(RecordActions::refresh);
        form.ifPresent(fields -> {
            fields.refresh();
            fields.shown()
                    .ifPresentOrElse(
                            id -> {
                                if (bench.definition().get(id).isPresent()) {
                                    title.setText(SubjectWords.named(bench.definition(), id));
                                } else {
                                    close();
                                }
                            },
                            this::close);
        });
    }
}
