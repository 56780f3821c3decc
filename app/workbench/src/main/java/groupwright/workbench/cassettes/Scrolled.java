package groupwright.workbench.cassettes;

import groupwright.workbench.look.Metric;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JScrollPane;

/** Panes that scroll, without a frame. */
final class Scrolled {
    private Scrolled() {}

    static JScrollPane of(JComponent shown) {
        JScrollPane pane = new JScrollPane(shown);
        pane.setBorder(BorderFactory.createEmptyBorder());
        pane.setOpaque(false);
        pane.getViewport().setOpaque(false);
        pane.getVerticalScrollBar().setUnitIncrement(Metric.CLOSE_ROW.px());
        return pane;
    }
}
