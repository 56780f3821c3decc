package groupwright.workbench.components;

import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Token;
import java.awt.Color;
import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;

/** A component or drawing painted without a window, to be probed in lengths of 100 %. */
record Shot(BufferedImage image, double scale) {
    private static final int LIKE = 24;

    /** A component at its size, painted on its ground as a screen with this many pixels a point would. */
    static Shot of(Component component, Token ground, int dense) {
        for (int pass = 0; pass < 3; pass++) { // heights follow from widths, and without a window nobody asks again
            layOut(component);
            invalidate(component);
        }
        BufferedImage image = blank(component.getWidth() * dense, component.getHeight() * dense, ground);
        Graphics2D graphics = image.createGraphics();
        graphics.scale(dense, dense);
        component.print(graphics);
        graphics.dispose();
        return new Shot(image, Look.scale() * dense);
    }

    /** A component at the size it wants. */
    static Shot of(Component component, Token ground) {
        component.setSize(component.getPreferredSize());
        return of(component, ground, 1);
    }

    /** One value through its painter. */
    static <V> Shot of(Painter<V> painter, V value, int width, int height) {
        Rectangle bounds = new Rectangle(0, 0, Look.pixels(width), Look.pixels(height));
        BufferedImage image = blank(bounds.width, bounds.height, Token.RAISED);
        Graphics2D graphics = image.createGraphics();
        painter.paint(graphics, bounds, value);
        graphics.dispose();
        return new Shot(image, Look.scale());
    }

    private static BufferedImage blank(int width, int height, Token ground) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(ground.colour());
        graphics.fillRect(0, 0, width, height);
        graphics.dispose();
        return image;
    }

    private static void layOut(Component component) {
        if (component instanceof Container container) {
            container.doLayout();
            for (Component child : container.getComponents()) {
                layOut(child);
            }
        }
    }

    private static void invalidate(Component component) {
        component.invalidate();
        if (component instanceof Container container) {
            for (Component child : container.getComponents()) {
                invalidate(child);
            }
        }
    }

    /** The colour at a place. */
    Color at(double x, double y) {
        return new Color(image.getRGB((int) (x * scale), (int) (y * scale)));
    }

    /** How much of a rectangle has nearly this colour, in squared lengths of 100 %. */
    double area(Token colour, double left, double top, double right, double bottom) {
        Color wanted = colour.colour();
        int count = 0;
        for (int x = (int) Math.round(left * scale); x < Math.round(right * scale) && x < image.getWidth(); x++) {
            for (int y = (int) Math.round(top * scale); y < Math.round(bottom * scale) && y < image.getHeight(); y++) {
                Color found = new Color(image.getRGB(x, y));
                int away = Math.abs(found.getRed() - wanted.getRed())
                        + Math.abs(found.getGreen() - wanted.getGreen())
                        + Math.abs(found.getBlue() - wanted.getBlue());
                count += away <= LIKE ? 1 : 0;
            }
        }
        return count / (scale * scale);
    }

    double area(Token colour) {
        return area(colour, 0, 0, image.getWidth() / scale, image.getHeight() / scale);
    }

    /** A drawing over an image of this size. */
    static Shot drawn(int width, int height, java.util.function.Consumer<Drawing> paint) {
        BufferedImage image = blank(Look.pixels(width), Look.pixels(height), Token.RAISED);
        Graphics2D graphics = image.createGraphics();
        try (Drawing drawing = Drawing.on(graphics, new Rectangle(0, 0, image.getWidth(), image.getHeight()))) {
            paint.accept(drawing);
        }
        graphics.dispose();
        return new Shot(image, Look.scale());
    }
}
