package groupwright.workbench.components;

import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Type;
import java.awt.Graphics;
import java.awt.Insets;
import java.awt.Rectangle;
import javax.accessibility.AccessibleRole;

/** A text that does something: accent, heavier, no line; a click, Enter or Space does it. Disabled, it is muted. */
public final class ActionLink extends PaintedView<String> {
    private static final LinkText IDLE = new LinkText(LinkText.Kind.IDLE, Type.BODY);

    public ActionLink(String text, Runnable done) {
        super(new LinkText(LinkText.Kind.DOES, Type.BODY), text, AccessibleRole.PUSH_BUTTON);
        Press.install(this, done);
    }

    @Override
    public void setEnabled(boolean enabled) {
        super.setEnabled(enabled);
        setFocusable(enabled);
        repaint();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        if (isEnabled()) {
            super.paintComponent(graphics);
            return;
        }
        Insets insets = getInsets();
        Rectangle room = new Rectangle(
                insets.left,
                insets.top,
                getWidth() - insets.left - insets.right,
                getHeight() - insets.top - insets.bottom);
        try (Drawing drawing = Drawing.on(graphics, room)) {
            IDLE.paint(drawing, value());
        }
    }
}
