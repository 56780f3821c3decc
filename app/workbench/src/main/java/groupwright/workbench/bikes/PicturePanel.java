package groupwright.workbench.bikes;

import groupwright.documents.charts.ChartTable;
import groupwright.documents.charts.FromAbove;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.components.ActionLink;
import groupwright.workbench.components.ChartView;
import groupwright.workbench.components.LinkLabel;
import groupwright.workbench.components.Prose;
import groupwright.workbench.lists.Line;
import groupwright.workbench.lists.Stack;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import java.util.Optional;
import java.util.function.Consumer;

/** The drawing of a bike from above, and what stands in the way of concepts that are left out. */
final class PicturePanel extends Stack {
    private static final long serialVersionUID = 1L;
    private static final int BETWEEN = 16;

    private final transient Bench bench;
    private final transient Words words;
    private final transient Consumer<ChartTable> tableWanted;
    private transient Optional<ChartView> chart = Optional.empty();

    PicturePanel(Bench bench, Words words, Consumer<ChartTable> tableWanted) {
        super(Metric.HALF_STEP.units());
        this.bench = bench;
        this.words = words;
        this.tableWanted = tableWanted;
        setName("bikes.picture");
    }

    void show(BikesSheet.Picture picture) {
        removeAll();
        picture.above().ifPresentOrElse(this::draw, () -> {
            chart = Optional.empty();
            add(new Prose(words.text("above.nothing", picture.bike()), Type.BODY, Weight.STRONG, Token.INK));
        });
        Line below = new Line(BETWEEN);
        picture.lacks().forEach(lack -> {
            LinkLabel link =
                    new LinkLabel(lack.words(), () -> bench.open(lack.input().address()));
            link.setName("bikes.undrawn." + lack.input().address());
            link.setToolTipText(lack.input().remedy());
            below.add(link);
        });
        if (chart.isPresent()) {
            ActionLink table = new ActionLink(words.text("above.table"), () -> chart.ifPresent(ChartView::showAsTable));
            table.setName("bikes.above.table");
            below.add(table);
        }
        add(below);
        revalidate();
        repaint();
    }

    private void draw(FromAbove above) {
        ChartView view = chart.orElseGet(() -> new ChartView(above, Token.SURFACE, tableWanted));
        view.setName("bikes.above");
        view.show(above);
        chart = Optional.of(view);
        add(view);
    }
}
