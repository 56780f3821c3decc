package groupwright.workbench.components;

import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Token;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Insets;
import java.awt.Rectangle;
import javax.swing.border.AbstractBorder;

/** The ring around what has the focus: 2 px in accent, outside the content. It always takes its room, so nothing moves. */
public final class FocusBorder extends AbstractBorder {
    private static final int THICKNESS = 2;
    /** Between ring and content. */
    private static final int AIR = 1;

    /** What the ring takes at each side, in pixels of a component; texts above a link are indented by it. */
    static int room() {
        return Look.pixels(THICKNESS + AIR);
    }

    @Override
    public Insets getBorderInsets(Component component, Insets insets) {
        int room = room();
        insets.set(room, room, room, room);
        return insets;
    }

    @Override
    public void paintBorder(Component component, Graphics graphics, int x, int y, int width, int height) {
        if (!component.isFocusOwner()) {
            return;
        }
        try (Drawing drawing = Drawing.on(graphics, new Rectangle(x, y, width, height))) {
            drawing.frame(0, 0, drawing.width(), drawing.height(), THICKNESS, Token.ACCENT);
        }
    }
}
