package groupwright.workbench.workings;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.LayoutManager;

/**
 * The first on the left with the room that is left, the others at the right end in their own widths; texts stand on one
 * baseline where they have one.
 */
public final class EndsLayout implements LayoutManager {
    private final int gap;
    private final int least;

    /**
     * @param gap between two, in pixels
     * @param least height of the row, in pixels
     */
    public EndsLayout(int gap, int least) {
        this.gap = gap;
        this.least = least;
    }

    @Override
    public void addLayoutComponent(String name, Component component) {
        // every child is laid out
    }

    @Override
    public void removeLayoutComponent(Component component) {
        // every child is laid out
    }

    private int ends(Container parent) {
        int width = 0;
        for (int i = 1; i < parent.getComponentCount(); i++) {
            width += parent.getComponent(i).getPreferredSize().width + gap;
        }
        return width;
    }

    /** Where the common baseline stands: below the highest part above any. */
    private static int rise(Component child, Dimension size) {
        return Math.max(0, child.getBaseline(Math.max(0, size.width), Math.max(0, size.height)));
    }

    private Dimension sizeOf(Container parent, int index) {
        Component child = parent.getComponent(index);
        if (index > 0) {
            return child.getPreferredSize();
        }
        Insets insets = parent.getInsets();
        int room = Math.max(0, parent.getWidth() - insets.left - insets.right - ends(parent));
        return new Dimension(room, StackLayout.heightAt(child, room));
    }

    @Override
    public Dimension preferredLayoutSize(Container parent) {
        int above = 0;
        int below = 0;
        for (int i = 0; i < parent.getComponentCount(); i++) {
            Dimension size = sizeOf(parent, i);
            int rise = rise(parent.getComponent(i), size);
            above = Math.max(above, rise);
            below = Math.max(below, size.height - rise);
        }
        Insets insets = parent.getInsets();
        return new Dimension(
                ends(parent) + insets.left + insets.right, Math.max(least, above + below) + insets.top + insets.bottom);
    }

    @Override
    public Dimension minimumLayoutSize(Container parent) {
        return preferredLayoutSize(parent);
    }

    @Override
    public void layoutContainer(Container parent) {
        int above = 0;
        int below = 0;
        for (int i = 0; i < parent.getComponentCount(); i++) {
            Dimension size = sizeOf(parent, i);
            int rise = rise(parent.getComponent(i), size);
            above = Math.max(above, rise);
            below = Math.max(below, size.height - rise);
        }
        Insets insets = parent.getInsets();
        int height = parent.getHeight() - insets.top - insets.bottom;
        int baseline = insets.top + above + Math.max(0, height - above - below) / 2;
        int right = parent.getWidth() - insets.right;
        for (int i = parent.getComponentCount() - 1; i >= 0; i--) {
            Component child = parent.getComponent(i);
            Dimension size = sizeOf(parent, i);
            child.setBounds(
                    i == 0 ? insets.left : right - size.width, baseline - rise(child, size), size.width, size.height);
            right -= size.width + gap;
        }
    }
}
