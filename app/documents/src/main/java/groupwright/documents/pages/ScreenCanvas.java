package groupwright.documents.pages;

import groupwright.documents.charts.Chart;
import groupwright.documents.charts.ChartSize;
import groupwright.documents.charts.InterFont;
import groupwright.documents.charts.Lettering;
import groupwright.documents.charts.Palette;
import groupwright.documents.charts.Pen;
import groupwright.documents.trace.Use;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Set;

/** Paints the marks of a page on a screen; a unit of the graphics is a point. */
final class ScreenCanvas implements Canvas {
    private static final float MITER_LIMIT = 10; // that of PDF
    private static final double PATCH_ABOVE = 0.86; // of the size: clears the ascenders

    private final Graphics2D graphics;
    private final FontShelf shelf;
    private final Set<Use> changed;

    /**
     * @param changed numbers that get a patch and a doubled line
     */
    ScreenCanvas(Graphics2D graphics, FontShelf shelf, Set<Use> changed) {
        this.graphics = graphics;
        this.shelf = shelf;
        this.changed = changed;
    }

    @Override
    public void number(Piece.Number number, double x, double baseline) {
        if (!changed.contains(number.use())) {
            return;
        }
        double size = number.size();
        double left = x - 1.2;
        double width = number.valueWidth() + 2.4;
        double top = baseline - PATCH_ABOVE * size;
        fillBox(left, top, width, baseline + 3.4 - top, Paper.CHANGED);
        for (double y : new double[] {baseline + 2, baseline + 3.4}) {
            line(left, y, left + width, y, 0.6, Paper.INK);
        }
    }

    @Override
    public void text(Run run, double x, double baseline) {
        fill(shelf.shapes().outline(run, shelf, x, baseline), run.style().colour());
    }

    @Override
    public void chart(Chart chart, ChartSize size, Typesetter typesetter, double x, double top, double scale) {
        Graphics2D own = (Graphics2D) graphics.create();
        own.translate(x, top);
        own.scale(scale, scale);
        own.clip(new Rectangle2D.Double(0, 0, size.width(), size.height()));
        chart.paint(new Pen(own, new Letters(shelf, typesetter.geometry()), Palette.PAPER), size.width());
        own.dispose();
    }

    @Override
    public void line(double x1, double y1, double x2, double y2, double thickness, Color colour) {
        draw(new Line2D.Double(x1, y1, x2, y2), plain(thickness), colour);
    }

    @Override
    public void dotted(double x1, double y, double x2, double thickness, Color colour) {
        float[] dots = {(float) thickness, (float) (2 * thickness)};
        BasicStroke stroke =
                new BasicStroke((float) thickness, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, MITER_LIMIT, dots, 0);
        draw(new Line2D.Double(x1, y, x2, y), stroke, colour);
    }

    @Override
    public void fillBox(double x, double top, double width, double height, Color colour) {
        fill(new Rectangle2D.Double(x, top, width, height), colour);
    }

    @Override
    public void strokeBox(double x, double top, double width, double height, double thickness, Color colour) {
        draw(new Rectangle2D.Double(x, top, width, height), plain(thickness), colour);
    }

    @Override
    public void fillTriangle(double x1, double y1, double x2, double y2, double x3, double y3, Color colour) {
        Path2D triangle = new Path2D.Double();
        triangle.moveTo(x1, y1);
        triangle.lineTo(x2, y2);
        triangle.lineTo(x3, y3);
        triangle.closePath();
        fill(triangle, colour);
    }

    @Override
    public void fillHalfDisc(double x, double y, double radius, Color colour) {
        fill(new Arc2D.Double(x - radius, y - radius, 2 * radius, 2 * radius, -90, 180, Arc2D.CHORD), colour);
    }

    @Override
    public void ring(double x, double y, double radius, double thickness, Color colour) {
        draw(new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius), plain(thickness), colour);
    }

    /** Where links, anchors and headings are is known beside the picture. */
    @Override
    public void link(String anchor, double left, double top, double right, double bottom) {}

    @Override
    public void anchor(String name, double left, double top) {}

    @Override
    public void outline(Outlined heading, double top) {}

    private static BasicStroke plain(double thickness) {
        return new BasicStroke((float) thickness, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, MITER_LIMIT);
    }

    private void fill(Shape shape, Color colour) {
        graphics.setColor(colour);
        graphics.fill(shape);
    }

    private void draw(Shape shape, BasicStroke stroke, Color colour) {
        graphics.setColor(colour);
        graphics.setStroke(stroke);
        graphics.draw(shape);
    }

    /** Text of charts, measured and placed as the PDF does. */
    private static final class Letters extends ChartWidths implements Lettering {
        private final FontShelf shelf;

        Letters(FontShelf shelf, PageGeometry geometry) {
            super(new Typesetter(
                    shelf, geometry)); // of its own: those of layouts remember signs, and are for one thread
            this.shelf = shelf;
        }

        @Override
        public void write(
                Graphics2D target, String text, double x, double baseline, InterFont font, double size, Color colour) {
            target.setColor(colour);
            double at = x;
            for (Run run : runs(text, font, size, colour)) {
                target.fill(shelf.shapes().outline(run, shelf, at, baseline));
                at += run.width();
            }
        }
    }
}
