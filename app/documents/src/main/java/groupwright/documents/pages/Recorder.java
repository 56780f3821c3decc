package groupwright.documents.pages;

import groupwright.documents.charts.Chart;
import groupwright.documents.charts.ChartSize;
import groupwright.documents.charts.InterFont;
import groupwright.documents.charts.Lettering;
import groupwright.documents.charts.Palette;
import groupwright.documents.charts.Pen;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;

/** Keeps the marks of a page, so that it can be painted later without what it was laid out with. */
final class Recorder implements Canvas {
    private final List<Stroke> strokes = new ArrayList<>();
    private final List<Sighting> numbers = new ArrayList<>();
    private final List<Jump> jumps = new ArrayList<>();
    private final List<Anchor> anchors = new ArrayList<>();
    private final List<Title> titles = new ArrayList<>();

    /** A mark, drawn on any canvas. */
    interface Stroke {
        void on(Canvas canvas);
    }

    record Sighting(Piece.Number number, double x, double baseline) {}

    record Jump(String anchor, Area area) {}

    record Anchor(String name, double top) {}

    record Title(Outlined heading, double top) {}

    /** What was drawn, in order; places that are no marks are kept beside it. */
    record Recorded(
            List<Stroke> strokes, List<Sighting> numbers, List<Jump> jumps, List<Anchor> anchors, List<Title> titles) {
        Recorded {
            strokes = List.copyOf(strokes);
            numbers = List.copyOf(numbers);
            jumps = List.copyOf(jumps);
            anchors = List.copyOf(anchors);
            titles = List.copyOf(titles);
        }
    }

    Recorded recorded() {
        return new Recorded(strokes, numbers, jumps, anchors, titles);
    }

    @Override
    public void number(Piece.Number number, double x, double baseline) {
        numbers.add(new Sighting(number, x, baseline));
        strokes.add(canvas -> canvas.number(number, x, baseline));
    }

    @Override
    public void text(Run run, double x, double baseline) {
        strokes.add(canvas -> canvas.text(run, x, baseline));
    }

    @Override
    public void chart(Chart chart, ChartSize size, Typesetter typesetter, double x, double top, double scale) {
        proofread(chart, size, typesetter);
        strokes.add(canvas -> canvas.chart(chart, size, typesetter, x, top, scale));
    }

    /** Paints a chart where nobody sees it: only then is it known which signs have no glyph. */
    private static void proofread(Chart chart, ChartSize size, Typesetter typesetter) {
        Graphics2D nowhere = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
        chart.paint(new Pen(nowhere, new Proofs(typesetter), Palette.PAPER), size.width());
        nowhere.dispose();
    }

    private static final class Proofs extends ChartWidths implements Lettering {
        Proofs(Typesetter typesetter) {
            super(typesetter);
        }

        @Override
        public void write(
                Graphics2D target, String text, double x, double baseline, InterFont font, double size, Color colour) {
            runs(text, font, size, colour);
        }
    }

    @Override
    public void line(double x1, double y1, double x2, double y2, double thickness, Color colour) {
        strokes.add(canvas -> canvas.line(x1, y1, x2, y2, thickness, colour));
    }

    @Override
    public void dotted(double x1, double y, double x2, double thickness, Color colour) {
        strokes.add(canvas -> canvas.dotted(x1, y, x2, thickness, colour));
    }

    @Override
    public void fillBox(double x, double top, double width, double height, Color colour) {
        strokes.add(canvas -> canvas.fillBox(x, top, width, height, colour));
    }

    @Override
    public void strokeBox(double x, double top, double width, double height, double thickness, Color colour) {
        strokes.add(canvas -> canvas.strokeBox(x, top, width, height, thickness, colour));
    }

    @Override
    public void fillTriangle(double x1, double y1, double x2, double y2, double x3, double y3, Color colour) {
        strokes.add(canvas -> canvas.fillTriangle(x1, y1, x2, y2, x3, y3, colour));
    }

    @Override
    public void fillHalfDisc(double x, double y, double radius, Color colour) {
        strokes.add(canvas -> canvas.fillHalfDisc(x, y, radius, colour));
    }

    @Override
    public void ring(double x, double y, double radius, double thickness, Color colour) {
        strokes.add(canvas -> canvas.ring(x, y, radius, thickness, colour));
    }

    @Override
    public void link(String anchor, double left, double top, double right, double bottom) {
        jumps.add(new Jump(anchor, Area.between(left, top, right, bottom)));
    }

    @Override
    public void anchor(String name, double left, double top) {
        anchors.add(new Anchor(name, top));
    }

    @Override
    public void outline(Outlined heading, double top) {
        titles.add(new Title(heading, top));
    }
}
