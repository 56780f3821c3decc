package groupwright.workbench.cassettes;

import groupwright.definition.record.RecordId;
import groupwright.drivetrain.gearing.Cassette;
import groupwright.workbench.components.Facet;
import groupwright.workbench.components.Facets;
import groupwright.workbench.components.Prose;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;

/** What was found: scatter, table and one cassette, all showing the same. */
final class ResultPanel extends JPanel {
    private static final long serialVersionUID = 1L;

    private static final double SCATTER_SHARE = 0.3;
    private static final int SCATTER_LEAST = 150;
    private static final int SCATTER_MOST = 380;

    private final transient CassetteWords say;
    private final transient Consumer<Shown> changed;
    private final AxisTitle title;
    private final ScatterView scatter;
    private final Prose legend = new Prose("", Type.CAPTION, Token.MUTED);
    private final Facets facets;
    private final FoundTable table;
    private final Prose spread = new Prose("", Type.SECONDARY, Token.MUTED);
    private final DetailPanel detail;
    private transient Optional<Shown> shown = Optional.empty();

    /** @param changed told how the user wants to look at it now */
    ResultPanel(CassetteWords say, Consumer<Shown> changed, DetailPanel.Acts acts) {
        super(new BorderLayout());
        this.say = say;
        this.changed = changed;
        setOpaque(false);
        title = new AxisTitle(say, axes -> change(now().map(one -> one.axes(axes))));
        scatter = new ScatterView(say, this::select);
        facets = new Facets(
                facets(0, 0), 0, index -> change(now().map(one -> one.filter(Shown.Filter.values()[index]))));
        table = new FoundTable(say, new FoundTable.Acts() {
            @Override
            public void select(Cassette cassette) {
                ResultPanel.this.select(cassette);
            }

            @Override
            public void sort(Sorting sorting) {
                change(now().map(one -> one.sorting(sorting)));
            }

            @Override
            public void pin(Cassette cassette) {
                acts.pin(cassette);
            }
        });
        detail = new DetailPanel(say, acts);
        build();
    }

    private static JPanel clear() {
        JPanel panel = new JPanel(new BorderLayout());
        panel.setOpaque(false);
        return panel;
    }

    private void build() {
        JPanel upper = clear();
        upper.add(title, BorderLayout.NORTH);
        upper.add(scatter, BorderLayout.CENTER);
        upper.setBorder(BorderFactory.createEmptyBorder(0, Metric.GAP.px(), 0, Metric.GAP.px()));
        upper.add(legend, BorderLayout.SOUTH);
        add(upper, BorderLayout.NORTH);
        JPanel list = clear();
        list.add(padded(facets), BorderLayout.NORTH);
        JScrollPane pane = Scrolled.of(table);
        pane.setColumnHeaderView(table.getTableHeader());
        list.add(pane, BorderLayout.CENTER);
        list.add(padded(spread), BorderLayout.SOUTH);
        JSplitPane split = new JSplitPane(JSplitPane.VERTICAL_SPLIT, list, detail);
        split.setResizeWeight(0.5);
        split.setContinuousLayout(true);
        split.setOpaque(false);
        split.setBorder(BorderFactory.createEmptyBorder());
        list.setMinimumSize(new Dimension(0, Look.pixels(110)));
        detail.setMinimumSize(new Dimension(0, Look.pixels(90)));
        add(split, BorderLayout.CENTER);
    }

    private static JComponent padded(JComponent inside) {
        JPanel panel = clear();
        panel.setBorder(BorderFactory.createEmptyBorder(
                Metric.HALF_STEP.px() / 2, Metric.GAP.px(), Metric.HALF_STEP.px() / 2, Metric.GAP.px()));
        panel.add(inside);
        return panel;
    }

    @Override
    public void doLayout() {
        int share = (int) (SCATTER_SHARE * getHeight());
        int height = Math.max(Look.pixels(SCATTER_LEAST), Math.min(Look.pixels(SCATTER_MOST), share));
        if (!scatter.isPreferredSizeSet() || scatter.getPreferredSize().height != height) {
            scatter.setPreferredSize(new Dimension(Look.pixels(100), height));
            scatter.invalidate(); // what holds it remembers its old height otherwise
        }
        super.doLayout();
    }

    private List<Facet> facets(int suiting, int all) {
        return List.of(
                new Facet(say.words().text("facet.suiting"), suiting, Optional.empty()),
                new Facet(say.words().text("facet.all"), all, Optional.empty()));
    }

    private Optional<Shown> now() {
        return shown;
    }

    private void change(Optional<Shown> next) {
        next.ifPresent(changed);
    }

    private void select(Cassette cassette) {
        change(now().filter(one -> !one.selected().equals(Optional.of(cassette)))
                .map(one -> one.select(Optional.of(cassette))));
    }

    /** Shows what was found. */
    void show(Shown next, CassettesSheet sheet, CassettesSheet.Lead lead) {
        shown = Optional.of(next);
        title.show(next.axes());
        scatter.show(next, lead.sign(), say.words().text("today", lead.id()));
        int all = next.finding().shown().size();
        int suiting = next.finding().suiting(next.riders()).size();
        facets.show(facets(suiting, all), next.filter().ordinal());
        legend.setText(
                next.finding().isJudged()
                        ? say.words().text("scatter.legend", suiting, all - suiting)
                        : say.words().text("scatter.unjudged"));
        List<RecordId> groups =
                sheet.riders().stream().map(CassettesSheet.Riders::id).toList();
        table.show(next, groups);
        spread.setText(say.shownOf(next.finding()));
        spread.getAccessibleContext().setAccessibleName(spread.getText());
        next.chosen()
                .ifPresentOrElse(
                        chosen -> {
                            detail.show(sheet, lead, next, chosen);
                            detail.setVisible(true);
                        },
                        () -> detail.setVisible(false));
        revalidate();
    }

    FoundTable table() {
        return table;
    }
}
