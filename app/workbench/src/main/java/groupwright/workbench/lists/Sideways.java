package groupwright.workbench.lists;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.event.MouseWheelEvent;
import java.awt.event.MouseWheelListener;
import javax.swing.BorderFactory;
import javax.swing.JScrollPane;
import javax.swing.SwingUtilities;

/** Scrolls sideways only, is as high as what it shows, and leaves the turning wheel to what lies around it. */
public final class Sideways extends JScrollPane {
    private static final long serialVersionUID = 1L;

    public Sideways(Component shown) {
        super(shown, VERTICAL_SCROLLBAR_NEVER, HORIZONTAL_SCROLLBAR_AS_NEEDED);
        setBorder(BorderFactory.createEmptyBorder());
        setOpaque(false);
        setFocusable(false);
        getViewport().setOpaque(false);
        for (MouseWheelListener listener : getMouseWheelListeners()) {
            removeMouseWheelListener(listener);
            addMouseWheelListener(event -> {
                if (event.isShiftDown()) {
                    listener.mouseWheelMoved(event);
                } else {
                    passOn(event);
                }
            });
        }
    }

    private void passOn(MouseWheelEvent event) {
        Container around = getParent();
        if (around != null) {
            around.dispatchEvent(SwingUtilities.convertMouseEvent(this, event, around));
        }
    }

    @Override
    public Dimension getPreferredSize() {
        Dimension shown = getViewport().getView().getPreferredSize();
        int beside = getRowHeader() == null ? 0 : getRowHeader().getView().getPreferredSize().width;
        int above = getColumnHeader() == null || getColumnHeader().getView() == null
                ? 0
                : getColumnHeader().getView().getPreferredSize().height;
        boolean bar = getWidth() > 0 && shown.width + beside > getWidth();
        int below = bar ? getHorizontalScrollBar().getPreferredSize().height : 0;
        return new Dimension(shown.width + beside, shown.height + above + below);
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(0, getPreferredSize().height);
    }
}
