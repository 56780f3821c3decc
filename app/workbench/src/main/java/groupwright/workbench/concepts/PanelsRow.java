package groupwright.workbench.concepts;

import groupwright.workbench.look.Metric;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Rectangle;
import javax.swing.JPanel;
import javax.swing.Scrollable;

/** Panels of concepts beside each other, all equally wide: they share the room, or scroll where it is too narrow. */
final class PanelsRow extends JPanel implements Scrollable {
    private static final long serialVersionUID = 1L;

    PanelsRow() {
        super(null);
        setOpaque(false);
    }

    private int room() {
        return getParent() == null ? 0 : getParent().getWidth();
    }

    private int least() {
        int least = 0;
        for (Component panel : getComponents()) {
            least = Math.max(least, panel.getMinimumSize().width);
        }
        return least;
    }

    /** Closer together before they scroll. */
    private int gap() {
        int count = getComponentCount();
        int wide = Metric.WIDE_GAP.px();
        return count * least() + (count - 1) * wide <= room() ? wide : Metric.STEP.px();
    }

    private int each() {
        int count = Math.max(1, getComponentCount());
        return Math.max(least(), (room() - (count - 1) * gap()) / count);
    }

    @Override
    public Dimension getPreferredSize() {
        int each = each();
        int height = 0;
        for (Component panel : getComponents()) {
            if (panel.getWidth() != each) {
                panel.setSize(each, panel.getHeight()); // heights follow from widths
            }
            height = Math.max(height, panel.getPreferredSize().height);
        }
        int count = getComponentCount();
        return new Dimension(count * each + Math.max(0, count - 1) * gap(), height);
    }

    @Override
    public void doLayout() {
        int each = each();
        int gap = gap();
        int x = 0;
        for (Component panel : getComponents()) {
            panel.setBounds(x, 0, each, getHeight());
            x += each + gap;
        }
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return Metric.WIDE_GAP.px();
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return each();
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
