package groupwright.workbench.find;

import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Rectangle;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;

/** One thing found: its id muted, its title, what it is muted behind. */
final class FoundCell extends JPanel implements ListCellRenderer<Found> {
    private static final double MARK = 64;

    private transient Found found;
    private boolean selected;

    @Override
    public Component getListCellRendererComponent(
            JList<? extends Found> list, Found value, int index, boolean isSelected, boolean hasFocus) {
        found = value;
        selected = isSelected;
        getAccessibleContext().setAccessibleName(value.mark() + " " + value.title() + ", " + value.detail());
        return this;
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(0, Metric.ROW.px());
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        try (Drawing drawing = Drawing.on(graphics, new Rectangle(getWidth(), getHeight()))) {
            double middle = drawing.height() / 2;
            double left = Metric.STEP.units();
            double right = drawing.width() - Metric.STEP.units();
            drawing.box(0, 0, drawing.width(), drawing.height(), selected ? Token.WASH : Token.RAISED);
            if (selected) {
                drawing.level(0, drawing.width(), drawing.height() - 2, 2, Token.ACCENT);
            }
            double baseline = Type.TABLE.baseline(middle);
            double mark = Math.max(MARK, Type.TABLE.width(found.mark(), Weight.REGULAR) + Metric.STEP.units());
            drawing.text(found.mark(), left, baseline, Type.TABLE, Weight.REGULAR, Token.MUTED);
            double room = right - left - mark;
            String title = Type.TABLE.cut(found.title(), selected ? Weight.STRONG : Weight.REGULAR, room);
            drawing.text(
                    title, left + mark, baseline, Type.TABLE, selected ? Weight.STRONG : Weight.REGULAR, Token.INK);
            double used = Type.TABLE.width(title, selected ? Weight.STRONG : Weight.REGULAR) + Metric.STEP.units();
            if (room - used > MARK) {
                drawing.text(
                        Type.CAPTION.cut(found.detail(), Weight.REGULAR, room - used),
                        left + mark + used,
                        baseline,
                        Type.CAPTION,
                        Weight.REGULAR,
                        Token.MUTED);
            }
        }
    }
}
