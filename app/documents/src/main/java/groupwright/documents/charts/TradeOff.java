package groupwright.documents.charts;

import groupwright.documents.numbers.Reader;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What several solutions reach in two measures of which less is better, with the edge behind which no other is better in
 * both. Values and names are those of whoever makes it; nothing is computed but the edge.
 *
 * @param across the measure that grows to the right
 * @param up the measure that grows upwards
 * @param points at least one
 * @param selected place of the one that is selected among the points
 * @param passing what solid points do, for the line under the axis, for example "miss nothing: 36"
 * @param failing what hollow points do; empty where there is none
 * @param reader whose words and digits it has
 */
public record TradeOff(
        Axis across,
        Axis up,
        List<Point> points,
        Optional<Integer> selected,
        String passing,
        String failing,
        Reader reader)
        implements Chart {
    /**
     * A measure.
     *
     * @param name as people say it
     * @param unit of its values
     */
    public record Axis(String name, String unit) {}

    /** How a point is drawn. */
    public enum Mark {
        /** A small solid disc. */
        PASSES,
        /** A small hollow ring. */
        FAILS,
        /** The sign of the concept as it stands today. */
        TODAY
    }

    /**
     * One solution.
     *
     * @param x in the unit across
     * @param y in the unit up
     * @param name what stands beside it; empty for most
     * @param mark how it is drawn
     */
    public record Point(double x, double y, String name, Mark mark) {
        public Point {
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(mark, "mark");
            if (!Double.isFinite(x) || !Double.isFinite(y)) {
                throw new IllegalArgumentException("a point needs finite values, had " + x + " and " + y);
            }
        }
    }

    public TradeOff {
        points = List.copyOf(points);
        if (points.isEmpty() || selected.filter(at -> at < 0).isPresent()) {
            throw new IllegalArgumentException("a trade-off needs a point, and a place from 0 of what is selected");
        }
        int count = points.size();
        if (selected.filter(at -> at >= count).isPresent()) {
            throw new IllegalArgumentException("there is no point " + selected.get() + " of " + count);
        }
    }

    /** The points that no other is better than in one measure and at least as good in the other, from the left. */
    public List<Point> edge() {
        List<Point> sorted = points.stream()
                .sorted(Comparator.comparingDouble(Point::x).thenComparingDouble(Point::y))
                .toList();
        List<Point> edge = new ArrayList<>();
        double best = Double.POSITIVE_INFINITY;
        for (Point point : sorted) {
            if (point.y() < best) {
                edge.add(point);
                best = point.y();
            }
        }
        return edge;
    }

    /**
     * The point nearest to a place, within reach of a pointer.
     *
     * @param width as {@link #size} answered
     * @return its place among the points
     */
    public Optional<Integer> at(double x, double y, TextWidths widths, double width) {
        return TradeOffLayout.of(this, widths, width).nearest(x, y);
    }

    @Override
    public String title() {
        return new TradeOffWords(this).title();
    }

    @Override
    public String caption() {
        return new TradeOffWords(this).caption();
    }

    @Override
    public String description() {
        return new TradeOffWords(this).description();
    }

    @Override
    public ChartTable table() {
        return new TradeOffWords(this).table();
    }

    @Override
    public ChartSize size(TextWidths widths, double width) {
        return TradeOffLayout.of(this, widths, width).size();
    }

    @Override
    public void paint(Pen pen, double width) {
        new TradeOffPainter(this, TradeOffLayout.of(this, pen.lettering(), width)).paint(pen);
    }
}
