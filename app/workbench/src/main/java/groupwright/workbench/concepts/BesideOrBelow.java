package groupwright.workbench.concepts;

import groupwright.workbench.look.Look;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;

/**
 * Two components: beside each other, the second at the right end, or below each other where the room is too narrow.
 *
 * @param gap between them, at 100 %
 */
record BesideOrBelow(int gap) implements LayoutManager {
    @Override
    public void addLayoutComponent(String name, Component component) {
        // keeps nothing
    }

    @Override
    public void removeLayoutComponent(Component component) {
        // keeps nothing
    }

    private boolean fits(Container parent) {
        Dimension first = parent.getComponent(0).getPreferredSize();
        Dimension second = parent.getComponent(1).getPreferredSize();
        return parent.getWidth() <= 0 || first.width + Look.pixels(gap) + second.width <= parent.getWidth();
    }

    @Override
    public Dimension preferredLayoutSize(Container parent) {
        Dimension first = parent.getComponent(0).getPreferredSize();
        Dimension second = parent.getComponent(1).getPreferredSize();
        return fits(parent)
                ? new Dimension(first.width + Look.pixels(gap) + second.width, Math.max(first.height, second.height))
                : new Dimension(Math.max(first.width, second.width), first.height + Look.pixels(gap) + second.height);
    }

    @Override
    public Dimension minimumLayoutSize(Container parent) {
        return new Dimension(0, preferredLayoutSize(parent).height);
    }

    @Override
    public void layoutContainer(Container parent) {
        Component first = parent.getComponent(0);
        Component second = parent.getComponent(1);
        Dimension one = first.getPreferredSize();
        Dimension two = second.getPreferredSize();
        int width = parent.getWidth();
        if (fits(parent)) {
            first.setBounds(0, (parent.getHeight() - one.height) / 2, one.width, one.height);
            second.setBounds(width - two.width, (parent.getHeight() - two.height) / 2, two.width, two.height);
        } else {
            first.setBounds(0, 0, Math.min(width, one.width), one.height);
            second.setBounds(0, one.height + Look.pixels(gap), Math.min(width, two.width), two.height);
        }
    }
}
