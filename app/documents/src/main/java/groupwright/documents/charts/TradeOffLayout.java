package groupwright.documents.charts;

import java.util.Optional;

/** Where the parts of a trade-off stand. */
record TradeOffLayout(TradeOff chart, LinearScale across, LinearScale up, double width, double height) {
    static final double LEFT = 44;
    static final double TOP = 6;
    private static final double RIGHT = 16;
    private static final double BELOW = 46;
    private static final double LEAST_WIDTH = 320;
    private static final double SHAPE = 0.46;
    private static final double TALLEST = 300;
    private static final double REACH = 9;

    static TradeOffLayout of(TradeOff chart, TextWidths widths, double width) {
        double wide = Math.max(LEAST_WIDTH, width);
        double bottom = TOP + Math.min(TALLEST, SHAPE * wide);
        return new TradeOffLayout(
                chart,
                LinearScale.over(
                        chart.points().stream().mapToDouble(TradeOff.Point::x).toArray(), LEFT, wide - RIGHT),
                LinearScale.over(
                        chart.points().stream().mapToDouble(TradeOff.Point::y).toArray(), bottom, TOP),
                wide,
                bottom + BELOW);
    }

    ChartSize size() {
        return new ChartSize(width, height);
    }

    double bottom() {
        return height - BELOW;
    }

    double right() {
        return width - RIGHT;
    }

    double x(TradeOff.Point point) {
        return across.place(point.x());
    }

    double y(TradeOff.Point point) {
        return up.place(point.y());
    }

    Optional<Integer> nearest(double atX, double atY) {
        Optional<Integer> nearest = Optional.empty();
        double least = REACH;
        for (int i = 0; i < chart.points().size(); i++) {
            TradeOff.Point point = chart.points().get(i);
            double far = Math.hypot(x(point) - atX, y(point) - atY);
            if (far <= least) {
                least = far;
                nearest = Optional.of(i);
            }
        }
        return nearest;
    }
}
