package groupwright.workbench.records;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.record.Address;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKind;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.bench.PlaceName;
import groupwright.workbench.components.ActionButton;
import groupwright.workbench.components.EmptyPlace;
import groupwright.workbench.components.Facet;
import groupwright.workbench.components.Facets;
import groupwright.workbench.components.Prose;
import groupwright.workbench.components.Step;
import groupwright.workbench.form.Arrangement;
import groupwright.workbench.form.NewRecordForm;
import groupwright.workbench.form.RecordActions;
import groupwright.workbench.form.RecordForm;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import groupwright.workbench.notation.Notations;
import groupwright.workbench.table.RecordTable;
import groupwright.workbench.table.TableColumn;
import groupwright.workbench.table.TableRow;
import groupwright.workbench.workings.EndsLayout;
import java.awt.BorderLayout;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;

/** The list above, the form of the selected record below. */
final class RecordsPanel extends JPanel {
    /** A kind with all its columns. */
    record Listed(RecordsPlace.Shown shown, List<TableColumn> columns) {}

    private final transient Bench bench;
    private final transient Catalogue catalogue;
    private final transient Words words;
    private final transient List<Listed> kinds;
    private final transient List<RecordTable> tables = new ArrayList<>();
    private final JPanel head = new JPanel(new EndsLayout(Metric.STEP.px(), Metric.TOP_BAR.px()));
    private final Facets facets;
    private final JPanel list = new JPanel(new BorderLayout());
    private final JPanel detail = new JPanel(new BorderLayout());
    private final JSplitPane split = new JSplitPane(JSplitPane.VERTICAL_SPLIT, list, detail);
    private final RecordForm form;
    private final RecordActions actions;
    private final String title;
    private transient List<List<TableRow>> rows = List.of();
    private transient Optional<NewRecordForm> adding = Optional.empty();
    private transient Optional<RecordId> wanted = Optional.empty();
    private int active;

    RecordsPanel(
            Bench bench, Catalogue catalogue, Notations notations, Words words, PlaceName place, List<Listed> kinds) {
        super(new BorderLayout());
        this.bench = bench;
        this.catalogue = catalogue;
        this.words = words;
        this.kinds = List.copyOf(kinds);
        this.title = words.text("place." + place);
        this.form = new RecordForm(bench, catalogue, Arrangement.usual());
        this.actions = new RecordActions(bench);
        setName("records." + place);
        for (Listed listed : kinds) {
            RecordTable table = new RecordTable(
                    bench, notations, listed.columns(), listed.shown().columns(), plural(listed));
            table.onSelection(this::selected);
            tables.add(table);
        }
        this.facets = new Facets(facets(), 0, this::choose);
        build();
    }

    private String plural(Listed listed) {
        return words.text("kind." + listed.shown().kind().letters());
    }

    private List<Facet> facets() {
        List<Facet> found = new ArrayList<>();
        for (int i = 0; i < kinds.size(); i++) {
            int count = i < rows.size() ? rows.get(i).size() : 0;
            found.add(new Facet(plural(kinds.get(i)), count, Optional.empty()));
        }
        return found;
    }

    private void build() {
        head.setOpaque(false);
        list.setOpaque(false);
        detail.setOpaque(false);
        detail.setBorder(
                BorderFactory.createEmptyBorder(Metric.STEP.px(), Metric.GAP.px(), Metric.STEP.px(), Metric.GAP.px()));
        split.setBorder(BorderFactory.createEmptyBorder());
        split.setOpaque(false);
        split.setResizeWeight(0.5);
        JPanel top = new JPanel(new BorderLayout());
        top.setOpaque(false);
        top.setBorder(BorderFactory.createEmptyBorder(0, Metric.GAP.px(), Metric.HALF_STEP.px(), Metric.GAP.px()));
        top.add(head, BorderLayout.NORTH);
        if (kinds.size() > 1) {
            top.add(facets, BorderLayout.SOUTH);
        }
        add(top, BorderLayout.NORTH);
        add(split, BorderLayout.CENTER);
        showHead();
        showList();
        showDetail(Optional.empty());
    }

    private RecordKind<?> kind() {
        return kinds.get(active).shown().kind();
    }

    private void showHead() {
        head.removeAll();
        head.add(new Prose(title, Type.TITLE, Weight.STRONG, Token.INK));
        ActionButton add = ActionButton.main(words.text("add", kind().noun()), this::add);
        add.setName("records.add");
        head.add(add);
        head.revalidate();
        head.repaint();
    }

    private void choose(int index) {
        active = index;
        adding = Optional.empty();
        showHead();
        showList();
        showDetail(Optional.empty());
    }

    /** Shows what was read. */
    void show(List<List<TableRow>> read) {
        rows = read;
        facets.show(facets(), active);
        for (int i = 0; i < tables.size(); i++) {
            tables.get(i).show(read.get(i));
        }
        showList();
        adding.ifPresent(NewRecordForm::refresh);
        form.refresh();
        actions.refresh();
        wanted.ifPresent(id -> {
            wanted = Optional.empty();
            select(id);
        });
    }

    private void showList() {
        boolean empty = active < rows.size() && rows.get(active).isEmpty();
        if (!empty && tables.get(active).getParent() == list) {
            return;
        }
        list.removeAll();
        list.add(empty ? emptyPlace() : tables.get(active));
        list.revalidate();
        list.repaint();
    }

    private JComponent emptyPlace() {
        EmptyPlace place = new EmptyPlace(
                words.text("empty", plural(kinds.get(active)).toLowerCase(words.locale())),
                words.text("empty.why." + kind().letters()),
                Optional.of(new Step(words.text("add", kind().noun()), this::add)),
                Optional.empty());
        place.setBorder(BorderFactory.createEmptyBorder(
                Metric.WIDE_GAP.px(), Metric.GAP.px(), Metric.WIDE_GAP.px(), Metric.GAP.px()));
        return place;
    }

    private void selected(Set<RecordId> ids) {
        if (adding.isEmpty()) {
            showDetail(ids.stream().findFirst());
        }
    }

    private void showDetail(Optional<RecordId> id) {
        detail.removeAll();
        id.ifPresent(record -> {
            form.show(record);
            actions.show(record);
            detail.add(scrolled(form), BorderLayout.CENTER);
            detail.add(actions, BorderLayout.SOUTH);
        });
        if (id.isEmpty()) {
            detail.add(new Prose(words.text("select"), Type.TABLE, Token.MUTED), BorderLayout.NORTH);
        }
        detail.revalidate();
        detail.repaint();
    }

    private static JComponent scrolled(JComponent inner) {
        JScrollPane scroll = new JScrollPane(inner);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setOpaque(false);
        scroll.getViewport().setOpaque(false);
        scroll.getVerticalScrollBar().setUnitIncrement(Metric.ROW.px());
        return scroll;
    }

    private void add() {
        NewRecordForm next = new NewRecordForm(bench, catalogue, kind(), Map.of(), this::added, this::discard);
        adding = Optional.of(next);
        detail.removeAll();
        detail.add(scrolled(next));
        detail.revalidate();
        detail.repaint();
        next.focusFirst();
    }

    private void added(RecordId id) {
        adding = Optional.empty();
        select(id);
    }

    private void discard() {
        adding = Optional.empty();
        showDetail(tables.get(active).selected().stream().findFirst());
    }

    private void select(RecordId id) {
        tables.get(active).select(Set.of(id));
        showDetail(Optional.of(id));
    }

    /** Shows a record, and gives a field of it the focus. */
    void reveal(Address address) {
        for (int i = 0; i < kinds.size(); i++) {
            if (address.record().hasLetters(kinds.get(i).shown().kind().letters())) {
                facets.show(facets(), i);
                choose(i);
            }
        }
        if (rows.isEmpty()) {
            wanted = Optional.of(address.record());
        } else {
            select(address.record());
        }
        form.reveal(address);
    }

    @Override
    public Color getBackground() {
        return words == null ? super.getBackground() : Token.SURFACE.colour();
    }
}
