package groupwright.workbench.lists;

import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Token;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Rectangle;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.table.TableCellRenderer;

/** Paints what stands in one cell of the table; the cell in focus has a ring. */
public final class ContentCell extends JComponent implements TableCellRenderer, Accessible {
    private static final long serialVersionUID = 1L;
    private static final double RING = 2;

    /** What a cell holds. */
    public interface Content {
        void paint(Drawing drawing);

        /** For those who do not see it, and for the tip. */
        String name();
    }

    private final double padding;
    private transient Content content = NOTHING;
    private boolean focused;

    private static final Content NOTHING = new Content() {
        @Override
        public void paint(Drawing drawing) {
            // nothing stands here
        }

        @Override
        public String name() {
            return "";
        }
    };

    /** @param padding at the left, at 100 % */
    public ContentCell(double padding) {
        this.padding = padding;
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean selected, boolean hasFocus, int row, int column) {
        content = value instanceof Content given ? given : NOTHING;
        focused = hasFocus;
        setToolTipText(content.name().isEmpty() ? null : content.name());
        return this;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        try (Drawing all = Drawing.on(graphics, new Rectangle(0, 0, getWidth(), getHeight()))) {
            try (Drawing inner = all.part(padding, 0, all.width() - padding, all.height())) {
                content.paint(inner);
            }
            if (focused) {
                all.frame(0, 0, all.width(), all.height(), RING, Token.ACCENT);
            }
        }
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleCell();
        }
        return accessibleContext;
    }

    private final class AccessibleCell extends AccessibleJComponent {
        private static final long serialVersionUID = 1L;

        @Override
        public String getAccessibleName() {
            return content.name();
        }

        @Override
        public AccessibleRole getAccessibleRole() {
            return AccessibleRole.HYPERLINK;
        }
    }
}
