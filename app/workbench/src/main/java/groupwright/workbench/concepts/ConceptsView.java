package groupwright.workbench.concepts;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.problem.Problem;
import groupwright.definition.record.Address;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.Lifecycle;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.Requirement;
import groupwright.documents.charts.ChartTable;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.components.ActionButton;
import groupwright.workbench.components.EmptyPlace;
import groupwright.workbench.components.Facet;
import groupwright.workbench.components.Facets;
import groupwright.workbench.components.Step;
import groupwright.workbench.lists.Sideways;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import groupwright.workbench.records.SidePane;
import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;

/** What stands in the middle of the window: ladder, steps and figures of all concepts, and below them what was opened. */
final class ConceptsView extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final double UPPER_SHARE = 0.6;

    private final transient Bench bench;
    private final transient Words words;
    private final transient Consumer<Shown> chosen;
    private final JLabel summary = new JLabel();
    private final JPanel copying = clear(new BorderLayout());
    private final JPanel facetLine = clear(new BorderLayout());
    private transient Optional<Facets> facets = Optional.empty();
    private final LadderPanel ladder;
    private final PanelsRow panels = new PanelsRow();
    private final Comparison comparison;
    private final Page page = new Page(Metric.STEP.units());
    private final JScrollPane scrolled = new JScrollPane(page);
    private final JPanel middle = clear(new BorderLayout());
    private final SidePane side;
    private final transient Map<RecordId, ConceptPanel> shown = new LinkedHashMap<>();
    private transient Optional<ConceptsSheet> sheet = Optional.empty();

    /**
     * A view.
     *
     * @param riders told whose wheel is wanted
     * @param chosen told which concepts are wanted
     */
    ConceptsView(Bench bench, Catalogue catalogue, Consumer<RecordId> riders, Consumer<Shown> chosen) {
        super(new BorderLayout());
        this.bench = bench;
        this.words = Words.of(ConceptsView.class, bench.locale());
        this.chosen = chosen;
        this.side = new SidePane(bench, catalogue, RecordKinds.CONCEPT, words, this::arrange);
        this.ladder = new LadderPanel(bench, words, riders, table -> table(words.text("ladder.title"), table));
        this.comparison = new Comparison(bench, words);
        setBackground(Token.SURFACE.colour());
        page.add(padded(ladder));
        page.add(padded(new Sideways(panels)));
        page.add(comparison);
        scrolled.setBorder(BorderFactory.createEmptyBorder());
        scrolled.setOpaque(false);
        scrolled.getViewport().setOpaque(false);
        scrolled.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        add(head(), BorderLayout.NORTH);
        add(middle, BorderLayout.CENTER);
        getAccessibleContext().setAccessibleName(words.text("title"));
    }

    private static JPanel clear(java.awt.LayoutManager layout) {
        JPanel panel = new JPanel(layout);
        panel.setOpaque(false);
        return panel;
    }

    private static JComponent padded(JComponent shown) {
        JPanel panel = clear(new BorderLayout());
        panel.setBorder(BorderFactory.createEmptyBorder(0, Metric.GAP.px(), 0, Metric.GAP.px()));
        panel.add(shown);
        return panel;
    }

    private JComponent head() {
        JLabel title = new JLabel(words.text("title"));
        title.setFont(Type.TITLE.font(Weight.STRONG));
        summary.setFont(Type.TABLE.font(Weight.REGULAR));
        summary.setForeground(Token.MUTED.colour());
        summary.setMinimumSize(new java.awt.Dimension(0, 0));
        JPanel buttons = clear(new FlowLayout(FlowLayout.TRAILING, Metric.STEP.px(), 0));
        buttons.add(copying);
        buttons.add(ActionButton.main(words.text("add"), side::add));
        JPanel line = clear(new BorderLayout(Metric.GAP.px(), 0));
        line.add(title, BorderLayout.LINE_START);
        line.add(summary, BorderLayout.CENTER);
        line.add(buttons, BorderLayout.LINE_END);
        JPanel head = clear(new BorderLayout(0, Metric.HALF_STEP.px()));
        head.setBorder(
                BorderFactory.createEmptyBorder(Metric.STEP.px(), Metric.GAP.px(), Metric.STEP.px(), Metric.GAP.px()));
        head.add(line, BorderLayout.NORTH);
        JPanel choices = clear(new BesideOrBelow(Metric.HALF_STEP.units()));
        choices.add(facetLine);
        choices.add(ladder.above());
        JPanel both = clear(new Stack(0));
        both.add(choices);
        head.add(both, BorderLayout.CENTER);
        return head;
    }

    /** Shows the concepts as they stand now. */
    void show(ConceptsSheet next) {
        sheet = Optional.of(next);
        summary.setText(next.summary());
        summary.setToolTipText(next.summary());
        showFacets(next);
        showCopying(next);
        side.refresh();
        if (!next.concepts().isEmpty()) {
            ladder.show(next);
            showPanels(next);
            comparison.show(next);
        }
        arrange();
    }

    private void showFacets(ConceptsSheet next) {
        List<Facet> list = new ArrayList<>();
        for (Shown choice : Shown.values()) {
            list.add(new Facet(words.text("shown." + choice), next.counts().get(choice.ordinal()), Optional.empty()));
        }
        if (facets.isPresent()) {
            facets.get().show(list, next.shown().ordinal());
        } else {
            Facets made = new Facets(list, next.shown().ordinal(), index -> chosen.accept(Shown.values()[index]));
            facets = Optional.of(made);
            facetLine.add(made);
        }
    }

    /** The lead concept is what one copies most; without one, the first. */
    private void showCopying(ConceptsSheet next) {
        copying.removeAll();
        bench.definition()
                .project()
                .leadConcept()
                .filter(id -> bench.definition().get(id).isPresent())
                .or(() -> next.concepts().stream().findFirst().map(ConceptsSheet.Entrant::id))
                .ifPresent(id -> copying.add(ActionButton.plain(words.text("copy", id), () -> copy(id))));
        copying.revalidate();
    }

    private void copy(RecordId id) {
        edit(Optional.of(words.text("copy.edit", id)), definition -> Lifecycle.duplicate(definition, id));
    }

    private void edit(Optional<String> name, UnaryOperator<Definition> edit) {
        bench.edit(name, edit, this::tell);
    }

    private void tell(Invalid invalid) {
        bench.tell(new Problem("", 0, 0, "", invalid.field(), invalid.wrong(), invalid.remedy()));
    }

    private void showPanels(ConceptsSheet next) {
        List<RecordId> ids =
                next.concepts().stream().map(ConceptsSheet.Entrant::id).toList();
        if (!List.copyOf(shown.keySet()).equals(ids)) {
            Map<RecordId, ConceptPanel> kept = new LinkedHashMap<>(shown);
            shown.clear();
            panels.removeAll();
            for (ConceptsSheet.Entrant entrant : next.concepts()) {
                ConceptPanel panel = kept.containsKey(entrant.id()) ? kept.get(entrant.id()) : panel(entrant);
                shown.put(entrant.id(), panel);
                panels.add(panel);
            }
        }
        next.concepts().forEach(entrant -> shown.get(entrant.id()).show(entrant));
        panels.revalidate();
        panels.repaint();
    }

    private ConceptPanel panel(ConceptsSheet.Entrant entrant) {
        RecordId id = entrant.id();
        return new ConceptPanel(
                entrant,
                (concept, says) -> new Teeth(bench, words, concept, says),
                bench.locale(),
                new ConceptPanel.Acts() {
                    @Override
                    public void makeLead() {
                        edit(
                                Optional.empty(),
                                definition ->
                                        definition.with(Address.of(RecordId.PROJECT, "leadConcept"), Optional.of(id)));
                    }

                    @Override
                    public void openForm() {
                        side.showForm(id);
                    }

                    @Override
                    public void showTable(ChartTable table) {
                        table(words.text("form.title", id, words.text("steps.caption")), table);
                    }
                });
    }

    private void table(String name, ChartTable numbers) {
        side.showTable(name, numbers);
    }

    /** The pane below is there while something is open in it. */
    private void arrange() {
        JComponent upper = sheet.filter(now -> now.concepts().isEmpty())
                .<JComponent>map(this::nothing)
                .orElse(scrolled);
        middle.removeAll();
        if (side.isOpen()) {
            JSplitPane split = new JSplitPane(JSplitPane.VERTICAL_SPLIT, upper, side);
            split.setResizeWeight(UPPER_SHARE);
            split.setOpaque(false);
            split.setBorder(BorderFactory.createEmptyBorder());
            middle.add(split);
        } else {
            middle.add(upper);
        }
        middle.revalidate();
        middle.repaint();
    }

    private JComponent nothing(ConceptsSheet now) {
        int all = now.counts().get(Shown.WITH_RETIRED.ordinal());
        if (all > 0) {
            return padded(new EmptyPlace(
                    words.text("none.what", Integer.toString(all)),
                    words.text("none.why"),
                    Optional.of(new Step(words.text("none.show"), () -> chosen.accept(Shown.WITH_RETIRED))),
                    Optional.empty()));
        }
        long waiting = bench.definition().all(RecordKinds.REQUIREMENT).stream()
                .filter(requirement -> requirement.isCurrent() && requirement.state() == Requirement.State.AGREED)
                .count();
        return padded(new EmptyPlace(
                words.text("empty.what"),
                words.text(waiting == 1 ? "empty.why.one" : "empty.why", Long.toString(waiting)),
                Optional.of(new Step(words.text("add"), side::add)),
                Optional.empty()));
    }

    /** Shows a concept, and a field of it in focus. */
    void reveal(Address address) {
        if (address.path().isEmpty()) {
            Optional.ofNullable(shown.get(address.record())).ifPresent(panel -> {
                panels.scrollRectToVisible(panel.getBounds());
                panel.cogs().requestFocusInWindow();
            });
            if (shown.containsKey(address.record())) {
                return;
            }
        }
        side.reveal(address);
    }

    Optional<ConceptPanel> panel(RecordId id) {
        return Optional.ofNullable(shown.get(id));
    }

    Comparison comparison() {
        return comparison;
    }

    SidePane side() {
        return side;
    }
}
