package groupwright.workbench.lists;

import groupwright.workbench.look.Look;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.LayoutManager;
import java.awt.Rectangle;
import javax.swing.JPanel;
import javax.swing.Scrollable;

/** Things one under the other, each as wide as the stack and as high as it then wants to be. */
public class Stack extends JPanel implements Scrollable {
    private static final long serialVersionUID = 1L;

    /** @param gap between them, in pixels at 100 % */
    public Stack(int gap) {
        super(new Below(gap));
        setOpaque(false);
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean other = width != getWidth();
        super.setBounds(x, y, width, height);
        if (other) {
            revalidate(); // heights follow from the width
        }
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return Look.pixels(24);
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return Math.max(Look.pixels(24), visible.height - Look.pixels(24));
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return false;
    }

    private record Below(int gap) implements LayoutManager {
        @Override
        public void addLayoutComponent(String name, Component component) {
            // nothing to keep
        }

        @Override
        public void removeLayoutComponent(Component component) {
            // nothing to keep
        }

        @Override
        public Dimension preferredLayoutSize(Container parent) {
            return new Dimension(Look.pixels(100), place(parent, (component, bounds) -> {}));
        }

        @Override
        public Dimension minimumLayoutSize(Container parent) {
            return preferredLayoutSize(parent);
        }

        @Override
        public void layoutContainer(Container parent) {
            place(parent, Component::setBounds);
        }

        private int place(Container parent, java.util.function.BiConsumer<Component, Rectangle> placed) {
            Insets insets = parent.getInsets();
            int width = Math.max(1, parent.getWidth() - insets.left - insets.right);
            int y = insets.top;
            boolean first = true;
            for (Component component : parent.getComponents()) {
                if (!component.isVisible()) {
                    continue;
                }
                y += first ? 0 : Look.pixels(gap);
                first = false;
                if (component.getWidth() != width) {
                    component.setSize(width, Math.max(1, component.getHeight())); // texts learn their height from it
                    if (component instanceof Container container) {
                        container.doLayout();
                    }
                }
                int height = component.getPreferredSize().height;
                placed.accept(component, new Rectangle(insets.left, y, width, height));
                y += height;
            }
            return y + insets.bottom;
        }
    }
}
