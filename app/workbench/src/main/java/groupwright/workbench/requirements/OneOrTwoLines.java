package groupwright.workbench.requirements;

import groupwright.workbench.look.Metric;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;

/** Two components side by side where there is room, else the second below the first. */
final class OneOrTwoLines implements LayoutManager {
    /** Where the second stands in one line. */
    enum Second {
        BEHIND_THE_FIRST,
        AT_THE_END
    }

    private final Second second;
    private final int firstIndent;
    private final int secondIndent;

    /**
     * @param firstIndent of the first from the left edge, in pixels of the component
     * @param secondIndent of the second where it stands below
     */
    OneOrTwoLines(Second second, int firstIndent, int secondIndent) {
        this.second = second;
        this.firstIndent = firstIndent;
        this.secondIndent = secondIndent;
    }

    private static int oneLine(Container parent) {
        return parent.getComponent(0).getPreferredSize().width
                + Metric.GAP.px()
                + parent.getComponent(1).getPreferredSize().width;
    }

    @Override
    public Dimension preferredLayoutSize(Container parent) {
        Dimension one = parent.getComponent(0).getPreferredSize();
        Dimension two = parent.getComponent(1).getPreferredSize();
        boolean fits = parent.getWidth() == 0 || oneLine(parent) <= parent.getWidth();
        int height = fits ? Math.max(one.height, two.height) : one.height + Metric.HALF_STEP.px() + two.height;
        return new Dimension(oneLine(parent), height);
    }

    @Override
    public Dimension minimumLayoutSize(Container parent) {
        return new Dimension(0, preferredLayoutSize(parent).height);
    }

    @Override
    public void layoutContainer(Container parent) {
        Component first = parent.getComponent(0);
        Component other = parent.getComponent(1);
        Dimension one = first.getPreferredSize();
        Dimension two = other.getPreferredSize();
        if (oneLine(parent) > parent.getWidth()) {
            first.setBounds(firstIndent, 0, Math.min(one.width, parent.getWidth()), one.height);
            other.setBounds(
                    secondIndent, one.height + Metric.HALF_STEP.px(), parent.getWidth() - secondIndent, two.height);
            return;
        }
        int line = Math.max(one.height, two.height);
        first.setBounds(firstIndent, (line - one.height) / 2, one.width, one.height);
        int x = second == Second.AT_THE_END
                ? parent.getWidth() - two.width - Metric.STEP.px()
                : one.width + Metric.STEP.px();
        other.setBounds(x, (line - two.height) / 2, two.width, two.height);
    }

    @Override
    public void addLayoutComponent(String name, Component component) {
        // the two are found by position
    }

    @Override
    public void removeLayoutComponent(Component component) {
        // the two are found by position
    }
}
