package groupwright.workbench.requirements;

import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Rectangle;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.Scrollable;

/** Something as wide as the room, scrolled up and down. */
final class ScrolledUp extends JScrollPane {
    private static final long serialVersionUID = 1L;

    ScrolledUp(JComponent content) {
        super(new Page(content), VERTICAL_SCROLLBAR_AS_NEEDED, HORIZONTAL_SCROLLBAR_NEVER);
        setBorder(BorderFactory.createEmptyBorder());
        getViewport().setBackground(Token.SURFACE.colour());
    }

    private static final class Page extends JPanel implements Scrollable {
        private static final long serialVersionUID = 1L;

        Page(JComponent content) {
            super(new BorderLayout());
            setBackground(Token.SURFACE.colour());
            add(content, BorderLayout.NORTH);
        }

        @Override
        public Dimension getPreferredScrollableViewportSize() {
            return getPreferredSize();
        }

        @Override
        public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
            return Metric.ROW.px();
        }

        @Override
        public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
            return Math.max(Metric.ROW.px(), visible.height - Metric.ROW.px());
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
}
