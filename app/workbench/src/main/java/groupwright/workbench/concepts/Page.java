package groupwright.workbench.concepts;

import groupwright.workbench.look.Metric;
import java.awt.Dimension;
import java.awt.Rectangle;
import javax.swing.JPanel;
import javax.swing.Scrollable;

/** What scrolls up and down: as wide as the place, as high as it needs to be. */
final class Page extends JPanel implements Scrollable {
    private static final long serialVersionUID = 1L;

    Page(int gap) {
        super(new Stack(gap));
        setOpaque(false);
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return Metric.CLOSE_ROW.px();
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return Math.max(Metric.CLOSE_ROW.px(), visible.height - Metric.CLOSE_ROW.px());
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return false;
    }
}
