package groupwright.workbench.components;

import groupwright.workbench.look.Drawing;
import java.awt.Graphics2D;
import java.awt.Rectangle;

/**
 * Paints one kind of value, alone in a component or in the cells of a table. Painters keep nothing.
 *
 * @param <V> an immutable value
 */
public interface Painter<V> {
    /** The least room the value wants. */
    Extent extent(V value);

    /** Paints a value over a drawing; what lies under it stays. */
    void paint(Drawing drawing, V value);

    /** What the value says, for those who do not see it. */
    String name(V value);

    /** Paints a value into a part of a component, in pixels of that component. */
    default void paint(Graphics2D graphics, Rectangle bounds, V value) {
        try (Drawing drawing = Drawing.on(graphics, bounds)) {
            paint(drawing, value);
        }
    }
}
