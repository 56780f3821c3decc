package groupwright.workbench.riders;

import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Rectangle;
import java.awt.event.MouseWheelListener;
import java.util.ArrayList;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;
import javax.swing.Scrollable;

/** Things as columns on shared rows. The labels stand still; the columns scroll sideways where they are too many. */
final class SharedRows extends JPanel {
    private static final long serialVersionUID = 1L;

    static final int LABELS = 148;
    private static final int NARROWEST = 176;

    /** What is drawn under a row. */
    enum Rule {
        NONE,
        HAIRLINE,
        STRONG
    }

    private record Row(JComponent label, List<JComponent> cells, Rule rule) {}

    private final transient List<Row> rows = new ArrayList<>();
    private final Ruled labels = new Ruled();
    private final Ruled columns = new Ruled();
    private final JScrollPane scroll =
            new JScrollPane(
                    columns,
                    ScrollPaneConstants.VERTICAL_SCROLLBAR_NEVER,
                    ScrollPaneConstants.HORIZONTAL_SCROLLBAR_AS_NEEDED) {
                /** A cell that needs a second line makes the whole row higher, the label beside it too. */
                @Override
                public boolean isValidateRoot() {
                    return false;
                }
            };
    private transient int[] heights = {};

    SharedRows() {
        super(null);
        setOpaque(false);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setOpaque(false);
        scroll.getViewport().setOpaque(false);
        for (MouseWheelListener listener : scroll.getMouseWheelListeners()) {
            scroll.removeMouseWheelListener(listener); // the wheel moves the place
        }
        add(labels);
        add(scroll);
    }

    void clear() {
        rows.clear();
        labels.removeAll();
        columns.removeAll();
    }

    void add(JComponent label, List<JComponent> cells, Rule rule) {
        label.setOpaque(false);
        rows.add(new Row(label, List.copyOf(cells), rule));
        labels.add(label);
        cells.forEach(columns::add);
    }

    private int columnWidth(int width) {
        int count = rows.isEmpty() ? 1 : Math.max(1, rows.get(0).cells().size());
        return Math.max(Look.pixels(NARROWEST), (width - Look.pixels(LABELS)) / count);
    }

    private boolean isWide(int width) {
        int count = rows.isEmpty() ? 0 : rows.get(0).cells().size();
        return columnWidth(width) * count > width - Look.pixels(LABELS);
    }

    private void measure(int width) {
        int column = columnWidth(width) - Metric.STEP.px();
        heights = new int[rows.size()];
        for (int i = 0; i < heights.length; i++) {
            int height = height(rows.get(i).label(), Look.pixels(LABELS) - Metric.STEP.px());
            for (JComponent cell : rows.get(i).cells()) {
                height = Math.max(height, height(cell, column));
            }
            heights[i] = Math.max(Metric.CLOSE_ROW.px() + Metric.HALF_STEP.px() / 2, height + 1);
        }
    }

    private static int height(JComponent part, int width) {
        if (part instanceof ValueCell cell) {
            return cell.heightAt(width);
        }
        if (part.getWidth() != width) {
            part.setSize(width, Math.max(1, part.getHeight()));
            part.doLayout();
        }
        return part.getPreferredSize().height;
    }

    private int sum() {
        int sum = 0;
        for (int height : heights) {
            sum += height;
        }
        return sum;
    }

    @Override
    public Dimension getPreferredSize() {
        int width = getWidth() > 0 ? getWidth() : Look.pixels(LABELS + NARROWEST);
        measure(width);
        int bar = isWide(width) ? scroll.getHorizontalScrollBar().getPreferredSize().height : 0;
        return new Dimension(width, sum() + bar);
    }

    @Override
    public void doLayout() {
        measure(getWidth());
        int left = Look.pixels(LABELS);
        int wide = columnWidth(getWidth());
        labels.setBounds(0, 0, left, sum());
        scroll.setBounds(left, 0, getWidth() - left, getHeight());
        int count = rows.isEmpty() ? 0 : rows.get(0).cells().size();
        columns.setPreferredSize(new Dimension(wide * count, sum()));
        int y = 0;
        for (int i = 0; i < heights.length; i++) {
            Row row = rows.get(i);
            place(row.label(), Metric.STEP.px(), y, left - Metric.STEP.px(), heights[i]);
            for (int c = 0; c < row.cells().size(); c++) {
                place(row.cells().get(c), c * wide, y, wide - Metric.STEP.px(), heights[i]);
            }
            y += heights[i];
        }
        scroll.doLayout();
        scroll.getViewport().doLayout();
    }

    /** Single lines stand in the middle of a row of one line, at the top of a higher one. */
    private static void place(Component part, int x, int y, int width, int height) {
        int own = part instanceof ValueCell || part instanceof groupwright.workbench.lists.Stack
                ? height - 1
                : Math.min(height - 1, part.getPreferredSize().height);
        int line = Metric.CLOSE_ROW.px();
        int top = own < line ? (Math.min(height, line) - own) / 2 : 0;
        part.setBounds(x, y + top, width, own);
    }

    /** Draws the rules between rows, through all columns. */
    private final class Ruled extends JPanel implements Scrollable {
        private static final long serialVersionUID = 1L;

        Ruled() {
            super(null);
            setOpaque(false);
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            super.paintComponent(graphics);
            try (Drawing drawing = Drawing.on(graphics, new Rectangle(0, 0, getWidth(), getHeight()))) {
                double y = 0;
                for (int i = 0; i < heights.length && i < rows.size(); i++) {
                    y += heights[i] / Look.scale();
                    Rule rule = rows.get(i).rule();
                    if (rule != Rule.NONE) {
                        Token colour = rule == Rule.STRONG ? Token.EDGE : Token.HAIRLINE;
                        drawing.level(0, drawing.width(), y - 1, 1, colour);
                    }
                }
            }
        }

        @Override
        public Dimension getPreferredScrollableViewportSize() {
            return getPreferredSize();
        }

        @Override
        public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
            return Look.pixels(NARROWEST) / 4;
        }

        @Override
        public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
            return Look.pixels(NARROWEST);
        }

        @Override
        public boolean getScrollableTracksViewportWidth() {
            return false;
        }

        @Override
        public boolean getScrollableTracksViewportHeight() {
            return true;
        }
    }
}
