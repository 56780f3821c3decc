package groupwright.documents.charts;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;

/** Takes the marks of a chart, in their order. Lengths are those of a screen at 100 %, y grows downwards. */
public interface Ink {
    /** Fills a shape. */
    void fill(Shape shape, Color colour);

    /** Draws along a shape. */
    void draw(Shape shape, BasicStroke stroke, Color colour);

    /** Writes a text that starts at {@code x}. */
    void write(String text, double x, double baseline, InterFont font, double size, Color colour);
}
