package groupwright.workbench.lists;

import groupwright.workbench.look.Metric;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** Facets of a list, in as many lines as they need. */
public final class Wrapped extends JPanel {
    private static final long serialVersionUID = 1L;

    public Wrapped(JComponent inside) {
        super(new BorderLayout());
        setOpaque(false);
        setBorder(BorderFactory.createEmptyBorder(0, 0, 0, Metric.STEP.px()));
        add(inside);
    }

    @Override
    public Dimension getPreferredSize() {
        Container inside = (Container) getComponent(0);
        int width = Math.max(1, getWidth() - getInsets().right);
        if (getWidth() == 0) {
            return inside.getPreferredSize();
        }
        inside.setSize(width, Short.MAX_VALUE);
        inside.doLayout();
        int height = 0;
        for (Component part : inside.getComponents()) {
            height = Math.max(height, part.getY() + part.getHeight());
        }
        return new Dimension(width, height);
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean other = width != getWidth();
        super.setBounds(x, y, width, height);
        if (other) {
            revalidate();
        }
    }
}
