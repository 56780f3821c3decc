package groupwright.workbench.workings;

import groupwright.workbench.look.Metric;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;

/** A pin on the left over the whole height, a text beside it, and a mark at the right end where there is one. */
final class PinLayout implements LayoutManager {
    @Override
    public void addLayoutComponent(String name, Component component) {
        // every child is laid out
    }

    @Override
    public void removeLayoutComponent(Component component) {
        // every child is laid out
    }

    private static int pin(Container parent) {
        return parent.getComponent(0).getPreferredSize().width + Metric.STEP.px();
    }

    private static int mark(Container parent) {
        return parent.getComponentCount() < 3
                ? 0
                : parent.getComponent(2).getPreferredSize().width + Metric.HALF_STEP.px();
    }

    @Override
    public Dimension preferredLayoutSize(Container parent) {
        int room = parent.getWidth() - pin(parent) - mark(parent);
        int text = StackLayout.heightAt(parent.getComponent(1), room);
        return new Dimension(
                pin(parent) + mark(parent),
                Math.max(parent.getComponent(0).getPreferredSize().height, text + Metric.HALF_STEP.px()));
    }

    @Override
    public Dimension minimumLayoutSize(Container parent) {
        return preferredLayoutSize(parent);
    }

    @Override
    public void layoutContainer(Container parent) {
        int left = pin(parent);
        parent.getComponent(0).setBounds(0, 0, left - Metric.STEP.px(), parent.getHeight());
        int room = parent.getWidth() - left - mark(parent);
        Component text = parent.getComponent(1);
        int height = StackLayout.heightAt(text, room);
        int line = parent.getComponent(0).getPreferredSize().height;
        text.setBounds(
                left, Math.max(0, (Math.min(line, parent.getHeight()) - Math.min(height, line)) / 2), room, height);
        if (parent.getComponentCount() > 2) {
            Component mark = parent.getComponent(2);
            Dimension size = mark.getPreferredSize();
            mark.setBounds(parent.getWidth() - size.width, (line - size.height) / 2, size.width, size.height);
        }
    }
}
