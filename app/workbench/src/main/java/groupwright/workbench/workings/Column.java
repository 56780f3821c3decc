package groupwright.workbench.workings;

import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import java.awt.Color;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.Scrollable;

/** A column that is as wide as the room it scrolls in. */
final class Column extends JPanel implements Scrollable {

    Column() {
        super(new StackLayout(Metric.HALF_STEP.px()));
        setBorder(BorderFactory.createEmptyBorder(Metric.GAP.px(), Metric.GAP.px(), Metric.GAP.px(), Metric.GAP.px()));
    }

    /** All components inside, outer ones first. */
    List<Component> everything() {
        List<Component> found = new ArrayList<>();
        collect(this, found);
        return found;
    }

    private static void collect(Container container, List<Component> found) {
        for (Component child : container.getComponents()) {
            found.add(child);
            if (child instanceof Container inner) {
                collect(inner, found);
            }
        }
    }

    @Override
    public Color getBackground() {
        return Token.RAISED.colour();
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return new Dimension(Metric.WORKINGS.px(), getPreferredSize().height);
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return Metric.ROW.px();
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return visible.height - Metric.ROW.px();
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return false;
    }
}
