package groupwright.workbench.requirements;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.record.Address;
import groupwright.definition.record.Need;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.components.ActionButton;
import groupwright.workbench.components.EmptyPlace;
import groupwright.workbench.components.Step;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import java.awt.BorderLayout;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSplitPane;

/** What stands in the middle of the window: head, filter, table, and the requirement in sight below it. */
final class RequirementsView extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final double TABLE_SHARE = 0.6;

    private final transient Bench bench;
    private final transient Words words;
    private final transient Consumer<Optional<RecordId>> inSight;
    private final JLabel summary = new JLabel();
    private final FilterBar filters;
    private final RowsPane rows;
    private final DetailPane detail;
    private final JPanel middle = new JPanel(new BorderLayout());
    private final JSplitPane split;
    private transient RequirementsSheet sheet = RequirementsSheet.NOTHING;
    private transient Optional<RecordId> shown = Optional.empty();
    private transient Optional<Address> wanted = Optional.empty();

    /** @param inSight told which requirement is to be read in full */
    RequirementsView(Bench bench, Catalogue catalogue, Consumer<Optional<RecordId>> inSight) {
        super(new BorderLayout());
        this.bench = bench;
        this.inSight = inSight;
        this.words = Words.of(RequirementsView.class, bench.locale());
        this.filters = new FilterBar(words, filter -> refresh());
        this.detail = new DetailPane(bench, catalogue, words, id -> reveal(Address.of(id)));
        this.rows = new RowsPane(bench, words, this::inSight, this::selected, this::act);
        this.split = new JSplitPane(JSplitPane.VERTICAL_SPLIT, rows, detail);
        setBackground(Token.SURFACE.colour());
        split.setResizeWeight(TABLE_SHARE);
        split.setBorder(BorderFactory.createEmptyBorder());
        split.setOpaque(false);
        middle.setOpaque(false);
        middle.add(split);
        JPanel top = new JPanel(new BorderLayout(0, Metric.HALF_STEP.px()));
        top.setOpaque(false);
        top.setBorder(BorderFactory.createEmptyBorder(Metric.STEP.px(), 0, Metric.STEP.px(), 0));
        top.add(head(), BorderLayout.NORTH);
        top.add(filters, BorderLayout.CENTER);
        add(top, BorderLayout.NORTH);
        add(middle, BorderLayout.CENTER);
        getAccessibleContext().setAccessibleName(words.text("title"));
    }

    private JComponent head() {
        JLabel title = new JLabel(words.text("title"));
        title.setFont(Type.TITLE.font(Weight.STRONG));
        summary.setFont(Type.TABLE.font(Weight.REGULAR));
        summary.setForeground(Token.MUTED.colour());
        summary.setMinimumSize(new java.awt.Dimension(0, 0));
        JPanel head = new JPanel(new BorderLayout(Metric.GAP.px(), 0));
        head.setOpaque(false);
        head.setBorder(BorderFactory.createEmptyBorder(0, Metric.GAP.px(), 0, Metric.GAP.px()));
        head.add(title, BorderLayout.LINE_START);
        head.add(summary, BorderLayout.CENTER);
        ActionButton add = ActionButton.main(words.text("add"), this::add);
        add.setName("requirements.add");
        head.add(add, BorderLayout.LINE_END);
        return head;
    }

    /** Shows all requirements as they stand now. */
    void show(RequirementsSheet next) {
        sheet = next;
        summary.setText(next.summary());
        summary.setToolTipText(next.summary());
        refresh();
        detail.refresh(); // may ask to see what was just added
        wanted.ifPresent(this::reveal);
    }

    /** Shows one requirement in full, if it is still the one in sight. */
    void show(Optional<Detail> next) {
        if (next.map(Detail::id).equals(shown)) {
            detail.show(next);
        }
    }

    private void refresh() {
        Since since = new Since(bench.recent());
        Listing listing = Listing.of(sheet, filters.filter(), since::any);
        filters.show(listing, sheet.riders());
        boolean nothing = sheet.listed().isEmpty() && detail.mode() != DetailPane.Mode.ADD;
        if (nothing) {
            put(padded(empty()));
        } else {
            rows.show(listing, since, sheet.lead().map(RecordId::text).orElse(""), none(listing));
            put(split);
        }
    }

    private void put(JComponent component) {
        if (middle.getComponent(0) != component) {
            middle.removeAll();
            middle.add(component);
            middle.revalidate();
            middle.repaint();
        }
    }

    private static JComponent padded(JComponent component) {
        JPanel panel = new JPanel(new BorderLayout());
        panel.setOpaque(false);
        panel.setBorder(
                BorderFactory.createEmptyBorder(Metric.GAP.px(), Metric.GAP.px(), Metric.GAP.px(), Metric.GAP.px()));
        panel.add(component);
        return panel;
    }

    private JComponent empty() {
        long needs = bench.definition().all(RecordKinds.NEED).stream()
                .filter(Need::isCurrent)
                .count();
        return new EmptyPlace(
                words.text("empty.what"),
                words.text(needs == 1 ? "empty.why.one" : "empty.why", Long.toString(needs)),
                Optional.of(new Step(words.text("add"), this::add)),
                Optional.empty());
    }

    /** What stands in place of the rows where the filter hides all. */
    private Optional<JComponent> none(Listing listing) {
        if (listing.shown() > 0) {
            return Optional.empty();
        }
        Filter filter = filters.filter();
        boolean narrowed = !filter.equals(Filter.NONE.with(filter.facet()).with(filter.sorting()));
        String key = narrowed ? "none.ALL" : "none." + filter.facet().name();
        return Optional.of(padded(new EmptyPlace(
                words.text(key, Integer.toString(listing.counts().get(Facet.ALL))),
                words.text("none.why"),
                Optional.empty(),
                Optional.of(new Step(words.text("none.showAll"), filters::clear)))));
    }

    private void selected(Listing.Line line) {
        line.row()
                .ask()
                .filter(ask -> !bench.selected().equals(Optional.of(ask)))
                .ifPresent(bench::select);
    }

    /** What came into sight by itself leaves Workings where it is, unless that is empty. */
    private void inSight(Listing.Line line) {
        if (bench.selected().isEmpty()) {
            line.row().ask().ifPresent(bench::select);
        }
        RecordId id = line.listed().id();
        if (!shown.equals(Optional.of(id))) {
            shown = Optional.of(id);
            inSight.accept(shown);
        }
    }

    /** Does what a row offers: the step of a note, else its form. */
    private void act(Listing.Line line) {
        if (line.row() instanceof Row.Note note && note.step() == Row.Step.CHOOSE_FIGURE) {
            detail.choose();
        } else if (line.row() instanceof Row.Note note) {
            Lifting.lift(bench, note, words);
        } else {
            detail.edit();
        }
    }

    private void add() {
        put(split);
        detail.add();
    }

    /** Selects a requirement, and opens its form where a field is named. */
    void reveal(Address address) {
        Optional<Listed> listed = sheet.listed().stream()
                .filter(one -> one.id().equals(address.record()))
                .findFirst();
        if (listed.isEmpty()) {
            wanted = Optional.of(address); // it comes with the next sheet
            return;
        }
        wanted = Optional.empty();
        if (!rows.has(address.record())) {
            filters.clear(listed.get());
        }
        rows.select(address.record());
        if (!address.path().isEmpty()) {
            detail.edit(address);
        }
    }

    FilterBar filters() {
        return filters;
    }

    RowsPane rows() {
        return rows;
    }

    DetailPane detail() {
        return detail;
    }

    List<Listing.Line> lines() {
        return rows.table().lines();
    }
}
