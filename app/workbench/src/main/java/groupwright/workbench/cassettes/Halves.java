package groupwright.workbench.cassettes;

import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import java.awt.Component;
import java.awt.Dimension;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** Things beside each other in equal columns, as many as there is room for; the rest go on below. */
final class Halves extends JPanel {
    private static final long serialVersionUID = 1L;

    private final int least;

    /** @param least width of a column, at 100 % */
    Halves(int least, List<? extends JComponent> parts) {
        super(null);
        this.least = least;
        setOpaque(false);
        parts.forEach(this::add);
    }

    private int columns(int width) {
        int gap = Metric.WIDE_GAP.px();
        return Math.max(1, Math.min(getComponentCount(), (width + gap) / (Look.pixels(least) + gap)));
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(Look.pixels(least), place(Math.max(1, getWidth())));
    }

    @Override
    public void doLayout() {
        place(getWidth());
    }

    private int place(int width) {
        int gap = Metric.WIDE_GAP.px();
        int columns = columns(width);
        int each = (width - gap * (columns - 1)) / columns;
        int y = 0;
        for (int from = 0; from < getComponentCount(); from += columns) {
            int height = 0;
            for (int i = from; i < Math.min(getComponentCount(), from + columns); i++) {
                Component part = getComponent(i);
                if (part.getWidth() != each) {
                    part.setSize(each, Math.max(1, part.getHeight())); // charts and texts learn their height from it
                    part.doLayout();
                }
                int own = part.getPreferredSize().height;
                part.setBounds((i - from) * (each + gap), y, each, own);
                height = Math.max(height, own);
            }
            y += height + Metric.STEP.px();
        }
        return y;
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean other = width != getWidth();
        super.setBounds(x, y, width, height);
        if (other) {
            revalidate(); // heights follow from the width
        }
    }
}
