package groupwright.workbench.concepts;

import groupwright.workbench.look.Look;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.LayoutManager;

/**
 * Components below each other, each as wide as the room and as high as it wants to be at that width.
 *
 * @param gap between them, at 100 %
 */
record Stack(int gap) implements LayoutManager {
    @Override
    public void addLayoutComponent(String name, Component component) {
        // keeps nothing
    }

    @Override
    public void removeLayoutComponent(Component component) {
        // keeps nothing
    }

    @Override
    public Dimension preferredLayoutSize(Container parent) {
        return size(parent, parent.getWidth());
    }

    @Override
    public Dimension minimumLayoutSize(Container parent) {
        Dimension wanted = size(parent, parent.getWidth());
        int least = 0;
        for (Component child : parent.getComponents()) {
            least = child.isVisible() ? Math.max(least, child.getMinimumSize().width) : least;
        }
        Insets insets = parent.getInsets();
        return new Dimension(least + insets.left + insets.right, wanted.height);
    }

    private Dimension size(Container parent, int width) {
        Insets insets = parent.getInsets();
        int inner = width - insets.left - insets.right;
        int height = 0;
        int widest = 0;
        int count = 0;
        for (Component child : parent.getComponents()) {
            if (child.isVisible()) {
                height += heightAt(child, inner);
                widest = Math.max(widest, child.getPreferredSize().width);
                count++;
            }
        }
        int gaps = Math.max(0, count - 1) * Look.pixels(gap);
        return new Dimension(widest + insets.left + insets.right, height + gaps + insets.top + insets.bottom);
    }

    private static int heightAt(Component child, int width) {
        if (width > 0 && child.getWidth() != width) {
            child.setSize(width, child.getHeight()); // heights follow from widths
        }
        return child.getPreferredSize().height;
    }

    @Override
    public void layoutContainer(Container parent) {
        Insets insets = parent.getInsets();
        int inner = parent.getWidth() - insets.left - insets.right;
        int y = insets.top;
        for (Component child : parent.getComponents()) {
            if (child.isVisible()) {
                int height = heightAt(child, inner);
                child.setBounds(insets.left, y, inner, height);
                y += height + Look.pixels(gap);
            }
        }
    }
}
