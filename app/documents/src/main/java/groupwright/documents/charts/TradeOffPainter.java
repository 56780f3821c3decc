package groupwright.documents.charts;

import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** Draws a trade-off. */
final class TradeOffPainter {
    private static final double DISC = 2.6;
    private static final double RING = 2.2;
    private static final double SELECTED = 8;
    private static final double TODAY = 4.5;

    private final TradeOff chart;
    private final TradeOffLayout layout;
    private final TradeOffWords words;

    TradeOffPainter(TradeOff chart, TradeOffLayout layout) {
        this.chart = chart;
        this.layout = layout;
        this.words = new TradeOffWords(chart);
    }

    void paint(Pen pen) {
        grid(pen);
        chart.points().stream()
                .filter(point -> point.mark() == TradeOff.Mark.FAILS)
                .forEach(point -> mark(pen, point));
        edge(pen);
        chart.points().stream()
                .filter(point -> point.mark() != TradeOff.Mark.FAILS)
                .forEach(point -> mark(pen, point));
        chart.selected().ifPresent(at -> ring(pen, chart.points().get(at)));
        chart.points().stream().filter(point -> !point.name().isEmpty()).forEach(point -> name(pen, point));
        legend(pen);
    }

    private void grid(Pen pen) {
        List<Double> ticks = layout.up().ticks(words.ticksUp());
        List<String> texts = words.up(ticks);
        for (int i = 0; i < ticks.size(); i++) {
            double y = Pen.sharp(layout.up().place(ticks.get(i)));
            pen.line(TradeOffLayout.LEFT, y, layout.right(), y, 1, pen.palette().hairline());
            right(pen, texts.get(i), TradeOffLayout.LEFT - 6, y + 4);
        }
        ticks = layout.across().ticks(words.ticksAcross());
        texts = words.across(ticks);
        for (int i = 0; i < ticks.size(); i++) {
            double x = Pen.sharp(layout.across().place(ticks.get(i)));
            pen.line(x, TradeOffLayout.TOP, x, layout.bottom(), 1, pen.palette().hairline());
            pen.textCentred(
                    texts.get(i),
                    x,
                    layout.bottom() + 15,
                    Lettered.LABEL,
                    pen.palette().muted());
        }
        pen.line(
                TradeOffLayout.LEFT,
                Pen.sharp(layout.bottom()),
                layout.right(),
                Pen.sharp(layout.bottom()),
                1,
                pen.palette().edge());
    }

    private static void right(Pen pen, String text, double end, double baseline) {
        double width = Lettered.LABEL.width(text, pen.lettering());
        pen.text(text, end - width, baseline, Lettered.LABEL, pen.palette().muted());
    }

    /** Steps down to the right, for what lies above and right of them is worse in both. */
    private void edge(Pen pen) {
        List<TradeOff.Point> edge = chart.edge();
        Path2D line = new Path2D.Double();
        line.moveTo(layout.x(edge.get(0)), TradeOffLayout.TOP);
        for (int i = 0; i < edge.size(); i++) {
            TradeOff.Point point = edge.get(i);
            line.lineTo(layout.x(point), layout.y(point));
            double next = i + 1 < edge.size() ? layout.x(edge.get(i + 1)) : layout.right();
            line.lineTo(next, layout.y(point));
        }
        pen.stroke(line, 1.4, pen.palette().accent());
    }

    private void mark(Pen pen, TradeOff.Point point) {
        double x = layout.x(point);
        double y = layout.y(point);
        switch (point.mark()) {
            case PASSES -> pen.fill(disc(x, y, DISC), pen.palette().ink());
            case FAILS -> {
                pen.fill(disc(x, y, RING), pen.palette().surface());
                pen.stroke(disc(x, y, RING), 1, pen.palette().edge());
            }
            case TODAY ->
                pen.fill(
                        new Rectangle2D.Double(x - TODAY, y - TODAY, 2 * TODAY, 2 * TODAY),
                        pen.palette().concept(2));
        }
    }

    private static Ellipse2D disc(double x, double y, double radius) {
        return new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
    }

    private void ring(Pen pen, TradeOff.Point point) {
        pen.stroke(
                disc(layout.x(point), layout.y(point), SELECTED),
                2,
                pen.palette().accent());
    }

    private void name(Pen pen, TradeOff.Point point) {
        double width = Lettered.LABEL.strong().width(point.name(), pen.lettering());
        double x = Math.min(layout.x(point) + 9, layout.right() - width);
        pen.text(
                point.name(),
                x,
                Math.max(TradeOffLayout.TOP + 10, layout.y(point) - 8),
                Lettered.LABEL.strong(),
                pen.palette().ink());
    }

    private void legend(Pen pen) {
        double y = layout.height() - 8;
        double x = TradeOffLayout.LEFT;
        pen.fill(disc(x + 3, y - 4, DISC), pen.palette().ink());
        pen.text(chart.passing(), x + 12, y, Lettered.LABEL, pen.palette().ink());
        if (!chart.failing().isEmpty()) {
            x += 12 + Lettered.LABEL.width(chart.passing(), pen.lettering()) + 20;
            pen.stroke(disc(x + 3, y - 4, RING), 1, pen.palette().edge());
            pen.text(chart.failing(), x + 12, y, Lettered.LABEL, pen.palette().muted());
        }
        right(pen, words.better(), layout.right(), y);
    }
}
