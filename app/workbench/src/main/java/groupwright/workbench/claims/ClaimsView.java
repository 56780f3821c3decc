package groupwright.workbench.claims;

import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.components.ActionButton;
import groupwright.workbench.components.EmptyPlace;
import groupwright.workbench.components.Facet;
import groupwright.workbench.components.Facets;
import groupwright.workbench.components.Step;
import groupwright.workbench.lists.ListAndDetail;
import groupwright.workbench.lists.ListRow;
import groupwright.workbench.lists.ListTable;
import groupwright.workbench.lists.PlaceHead;
import groupwright.workbench.lists.Wrapped;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Words;
import java.awt.BorderLayout;
import java.awt.Color;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** What stands in the middle of the window: head, facets, the list, and what is chosen in it. */
final class ClaimsView extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Bench bench;
    private final transient Words words;
    private final transient Runnable add;
    private final PlaceHead head;
    /** A facet has room for its focus ring around its text. */
    private static final int INDENT = 13;

    private final Facets facets;
    private final ListTable<ClaimRow> table;
    private final ListAndDetail middle;
    private final JPanel body = new JPanel(new BorderLayout());
    private transient ClaimsSheet sheet = ClaimsSheet.NOTHING;
    private transient Optional<RecordId> selected = Optional.empty();

    ClaimsView(Bench bench, Words words, Consumer<Optional<RecordId>> chosen, Runnable add) {
        super(new BorderLayout());
        this.bench = bench;
        this.words = words;
        this.add = add;
        setName("claims");
        getAccessibleContext().setAccessibleName(words.text("title"));
        ActionButton button = ActionButton.main(words.text("add"), add);
        button.setName("claims.add");
        head = new PlaceHead(words.text("title"), button);
        facets = new Facets(facets(), 0, facet -> fill());
        table = new ListTable<>(
                words.text("title"),
                new ClaimColumns(bench, words).all(),
                row -> {
                    selected = row.map(ClaimRow::id);
                    chosen.accept(selected);
                },
                row -> chosen.accept(Optional.of(row.id())));
        table.setName("claims.list");
        middle = new ListAndDetail(table);
        body.setOpaque(false);
        add(head, BorderLayout.NORTH);
        add(body);
        fill();
    }

    private List<Facet> facets() {
        Map<ClaimGroup, Integer> counts = sheet.counts();
        List<Facet> found = new ArrayList<>();
        int all = sheet.rows().size() - counts.get(ClaimGroup.RETIRED);
        found.add(new Facet(words.text("facet.ALL"), all, Optional.empty()));
        for (ClaimGroup group : ClaimGroup.values()) {
            found.add(new Facet(words.text("group." + group.name()), counts.get(group), group.mark()));
        }
        return found;
    }

    /** Shows other claims. */
    void show(ClaimsSheet next, Optional<RecordId> chosen) {
        sheet = next;
        selected = chosen;
        facets.show(facets(), facets.active());
        fill();
    }

    private List<ClaimGroup> shown() {
        return facets.active() == 0
                ? Arrays.stream(ClaimGroup.values())
                        .filter(group -> group != ClaimGroup.RETIRED)
                        .toList()
                : List.of(ClaimGroup.values()[facets.active() - 1]);
    }

    private void fill() {
        int count = sheet.counts().values().stream().mapToInt(Integer::intValue).sum();
        head.about(words.text(
                "subtitle",
                facets().get(0).count(),
                bench.definition().project().title()));
        List<ListRow<ClaimRow>> rows = new ArrayList<>();
        for (ClaimGroup group : shown()) {
            List<ClaimRow> own = sheet.of(group);
            if (!own.isEmpty()) {
                rows.add(new ListRow.Head<>(
                        group.mark(), words.text("group." + group.name()), words.text("about." + group.name())));
                own.forEach(row -> rows.add(new ListRow.Item<>(row)));
            }
        }
        table.show(rows, row -> selected.equals(Optional.of(row.id())));
        body.removeAll();
        if (count == 0) {
            body.add(empty());
        } else {
            body.add(facetsRow(), BorderLayout.NORTH);
            body.add(rows.isEmpty() ? none(count) : middle);
        }
        body.revalidate();
        body.repaint();
    }

    private JComponent facetsRow() {
        Wrapped row = new Wrapped(facets);
        row.setBorder(BorderFactory.createEmptyBorder(0, Look.pixels(INDENT), Metric.HALF_STEP.px(), Metric.STEP.px()));
        return row;
    }

    private JComponent padded(JComponent inside) {
        JPanel panel = new JPanel(new BorderLayout());
        panel.setOpaque(false);
        panel.setBorder(BorderFactory.createEmptyBorder(Metric.GAP.px(), Metric.GAP.px(), 0, Metric.GAP.px()));
        panel.add(inside, BorderLayout.NORTH);
        return panel;
    }

    private JComponent empty() {
        int requirements = bench.definition().count(RecordKinds.REQUIREMENT);
        return padded(new EmptyPlace(
                words.text("none.head"),
                words.text("none.why", requirements),
                Optional.of(new Step(words.text("add"), add)),
                Optional.empty()));
    }

    private JComponent none(int count) {
        return padded(new EmptyPlace(
                words.text("none.of", count),
                words.text("about." + shown().get(0).name()),
                Optional.empty(),
                Optional.of(new Step(words.text("none.show"), () -> facets.choose(0)))));
    }

    /** Selects a claim and brings it into sight, whatever the facet. */
    void reveal(RecordId id) {
        selected = Optional.of(id);
        if (sheet.rows().stream().filter(row -> row.id().equals(id)).anyMatch(row -> !shown().contains(row.group()))) {
            boolean retired = sheet.of(ClaimGroup.RETIRED).stream()
                    .anyMatch(row -> row.id().equals(id));
            facets.choose(retired ? 1 + ClaimGroup.RETIRED.ordinal() : 0);
        }
        table.select(row -> row.id().equals(id));
    }

    /** Shows something below the list. */
    void detail(JComponent next) {
        if (body.getComponentCount() == 1) { // nothing but the empty place: what is added takes its room
            body.removeAll();
            body.add(middle);
        }
        middle.detail(next);
        revalidate();
        repaint();
    }

    void noDetail() {
        selected = Optional.empty();
        middle.noDetail();
        fill();
    }

    @Override
    public Color getBackground() {
        return words == null ? super.getBackground() : Token.SURFACE.colour();
    }
}
