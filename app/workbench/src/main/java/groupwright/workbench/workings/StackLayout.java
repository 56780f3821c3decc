package groupwright.workbench.workings;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.LayoutManager;

/** One below the other over the whole width, each as high as it needs to be at that width. */
public final class StackLayout implements LayoutManager {
    private final int gap;

    /** @param gap between two, in pixels */
    public StackLayout(int gap) {
        this.gap = gap;
    }

    @Override
    public void addLayoutComponent(String name, Component component) {
        // every child is laid out
    }

    @Override
    public void removeLayoutComponent(Component component) {
        // every child is laid out
    }

    /** A text knows how high it is only once it has its width. */
    static int heightAt(Component child, int width) {
        if (width > 0) {
            child.setSize(width, Math.max(1, child.getHeight()));
        }
        if (child instanceof Container container && container.getLayout() instanceof StackLayout) {
            Insets insets = container.getInsets();
            return ((StackLayout) container.getLayout()).height(container, width - insets.left - insets.right)
                    + insets.top
                    + insets.bottom;
        }
        return child.getPreferredSize().height;
    }

    private int height(Container parent, int width) {
        int height = 0;
        int shown = 0;
        for (Component child : parent.getComponents()) {
            if (child.isVisible()) {
                height += heightAt(child, width);
                shown++;
            }
        }
        return height + Math.max(0, shown - 1) * gap;
    }

    @Override
    public Dimension preferredLayoutSize(Container parent) {
        Insets insets = parent.getInsets();
        int width = parent.getWidth() - insets.left - insets.right;
        int widest = 0;
        for (Component child : parent.getComponents()) {
            if (child.isVisible()) {
                widest = Math.max(widest, child.getMinimumSize().width);
            }
        }
        return new Dimension(widest + insets.left + insets.right, height(parent, width) + insets.top + insets.bottom);
    }

    @Override
    public Dimension minimumLayoutSize(Container parent) {
        return preferredLayoutSize(parent);
    }

    @Override
    public void layoutContainer(Container parent) {
        Insets insets = parent.getInsets();
        int width = parent.getWidth() - insets.left - insets.right;
        int y = insets.top;
        for (Component child : parent.getComponents()) {
            if (child.isVisible()) {
                int height = heightAt(child, width);
                child.setBounds(insets.left, y, width, height);
                y += height + gap;
            }
        }
    }
}
