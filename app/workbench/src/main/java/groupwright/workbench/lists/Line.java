package groupwright.workbench.lists;

import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Insets;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** Things beside each other that go on in the next line where there is no room, as words do. */
public final class Line extends JPanel {
    private static final long serialVersionUID = 1L;

    private enum Placing {
        NOW,
        NOT_YET
    }

    private final int gap;

    /** @param gap between them, in pixels at 100 % */
    public Line(int gap, JComponent... parts) {
        super(null);
        this.gap = gap;
        setOpaque(false);
        for (JComponent part : parts) {
            add(part);
        }
    }

    @Override
    public Dimension getPreferredSize() {
        int width = getWidth() > 0 ? getWidth() : Integer.MAX_VALUE;
        return new Dimension(Math.min(width, natural()), run(width, Placing.NOT_YET));
    }

    private int natural() {
        int width = 0;
        for (Component part : getComponents()) {
            width += part.isVisible() ? part.getPreferredSize().width + Look.pixels(gap) : 0;
        }
        return width;
    }

    @Override
    public void doLayout() {
        run(getWidth(), Placing.NOW);
    }

    private int run(int width, Placing placing) {
        Insets insets = getInsets();
        int room = Math.max(1, width - insets.left - insets.right);
        int y = insets.top;
        List<Component> row = new ArrayList<>();
        int used = 0;
        for (Component part : getComponents()) {
            if (part.isVisible()) {
                int wide = Math.min(part.getPreferredSize().width, room);
                if (!row.isEmpty() && used + wide > room) {
                    y += row(row, insets.left, y, room, placing);
                    row.clear();
                    used = 0;
                }
                row.add(part);
                used += wide + Look.pixels(gap);
            }
        }
        return y + row(row, insets.left, y, room, placing) + insets.bottom;
    }

    /** One row, its texts on one baseline. */
    private int row(List<Component> row, int left, int y, int room, Placing placing) {
        int above = 0;
        int below = 0;
        for (Component part : row) {
            Dimension size = part.getPreferredSize();
            above = Math.max(above, baseline(part, size));
            below = Math.max(below, size.height - baseline(part, size));
        }
        int height = Math.max(Metric.HIT.px(), above + below);
        int base = y + above + (height - above - below) / 2;
        int x = left;
        for (Component part : row) {
            Dimension size = part.getPreferredSize();
            int wide = Math.min(size.width, room);
            if (placing == Placing.NOW) {
                part.setBounds(x, base - baseline(part, size), wide, size.height);
            }
            x += wide + Look.pixels(gap);
        }
        return height;
    }

    private static int baseline(Component part, Dimension size) {
        int own = part.getBaseline(size.width, size.height);
        return own >= 0 ? own : size.height * 2 / 3; // about where text of that height would stand
    }
}
