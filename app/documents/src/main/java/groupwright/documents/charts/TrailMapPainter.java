package groupwright.documents.charts;

import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** Draws a trail: a thread with a dot at each layer, and the stations as framed texts. */
final class TrailMapPainter {
    private static final double ABOVE_BASELINE = 10.5;
    private static final double DOT = 3.5;

    private TrailMapPainter() {}

    static void paint(Pen pen, TrailMapLayout layout) {
        List<TrailMapLayout.PlacedLayer> layers = layout.layers();
        double thread = Pen.sharp(TrailMapLayout.THREAD);
        pen.line(
                thread,
                middle(layers.get(0)),
                thread,
                middle(layers.get(layers.size() - 1)),
                1.5,
                pen.palette().edge());
        layers.forEach(layer -> paint(pen, layer, thread));
    }

    private static double middle(TrailMapLayout.PlacedLayer layer) {
        return layer.top() + TrailMapLayout.PAD + TrailMapLayout.LINE / 2;
    }

    private static void paint(Pen pen, TrailMapLayout.PlacedLayer layer, double thread) {
        double baseline = layer.top() + TrailMapLayout.PAD + ABOVE_BASELINE;
        for (int i = 0; i < layer.name().size(); i++) {
            pen.text(
                    layer.name().get(i),
                    0,
                    baseline + i * TrailMapLayout.LINE,
                    Lettered.LABEL,
                    pen.palette().muted());
        }
        Ellipse2D dot = new Ellipse2D.Double(thread - DOT, middle(layer) - DOT, 2 * DOT, 2 * DOT);
        boolean broken = layer.stations().isEmpty();
        pen.fill(dot, broken ? pen.palette().surface() : pen.palette().ink());
        pen.stroke(dot, 1.5, broken ? pen.palette().misses() : pen.palette().ink());
        if (broken) {
            pen.text(
                    layer.gap(),
                    thread + 14,
                    baseline,
                    Lettered.LABEL.strong(),
                    pen.palette().misses());
        }
        layer.stations().forEach(station -> paint(pen, station, thread));
    }

    private static void paint(Pen pen, TrailMapLayout.PlacedStation station, double thread) {
        pen.stroke(
                new Rectangle2D.Double(
                        Pen.sharp(station.x()),
                        Pen.sharp(station.y()),
                        Math.rint(station.width()),
                        Math.rint(station.height())),
                1,
                pen.palette().edge());
        double x = station.x() + TrailMapLayout.PAD;
        double y = station.y() + TrailMapLayout.PAD + ABOVE_BASELINE;
        String rest = station.name();
        for (String line : station.lines()) {
            String strong = line.startsWith(rest) ? rest : rest.startsWith(line) ? line : "";
            pen.text(strong, x, y, Lettered.LABEL.strong(), pen.palette().ink());
            double after = strong.isEmpty() ? 0 : Lettered.LABEL.strong().width(strong, pen.lettering());
            pen.text(
                    line.substring(strong.length()),
                    x + after,
                    y,
                    Lettered.LABEL,
                    pen.palette().ink());
            rest = strong.length() < rest.length() && !strong.isEmpty()
                    ? rest.substring(strong.length()).strip()
                    : "\u0000";
            y += TrailMapLayout.LINE;
        }
    }
}
