package groupwright.documents.charts;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.util.Objects;

/**
 * Marks on Java's graphics.
 *
 * @param graphics takes the shapes
 * @param lettering takes the text
 */
record GraphicsInk(Graphics2D graphics, Lettering lettering) implements Ink {
    GraphicsInk {
        Objects.requireNonNull(graphics, "graphics");
        Objects.requireNonNull(lettering, "lettering");
    }

    @Override
    public void fill(Shape shape, Color colour) {
        graphics.setColor(colour);
        graphics.fill(shape);
    }

    @Override
    public void draw(Shape shape, BasicStroke stroke, Color colour) {
        graphics.setColor(colour);
        graphics.setStroke(stroke);
        graphics.draw(shape);
    }

    @Override
    public void write(String text, double x, double baseline, InterFont font, double size, Color colour) {
        lettering.write(graphics, text, x, baseline, font, size, colour);
    }
}
