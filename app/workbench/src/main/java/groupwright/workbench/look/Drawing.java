package groupwright.workbench.look;

import groupwright.documents.charts.Pen;
import java.awt.BasicStroke;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;

/**
 * What our own components are drawn on: a rectangle whose lengths are those of a screen at 100 %, at whatever scale it
 * appears. Level and upright lines and boxes fall on whole pixels of the device, so that they stay sharp at 125 or 150 %.
 */
public final class Drawing implements AutoCloseable {
    private static final float MITER = 10;
    private static final double CORNER = 3;

    private final Graphics2D graphics;
    private final double width;
    private final double height;

    private Drawing(Graphics2D graphics, double width, double height) {
        this.graphics = graphics;
        this.width = width;
        this.height = height;
    }

    /**
     * A drawing over a part of a component; close it when done.
     *
     * @param bounds in pixels of the component
     */
    public static Drawing on(Graphics graphics, Rectangle bounds) {
        Graphics2D own = (Graphics2D) graphics.create();
        own.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        own.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        own.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        own.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        double scale = Look.scale();
        own.translate(bounds.x, bounds.y);
        own.scale(scale, scale);
        return new Drawing(own, bounds.width / scale, bounds.height / scale);
    }

    /** A part of this drawing, with its own origin; close it when done. */
    public Drawing part(double x, double y, double partWidth, double partHeight) {
        Graphics2D own = (Graphics2D) graphics.create();
        own.translate(x, y);
        return new Drawing(own, partWidth, partHeight);
    }

    /** Width at 100 %. */
    public double width() {
        return width;
    }

    /** Height at 100 %. */
    public double height() {
        return height;
    }

    /** A filled shape. */
    public void fill(Shape shape, Token colour) {
        graphics.setColor(colour.colour());
        graphics.fill(shape);
    }

    /** The outline of a shape. */
    public void stroke(Shape shape, double thickness, Token colour) {
        graphics.setColor(colour.colour());
        graphics.setStroke(new BasicStroke((float) thickness, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
        graphics.draw(shape);
    }

    /**
     * The outline of a shape in dashes.
     *
     * @param dash length of a dash
     * @param gap length of the gap behind it
     */
    public void dashes(Shape shape, double thickness, double dash, double gap, Token colour) {
        graphics.setColor(colour.colour());
        float[] pattern = {(float) dash, (float) gap};
        graphics.setStroke(
                new BasicStroke((float) thickness, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, MITER, pattern, 0));
        graphics.draw(shape);
    }

    /** A filled box on whole pixels, at least one wide and high. */
    public void box(double x, double y, double boxWidth, double boxHeight, Token colour) {
        AffineTransform place = graphics.getTransform();
        double left = Math.round(place.getTranslateX() + x * place.getScaleX());
        double top = Math.round(place.getTranslateY() + y * place.getScaleY());
        double across = Math.max(1, Math.round(place.getTranslateX() + (x + boxWidth) * place.getScaleX()) - left);
        double down = Math.max(1, Math.round(place.getTranslateY() + (y + boxHeight) * place.getScaleY()) - top);
        Graphics2D device = (Graphics2D) graphics.create();
        device.setTransform(new AffineTransform());
        device.setColor(colour.colour());
        device.fill(new Rectangle2D.Double(left, top, across, down));
        device.dispose();
    }

    /** The outline of a box, inside it, on whole pixels. */
    public void frame(double x, double y, double boxWidth, double boxHeight, double thickness, Token colour) {
        box(x, y, boxWidth, thickness, colour);
        box(x, y + boxHeight - thickness, boxWidth, thickness, colour);
        box(x, y, thickness, boxHeight, colour);
        box(x + boxWidth - thickness, y, thickness, boxHeight, colour);
    }

    /** A filled box with slightly rounded corners and an outline inside it, as fields and buttons have. */
    public void rounded(double x, double y, double boxWidth, double boxHeight, Token inside, Token outline) {
        double arc = 2 * CORNER;
        Shape shape = new RoundRectangle2D.Double(x + 0.5, y + 0.5, boxWidth - 1, boxHeight - 1, arc, arc);
        fill(shape, inside);
        stroke(shape, 1, outline);
    }

    /** A level line whose upper edge is at {@code y}. */
    public void level(double from, double to, double y, double thickness, Token colour) {
        double whole = wholePixels(thickness);
        box(Math.min(from, to), y, Math.abs(to - from), whole, colour);
    }

    /** An upright line whose left edge is at {@code x}. */
    public void upright(double x, double from, double to, double thickness, Token colour) {
        double whole = wholePixels(thickness);
        box(x, Math.min(from, to), whole, Math.abs(to - from), colour);
    }

    /** The same thickness wherever a line falls. */
    private double wholePixels(double thickness) {
        double scale = graphics.getTransform().getScaleX();
        return Math.max(1, Math.floor(thickness * scale + 0.25)) / scale;
    }

    /** A text from its left end. */
    public void text(String text, double x, double baseline, Type type, Weight weight, Token colour) {
        if (!text.isEmpty()) {
            Look.lettering().write(graphics, text, x, baseline, weight.face(), type.size(), colour.colour());
        }
    }

    /** A text up to its right end. */
    public void textUpTo(String text, double right, double baseline, Type type, Weight weight, Token colour) {
        text(text, right - type.width(text, weight), baseline, type, weight, colour);
    }

    /**
     * A pen for signs of concepts and other parts of charts.
     *
     * @param ground what it stands on
     */
    public Pen pen(Token ground) {
        return new Pen(graphics, Look.lettering(), ScreenPalette.on(ground));
    }

    @Override
    public void close() {
        graphics.dispose();
    }
}
