package groupwright.workbench.form;

import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.LayoutManager;

/** Rows one below the other over the whole width; two short ones share a line where there is room for both. */
final class RowStack implements LayoutManager {
    private static final int TWO_COLUMNS = 720;

    /** What knows its height at a width. */
    interface Part {
        int heightAt(int width);

        /** Whether two of them may stand side by side. */
        default Room room() {
            return Room.LINE;
        }
    }

    /** How much of a line a part takes. */
    enum Room {
        LINE,
        HALF
    }

    /** Takes each part with its place. */
    private interface Placing {
        void place(Component part, int x, int y, int width, int height);
    }

    static int heightAt(Container stack, int width) {
        return place(stack, width, (part, x, y, partWidth, height) -> {});
    }

    private static int place(Container stack, int width, Placing placing) {
        Insets around = stack.getInsets();
        int inner = Math.max(1, width - around.left - around.right);
        int gap = Metric.WIDE_GAP.px();
        int half = (inner - gap) / 2;
        boolean columns = inner >= Look.pixels(TWO_COLUMNS);
        int y = around.top;
        int waiting = 0; // height of a left half whose right half may follow
        for (Component part : stack.getComponents()) {
            if (!part.isVisible()) {
                continue;
            }
            boolean isHalf = columns && part instanceof Part rows && rows.room() == Room.HALF;
            int height = height(part, isHalf ? half : inner);
            if (isHalf && waiting > 0) {
                placing.place(part, around.left + half + gap, y, half, height);
                y += Math.max(waiting, height);
                waiting = 0;
            } else {
                y += waiting;
                placing.place(part, around.left, y, isHalf ? half : inner, height);
                waiting = isHalf ? height : 0;
                y += isHalf ? 0 : height;
            }
        }
        return y + waiting + around.bottom;
    }

    private static int height(Component part, int width) {
        return part instanceof Part rows ? rows.heightAt(width) : part.getPreferredSize().height;
    }

    @Override
    public void layoutContainer(Container stack) {
        place(stack, stack.getWidth(), Component::setBounds);
    }

    @Override
    public Dimension preferredLayoutSize(Container stack) {
        int width = stack.getWidth() > 0 ? stack.getWidth() : Look.pixels(TWO_COLUMNS);
        return new Dimension(width, heightAt(stack, width));
    }

    @Override
    public Dimension minimumLayoutSize(Container stack) {
        return new Dimension(Look.pixels(240), 0);
    }

    @Override
    public void addLayoutComponent(String name, Component part) {
        // parts need no constraints
    }

    @Override
    public void removeLayoutComponent(Component part) {
        // nothing is kept
    }
}
