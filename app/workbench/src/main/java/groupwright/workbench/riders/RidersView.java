package groupwright.workbench.riders;

import groupwright.definition.record.Address;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.components.ActionButton;
import groupwright.workbench.components.ActionLink;
import groupwright.workbench.components.EmptyPlace;
import groupwright.workbench.components.Facet;
import groupwright.workbench.components.Facets;
import groupwright.workbench.components.LinkLabel;
import groupwright.workbench.components.Mark;
import groupwright.workbench.components.PaintedView;
import groupwright.workbench.components.Step;
import groupwright.workbench.lists.CellText;
import groupwright.workbench.lists.CellTextPainter;
import groupwright.workbench.lists.Line;
import groupwright.workbench.lists.ListAndDetail;
import groupwright.workbench.lists.ListRow;
import groupwright.workbench.lists.ListTable;
import groupwright.workbench.lists.PlaceHead;
import groupwright.workbench.lists.Stack;
import groupwright.workbench.lists.Wrapped;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Words;
import groupwright.workbench.riders.RidersSheet.Cell;
import groupwright.workbench.riders.RidersSheet.Rank;
import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** What stands in the middle of the window: groups side by side, needs below, and what is chosen. */
final class RidersView extends JPanel {
    private static final long serialVersionUID = 1L;

    /** What the place does when something is asked of it here. */
    interface Asked {
        void open(Address address);

        void addGroup();

        void addNeed();

        void commit(ValueCell cell, Optional<?> value);
    }

    private final transient Bench bench;
    private final transient Words words;
    private final transient Asked asked;
    private final PlaceHead head;
    private final PaintedView<List<RidersSheet.Group>> importance;
    private final RiderColumns columns;
    private final ActionLink all;
    private final Stack retired = new Stack(Metric.HALF_STEP.units());
    private final Facets facets;
    private final ListTable<NeedRow> needs;
    private final Stack content = new Stack(Metric.STEP.units());
    private final ListAndDetail middle = new ListAndDetail(content);
    private final JPanel body = new JPanel(new BorderLayout());
    private transient RidersSheet sheet = RidersSheet.NOTHING;
    private transient Function<Cell, String> was = cell -> "";
    private transient Rank rank = Rank.MAIN;
    private transient Optional<RecordId> selected = Optional.empty();
    private boolean hasDetail;

    RidersView(Bench bench, Words words, Asked asked) {
        super(new BorderLayout());
        this.bench = bench;
        this.words = words;
        this.asked = asked;
        setName("riders");
        getAccessibleContext().setAccessibleName(words.text("title"));
        head = new PlaceHead(words.text("title"), addNeed(), addGroup());
        importance = new PaintedView<>(new ImportancePainter(words), List.of());
        columns = new RiderColumns(words, asked::commit, asked::open);
        all = new ActionLink(words.text("all"), () -> showRank(rank == Rank.MAIN ? Rank.FURTHER : Rank.MAIN));
        all.setName("riders.all");
        facets = new Facets(facets(), 0, facet -> fillNeeds());
        needs = new ListTable<>(
                words.text("column.words"),
                new NeedColumns(bench, words).all(),
                row -> row.ifPresent(need -> asked.open(Address.of(need.id()))),
                need -> asked.open(Address.of(need.id())));
        needs.setName("riders.needs");
        body.setOpaque(false);
        add(head, BorderLayout.NORTH);
        add(body);
        arrange();
    }

    private ActionButton addNeed() {
        ActionButton button = ActionButton.plain(words.text("add.need"), asked::addNeed);
        button.setName("riders.addNeed");
        return button;
    }

    private ActionButton addGroup() {
        ActionButton button = ActionButton.main(words.text("add.group"), asked::addGroup);
        button.setName("riders.addGroup");
        return button;
    }

    private void arrange() {
        content.setBorder(BorderFactory.createEmptyBorder(0, Metric.STEP.px(), Metric.STEP.px(), Metric.GAP.px()));
        JPanel strip = new JPanel(new BorderLayout(Metric.WIDE_GAP.px(), 0));
        strip.setOpaque(false);
        strip.setBorder(BorderFactory.createEmptyBorder(0, Metric.STEP.px(), Metric.STEP.px(), 0));
        JComponent label = new PaintedView<>(
                CellTextPainter.PLAIN, CellText.plain(words.text("importance")).strong());
        label.setPreferredSize(new Dimension(
                Look.pixels(SharedRows.LABELS) - Metric.STEP.px() - Metric.WIDE_GAP.px(),
                label.getPreferredSize().height));
        strip.add(label, BorderLayout.LINE_START);
        strip.add(importance);
        content.add(strip);
        content.add(columns);
        content.add(new Line(0, all));
        content.add(retired);
        content.add(new Wrapped(facets));
        Stack list = new Stack(0);
        list.add(needs.getTableHeader());
        list.add(needs);
        content.add(list);
    }

    private List<Facet> facets() {
        List<Facet> found = new ArrayList<>();
        for (NeedFacet facet : NeedFacet.of(sheet)) {
            String word = facet instanceof NeedFacet.Of of ? of.group().text() : words.text("facet." + facet);
            int count = (int) sheet.needs().stream().filter(facet::holds).count();
            boolean marked = facet == NeedFacet.Plain.UNANSWERED;
            found.add(new Facet(word, count, marked ? Optional.of(Mark.MISSING) : Optional.empty()));
        }
        return found;
    }

    private void showRank(Rank next) {
        rank = next;
        content.revalidate();
        columns.show(sheet, rank, was);
    }

    /** Shows other groups and needs. */
    void show(RidersSheet next, Function<Cell, String> before) {
        boolean sameFacets = NeedFacet.of(next).equals(NeedFacet.of(sheet));
        sheet = next;
        was = before;
        head.about(words.text("subtitle", bench.definition().project().title()));
        importance.show(next.groups());
        columns.show(next, rank, was);
        facets.show(facets(), sameFacets ? facets.active() : 0);
        retired.removeAll();
        next.retired().forEach(group -> retired.add(retired(group)));
        fillNeeds();
        body.removeAll();
        body.add(next.isEmpty() && !hasDetail ? empty() : middle);
        body.revalidate();
        body.repaint();
    }

    private JComponent retired(RidersSheet.Retired group) {
        LinkLabel link = new LinkLabel(group.id() + " " + group.title(), () -> asked.open(Address.of(group.id())));
        link.setName("riders.retired." + group.id());
        return new Line(Metric.STEP.units(), text(words.text("retired")), link, text(group.reason()));
    }

    private static JComponent text(String text) {
        return new PaintedView<>(CellTextPainter.PLAIN, CellText.muted(text));
    }

    private JComponent empty() {
        JPanel panel = new JPanel(new BorderLayout());
        panel.setOpaque(false);
        panel.setBorder(BorderFactory.createEmptyBorder(Metric.GAP.px(), Metric.GAP.px(), 0, Metric.GAP.px()));
        panel.add(
                new EmptyPlace(
                        words.text("none.head"),
                        words.text("none.why", bench.definition().count(RecordKinds.REQUIREMENT)),
                        Optional.of(new Step(words.text("add.firstGroup"), asked::addGroup)),
                        Optional.of(new Step(words.text("add.need"), asked::addNeed))),
                BorderLayout.NORTH);
        return panel;
    }

    private void fillNeeds() {
        NeedFacet facet = NeedFacet.of(sheet).get(facets.active());
        List<ListRow<NeedRow>> rows = new ArrayList<>();
        sheet.needs().stream().filter(facet::holds).forEach(need -> rows.add(new ListRow.Item<>(need)));
        needs.show(rows, need -> selected.equals(Optional.of(need.id())));
        content.revalidate();
    }

    RiderColumns columns() {
        return columns;
    }

    /** Selects a need, whatever the facet. */
    void select(RecordId id) {
        selected = Optional.of(id);
        Optional<NeedRow> need =
                sheet.needs().stream().filter(row -> row.id().equals(id)).findFirst();
        NeedFacet facet = NeedFacet.of(sheet).get(facets.active());
        need.filter(row -> !facet.holds(row))
                .ifPresent(row ->
                        facets.choose(row.isCurrent() ? 0 : NeedFacet.of(sheet).size() - 1));
        needs.select(row -> row.id().equals(id));
    }

    void detail(JComponent next) {
        hasDetail = true;
        body.removeAll();
        body.add(middle);
        middle.detail(next);
        body.revalidate();
        validate(); // what is selected is brought into sight of the room that is left
        body.repaint();
    }

    void noDetail() {
        hasDetail = false;
        selected = Optional.empty();
        middle.noDetail();
        show(sheet, was);
    }

    /** Puts the value of a field into focus, with all fields shown where it needs them. */
    boolean focus(Address at) {
        if (columns.field(at).isEmpty()
                && sheet.lines().stream()
                        .flatMap(line -> line.cells().stream())
                        .anyMatch(cell -> cell.at().equals(at))) {
            showRank(Rank.FURTHER);
        }
        columns.field(at).ifPresent(ValueField::requestFocusInWindow);
        return columns.field(at).isPresent();
    }

    @Override
    public Color getBackground() {
        return words == null ? super.getBackground() : Token.SURFACE.colour();
    }
}
