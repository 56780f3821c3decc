package groupwright.workbench.concepts;

import groupwright.documents.charts.ChartPainter;
import groupwright.documents.charts.ChartTable;
import groupwright.documents.charts.StepBars;
import groupwright.workbench.components.ChartView;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.ScreenPalette;
import groupwright.workbench.look.Token;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.geom.Rectangle2D;
import java.util.function.Consumer;
import javax.swing.JPanel;

/** Step bars whose cogs one can stand on and change. */
final class CogChart extends JPanel {
    private static final long serialVersionUID = 1L;

    private final ChartView chart;
    private final ToothStrip strip;
    private transient StepBars bars;

    CogChart(StepBars bars, Teeth teeth, Runnable typing, Consumer<ChartTable> tableWanted) {
        super(null);
        this.bars = bars;
        this.chart = new ChartView(bars, Token.SURFACE, tableWanted);
        this.strip = new ToothStrip(ToothRow.COGS, teeth, typing, this::room);
        setOpaque(false);
        add(strip);
        add(chart);
    }

    ToothStrip strip() {
        return strip;
    }

    void show(StepBars next) {
        bars = next;
        chart.show(next);
        revalidate();
    }

    private Rectangle2D room(int place) {
        Insets insets = chart.getInsets();
        double width = (getWidth() - insets.left - insets.right) / Look.scale();
        int known = Math.min(place, bars.steps().size());
        Rectangle2D room = bars.cogRoom(known, Look.lettering(), width);
        return new Rectangle2D.Double(
                room.getX() + insets.left / Look.scale(),
                room.getY() + heading(width) + insets.top / Look.scale(),
                room.getWidth(),
                room.getHeight());
    }

    /** What title and caption take above the bars. */
    private double heading(double width) {
        ChartPainter painter = new ChartPainter(Look.lettering(), ScreenPalette.on(Token.SURFACE));
        return painter.size(bars, width).height()
                - bars.size(Look.lettering(), width).height();
    }

    @Override
    public void doLayout() {
        chart.setBounds(0, 0, getWidth(), getHeight());
        strip.setBounds(0, 0, getWidth(), getHeight());
    }

    @Override
    public Dimension getPreferredSize() {
        if (chart.getWidth() != getWidth()) {
            chart.setSize(getWidth(), chart.getHeight()); // its height follows from its width
        }
        return chart.getPreferredSize();
    }

    @Override
    public Dimension getMinimumSize() {
        return chart.getMinimumSize();
    }
}
