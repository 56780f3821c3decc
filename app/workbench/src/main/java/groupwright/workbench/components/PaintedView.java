package groupwright.workbench.components;

import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Look;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Insets;
import java.awt.Rectangle;
import java.awt.event.MouseEvent;
import java.util.Objects;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.accessibility.AccessibleStateSet;
import javax.swing.JComponent;
import javax.swing.ToolTipManager;

/**
 * A component that shows one value through its painter. Its accessible name is what the painter says of the value.
 *
 * @param <V> an immutable value
 */
public class PaintedView<V> extends JComponent implements Accessible {
    private final transient Painter<V> painter;
    private final transient AccessibleRole role;
    private transient V value;

    /** A view that only shows. */
    public PaintedView(Painter<V> painter, V value) {
        this(painter, value, AccessibleRole.LABEL);
    }

    PaintedView(Painter<V> painter, V value, AccessibleRole role) {
        this.painter = Objects.requireNonNull(painter, "painter");
        this.value = Objects.requireNonNull(value, "value");
        this.role = role;
        ToolTipManager.sharedInstance().registerComponent(this);
    }

    /** What is shown. */
    public final V value() {
        return value;
    }

    /** Shows another value. */
    public final void show(V next) {
        if (next.equals(value)) {
            return;
        }
        String before = painter.name(value);
        value = Objects.requireNonNull(next, "next");
        getAccessibleContext()
                .firePropertyChange(AccessibleContext.ACCESSIBLE_NAME_PROPERTY, before, painter.name(next));
        revalidate();
        repaint();
    }

    /** The value as it is painted now, for example with the pointer over it. */
    V painted() {
        return value;
    }

    /** What is told of its state, besides what every component tells. */
    void addStates(AccessibleStateSet states) {
        // most only show
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        try (Drawing drawing = Drawing.on(graphics, room())) {
            painter.paint(drawing, painted());
        }
    }

    private Rectangle room() {
        Insets insets = getInsets();
        return new Rectangle(
                insets.left,
                insets.top,
                getWidth() - insets.left - insets.right,
                getHeight() - insets.top - insets.bottom);
    }

    @Override
    public Dimension getPreferredSize() {
        if (isPreferredSizeSet()) {
            return super.getPreferredSize();
        }
        Extent extent = painter.extent(value);
        Insets insets = getInsets();
        return new Dimension(
                (int) Math.ceil(extent.width() * Look.scale()) + insets.left + insets.right,
                (int) Math.ceil(extent.height() * Look.scale()) + insets.top + insets.bottom);
    }

    @Override
    public Dimension getMinimumSize() {
        return isMinimumSizeSet() ? super.getMinimumSize() : getPreferredSize();
    }

    @Override
    public int getBaseline(int width, int height) {
        double baseline = painter.extent(value).baseline();
        return baseline < 0 ? -1 : getInsets().top + Look.pixels(baseline);
    }

    /** What is cut off can be read in the tip. */
    @Override
    public String getToolTipText(MouseEvent event) {
        String own = super.getToolTipText(event);
        return own != null || getWidth() >= getPreferredSize().width ? own : painter.name(value);
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleView();
        }
        return accessibleContext;
    }

    private final class AccessibleView extends AccessibleJComponent {
        @Override
        public String getAccessibleName() {
            return painter.name(value);
        }

        @Override
        public AccessibleRole getAccessibleRole() {
            return role;
        }

        @Override
        public AccessibleStateSet getAccessibleStateSet() {
            AccessibleStateSet states = super.getAccessibleStateSet();
            addStates(states);
            return states;
        }
    }
}
