package groupwright.workbench.form;

import java.awt.Dimension;
import java.awt.Rectangle;
import javax.swing.JPanel;
import javax.swing.Scrollable;
import javax.swing.SwingConstants;

/** A panel of rows, as wide as what it scrolls in. */
class Stack extends JPanel implements RowStack.Part, Scrollable {
    private static final long serialVersionUID = 1L;

    Stack() {
        super(new RowStack());
        setOpaque(false);
    }

    @Override
    public int heightAt(int width) {
        return RowStack.heightAt(this, width);
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return groupwright.workbench.look.Metric.FIELD.px();
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return orientation == SwingConstants.VERTICAL ? visible.height : visible.width;
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
