package groupwright.workbench.components;

import groupwright.documents.charts.Chart;
import groupwright.documents.charts.ChartPainter;
import groupwright.documents.charts.ChartSize;
import groupwright.documents.charts.ChartTable;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.ScreenPalette;
import groupwright.workbench.look.Token;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Insets;
import java.awt.image.BufferedImage;
import java.util.Objects;
import java.util.function.Consumer;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.TransferHandler;

/**
 * Shows a chart. Enter or T shows its numbers as a table, copying gives a picture twice as large. Its height follows from
 * its width.
 */
public final class ChartView extends JComponent implements Accessible {
    private static final double FIRST_WIDTH = 480;
    private static final double COPY_SCALE = 2;

    private final transient Token ground;
    private final transient Consumer<ChartTable> tableWanted;
    private transient Chart chart;

    /**
     * A view.
     *
     * @param ground what it stands on
     * @param tableWanted shows the numbers
     */
    public ChartView(Chart chart, Token ground, Consumer<ChartTable> tableWanted) {
        this.chart = Objects.requireNonNull(chart, "chart");
        this.ground = Objects.requireNonNull(ground, "ground");
        this.tableWanted = Objects.requireNonNull(tableWanted, "tableWanted");
        setFocusable(true);
        setBorder(new FocusBorder());
        Press.repaintOnFocus(this);
        Press.bind(this, "ENTER", "table", this::showAsTable);
        Press.bind(this, "T", "table", this::showAsTable);
        setTransferHandler(new PictureTransfer());
        Press.bindCopy(
                this,
                () -> getTransferHandler()
                        .exportToClipboard(this, getToolkit().getSystemClipboard(), TransferHandler.COPY));
    }

    /** Shows another chart. */
    public void show(Chart next) {
        if (next.equals(chart)) {
            return;
        }
        String before = chart.description();
        chart = Objects.requireNonNull(next, "next");
        getAccessibleContext()
                .firePropertyChange(AccessibleContext.ACCESSIBLE_DESCRIPTION_PROPERTY, before, chart.description());
        revalidate();
        repaint();
    }

    /** Hands the numbers to whoever shows them. */
    public void showAsTable() {
        tableWanted.accept(chart.table());
    }

    private ChartPainter painter() {
        return new ChartPainter(Look.lettering(), ScreenPalette.on(ground));
    }

    /** The chart as a picture, as wide as it is shown. */
    public BufferedImage picture() {
        return painter().picture(chart, innerWidth(), COPY_SCALE);
    }

    private double innerWidth() {
        Insets insets = getInsets();
        int width = getWidth() - insets.left - insets.right;
        return width > 0 ? width / Look.scale() : FIRST_WIDTH;
    }

    @Override
    public Dimension getPreferredSize() {
        if (isPreferredSizeSet()) {
            return super.getPreferredSize();
        }
        ChartSize size = painter().size(chart, innerWidth());
        Insets insets = getInsets();
        return new Dimension(
                (int) Math.ceil(size.width() * Look.scale()) + insets.left + insets.right,
                (int) Math.ceil(size.height() * Look.scale()) + insets.top + insets.bottom);
    }

    /** What can still be read. */
    @Override
    public Dimension getMinimumSize() {
        ChartSize size = painter().size(chart, 1);
        return new Dimension(Look.pixels(size.width()), Look.pixels(size.height()));
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean wider = width != getWidth();
        super.setBounds(x, y, width, height);
        if (wider) {
            revalidate();
        }
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Insets insets = getInsets();
        Graphics2D own = (Graphics2D) graphics.create();
        try {
            own.translate(insets.left, insets.top);
            painter().paint(own, chart, innerWidth(), Look.scale());
        } finally {
            own.dispose();
        }
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleChart();
        }
        return accessibleContext;
    }

    private final class AccessibleChart extends AccessibleJComponent {
        @Override
        public String getAccessibleName() {
            return chart.title();
        }

        @Override
        public String getAccessibleDescription() {
            return chart.description();
        }

        @Override
        public AccessibleRole getAccessibleRole() {
            return AccessibleRole.CANVAS;
        }
    }
}
