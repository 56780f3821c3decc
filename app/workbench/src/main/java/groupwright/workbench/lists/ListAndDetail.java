package groupwright.workbench.lists;

import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import java.awt.BorderLayout;
import java.awt.Color;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTable;
import javax.swing.ScrollPaneConstants;

/** A list that scrolls, and below it, where something is chosen, what is known of that. */
public final class ListAndDetail extends JPanel {
    private static final long serialVersionUID = 1L;

    private final JScrollPane list;
    private final JSplitPane split = new JSplitPane(JSplitPane.VERTICAL_SPLIT);
    private transient Optional<JComponent> detail = Optional.empty();
    private int listHeight = -1;

    public ListAndDetail(JComponent list) {
        super(new BorderLayout());
        this.list = scroll(list);
        this.list.setBorder(BorderFactory.createEmptyBorder(0, Metric.STEP.px(), 0, 0));
        if (list instanceof JTable table) {
            this.list.setColumnHeaderView(table.getTableHeader());
        }
        split.setOpaque(false);
        setOpaque(true);
        split.setResizeWeight(1);
        split.setBorder(BorderFactory.createEmptyBorder());
        split.setContinuousLayout(true);
        add(this.list);
    }

    private static JScrollPane scroll(JComponent inside) {
        JScrollPane pane = new JScrollPane(
                inside,
                ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
                ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        pane.setBorder(BorderFactory.createEmptyBorder());
        pane.getVerticalScrollBar().setUnitIncrement(Metric.ROW.px());
        pane.setOpaque(false);
        pane.getViewport().setOpaque(false);
        return pane;
    }

    /** Shows something below the list; the room is shared as it was before. */
    public void detail(JComponent next) {
        if (detail.equals(Optional.of(next))) {
            return;
        }
        if (detail.isPresent()) {
            listHeight = split.getDividerLocation();
        }
        detail = Optional.of(next);
        removeAll();
        split.setTopComponent(list);
        split.setBottomComponent(scroll(next));
        split.setDividerLocation(listHeight > 0 ? listHeight : Math.max(Look.pixels(200), getHeight() * 11 / 20));
        add(split);
        revalidate();
        repaint();
    }

    /** Leaves the list alone. */
    public void noDetail() {
        if (detail.isPresent()) {
            listHeight = split.getDividerLocation();
            detail = Optional.empty();
            removeAll();
            split.setTopComponent(null);
            split.setBottomComponent(null);
            add(list);
            revalidate();
            repaint();
        }
    }

    @Override
    public Color getBackground() {
        return split == null ? super.getBackground() : Token.SURFACE.colour();
    }
}
