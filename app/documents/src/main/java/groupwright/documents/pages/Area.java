package groupwright.documents.pages;

import java.awt.geom.Rectangle2D;

/**
 * A rectangle on a page, in points from the page's upper left corner.
 *
 * @param x left edge
 * @param y upper edge
 * @param width at least 0
 * @param height at least 0
 */
public record Area(double x, double y, double width, double height) {
    public Area {
        if (!(width >= 0 && height >= 0)) {
            throw new IllegalArgumentException("an area has no negative sides, had " + width + " and " + height);
        }
    }

    static Area between(double left, double top, double right, double bottom) {
        return new Area(left, top, right - left, bottom - top);
    }

    /** Whether a point lies in it. */
    public boolean contains(double atX, double atY) {
        return rectangle().contains(atX, atY);
    }

    /** The same for drawing. */
    public Rectangle2D rectangle() {
        return new Rectangle2D.Double(x, y, width, height);
    }
}
