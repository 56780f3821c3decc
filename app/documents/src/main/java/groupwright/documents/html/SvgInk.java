package groupwright.documents.html;

import groupwright.documents.charts.Ink;
import groupwright.documents.charts.InterFont;
import groupwright.documents.charts.TextWidths;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes the marks of a chart as elements of Scalable Vector Graphics (SVG 1.1, W3C). Each text says how wide it is, so that
 * the drawing holds together in whatever font the reader has.
 */
final class SvgInk implements Ink {
    private final Html html;
    private final TextWidths widths;

    SvgInk(Html html, TextWidths widths) {
        this.html = html;
        this.widths = widths;
    }

    @Override
    public void fill(Shape shape, Color colour) {
        html.shape("path", "class", "fill-" + Hue.of(colour), "d", way(shape)).line();
    }

    @Override
    public void draw(Shape shape, BasicStroke stroke, Color colour) {
        List<String> attributes = new ArrayList<>(List.of(
                "class",
                "line-" + Hue.of(colour),
                "d",
                way(shape),
                "stroke-width",
                Decimals.of(stroke.getLineWidth())));
        if (stroke.getDashArray() != null) { // Java's way to say solid
            attributes.add("stroke-dasharray");
            attributes.add(dashes(stroke.getDashArray()));
        }
        html.shape("path", attributes.toArray(String[]::new)).line();
    }

    @Override
    public void write(String text, double x, double baseline, InterFont font, double size, Color colour) {
        html.element(
                        "text",
                        text,
                        "class",
                        "fill-" + Hue.of(colour) + (font == InterFont.SEMIBOLD ? " strong" : ""),
                        "x",
                        Decimals.of(x),
                        "y",
                        Decimals.of(baseline),
                        "font-size",
                        Decimals.of(size),
                        "textLength",
                        Decimals.of(widths.width(text, font, size)),
                        "lengthAdjust",
                        "spacingAndGlyphs")
                .line();
    }

    private static String dashes(float[] lengths) {
        List<String> texts = new ArrayList<>();
        for (float length : lengths) {
            texts.add(Decimals.of(length));
        }
        return String.join(" ", texts);
    }

    private static String way(Shape shape) {
        StringBuilder way = new StringBuilder();
        double[] points = new double[6];
        for (PathIterator at = shape.getPathIterator(null); !at.isDone(); at.next()) {
            switch (at.currentSegment(points)) {
                case PathIterator.SEG_MOVETO -> way.append('M').append(numbers(points, 2));
                case PathIterator.SEG_LINETO -> way.append('L').append(numbers(points, 2));
                case PathIterator.SEG_QUADTO -> way.append('Q').append(numbers(points, 4));
                case PathIterator.SEG_CUBICTO -> way.append('C').append(numbers(points, 6));
                default -> way.append('Z');
            }
        }
        return way.toString();
    }

    private static String numbers(double[] points, int count) {
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            texts.add(Decimals.of(points[i]));
        }
        return String.join(" ", texts);
    }
}
