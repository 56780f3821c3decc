package groupwright.workbench.form;

import groupwright.workbench.components.Mark;
import groupwright.workbench.components.VerdictMark;
import groupwright.workbench.look.Look;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.util.Locale;
import javax.swing.Icon;

/** A mark before or behind the words of a label, which say what it means. */
record MarkIcon(Mark mark) implements Icon {
    @Override
    public void paintIcon(Component on, Graphics graphics, int x, int y) {
        Rectangle bounds = new Rectangle(x, y, getIconWidth(), getIconHeight());
        new VerdictMark(Locale.ROOT).paint((Graphics2D) graphics, bounds, mark);
    }

    @Override
    public int getIconWidth() {
        return Look.pixels(VerdictMark.SIZE);
    }

    @Override
    public int getIconHeight() {
        return Look.pixels(VerdictMark.SIZE);
    }
}
