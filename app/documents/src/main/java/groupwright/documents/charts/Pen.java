package groupwright.documents.charts;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.util.Objects;

/**
 * What charts are drawn with. Lengths are those of a screen at 100 %, y grows downwards.
 *
 * @param ink takes the marks
 * @param lettering measures text as the ink writes it
 * @param palette the colours
 */
public record Pen(Ink ink, TextWidths lettering, Palette palette) {
    public Pen {
        Objects.requireNonNull(ink, "ink");
        Objects.requireNonNull(lettering, "lettering");
        Objects.requireNonNull(palette, "palette");
    }

    /** A pen for Java's graphics, whose text is written by {@code lettering}. */
    public Pen(Graphics2D graphics, Lettering lettering, Palette palette) {
        this(new GraphicsInk(graphics, lettering), lettering, palette);
    }

    /** The nearest place where a line one pixel wide stays one. */
    static double sharp(double x) {
        return Math.floor(x) + 0.5;
    }

    void text(String text, double x, double baseline, Lettered style, Color colour) {
        if (text.isEmpty()) {
            return;
        }
        ink.write(text, x, baseline, style.font(), style.size(), colour);
    }

    void textCentred(String text, double middle, double baseline, Lettered style, Color colour) {
        text(text, middle - style.width(text, lettering) / 2, baseline, style, colour);
    }

    void line(double x1, double y1, double x2, double y2, double thickness, Color colour) {
        stroke(new Line2D.Double(x1, y1, x2, y2), new BasicStroke((float) thickness, BasicStroke.CAP_BUTT, 0), colour);
    }

    void dotted(double x1, double y, double x2, Color colour) {
        float[] dashes = {2, 3};
        dashed(new Line2D.Double(x1, y, x2, y), 1, dashes, colour);
    }

    /** @param dashes lengths of dash and gap in turn */
    void dashed(Shape shape, double thickness, float[] dashes, Color colour) {
        stroke(
                shape,
                new BasicStroke((float) thickness, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dashes, 0),
                colour);
    }

    void fill(Shape shape, Color colour) {
        ink.fill(shape, colour);
    }

    void stroke(Shape shape, double thickness, Color colour) {
        stroke(shape, new BasicStroke((float) thickness, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER), colour);
    }

    private void stroke(Shape shape, BasicStroke stroke, Color colour) {
        ink.draw(shape, stroke, colour);
    }
}
