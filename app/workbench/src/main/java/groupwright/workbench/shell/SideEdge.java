package groupwright.workbench.shell;

import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Rectangle;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.function.IntConsumer;
import javax.swing.JComponent;

/** The left edge of Workings, by which it is made wider. */
final class SideEdge extends JComponent {
    SideEdge(IntConsumer widen) {
        setCursor(Cursor.getPredefinedCursor(Cursor.W_RESIZE_CURSOR));
        MouseAdapter drag = new MouseAdapter() {
            private int from;

            @Override
            public void mousePressed(MouseEvent event) {
                from = event.getXOnScreen();
            }

            @Override
            public void mouseDragged(MouseEvent event) {
                widen.accept(from - event.getXOnScreen());
                from = event.getXOnScreen();
            }
        };
        addMouseListener(drag);
        addMouseMotionListener(drag);
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(Metric.HALF_STEP.px(), 0);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        try (Drawing drawing = Drawing.on(graphics, new Rectangle(getWidth(), getHeight()))) {
            drawing.box(0, 0, drawing.width(), drawing.height(), Token.RAISED);
            drawing.upright(0, 0, drawing.height(), 1, Token.HAIRLINE);
        }
    }
}
