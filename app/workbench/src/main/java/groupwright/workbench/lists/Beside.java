package groupwright.workbench.lists;

import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import java.awt.Component;
import java.awt.Dimension;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** Two things beside each other where there is room for both, else one under the other. */
public final class Beside extends JPanel {
    private static final long serialVersionUID = 1L;

    private static final int LEAST = 720;
    private static final double LEFT = 0.62;

    public Beside(JComponent left, JComponent right) {
        super(null);
        setOpaque(false);
        add(left);
        add(right);
    }

    private boolean fits(int width) {
        return width >= Look.pixels(LEAST);
    }

    private int heightOf(Component part, int width) {
        if (part.getWidth() != width) {
            part.setSize(width, Math.max(1, part.getHeight()));
            ((JComponent) part).doLayout();
        }
        return part.getPreferredSize().height;
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(Look.pixels(LEAST), run(Math.max(1, getWidth())));
    }

    @Override
    public void doLayout() {
        run(getWidth());
    }

    private int run(int width) {
        Component left = getComponent(0);
        Component right = getComponent(1);
        int gap = Metric.WIDE_GAP.px();
        if (!fits(width)) {
            int first = heightOf(left, width);
            int second = heightOf(right, width);
            left.setBounds(0, 0, width, first);
            right.setBounds(0, first + Metric.GAP.px(), width, second);
            return first + Metric.GAP.px() + second;
        }
        int wide = (int) (LEFT * (width - gap));
        int height = Math.max(heightOf(left, wide), heightOf(right, width - gap - wide));
        left.setBounds(0, 0, wide, height);
        right.setBounds(wide + gap, 0, width - gap - wide, height);
        return height;
    }
}
