package groupwright.workbench.cassettes;

import groupwright.documents.charts.ConceptSign;
import groupwright.drivetrain.search.Objective.Better;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Cassettes as points: solid where they miss nothing the chosen rider groups ask for, else hollow; the best of the two axes
 * along a step line; today's with the sign of its concept.
 */
final class ScatterPainting {
    private static final double LEFT = 44;
    private static final double BOTTOM = 24;
    private static final double RIGHT = 12;
    private static final double TOP = 8;
    private static final double NEAR = 12;

    private final Shown shown;
    private final ConceptSign sign;
    private final String today;
    private final CassetteWords say;
    private final Axis across;
    private final Axis up;

    ScatterPainting(Shown shown, ConceptSign sign, String today, CassetteWords say) {
        this.shown = shown;
        this.sign = sign;
        this.today = today;
        this.say = say;
        this.across = axis(shown.axes().across());
        this.up = axis(shown.axes().up());
    }

    private Stream<Candidate> points() {
        return Stream.concat(
                shown.finding().shown().stream(), Stream.of(shown.finding().today()));
    }

    private Axis axis(Measure measure) {
        return Axis.of(points().map(measure::of).toList(), measure.decimals());
    }

    Shown shown() {
        return shown;
    }

    String title() {
        return say.words()
                .text(
                        "scatter.name",
                        say.name(shown.axes().up()),
                        say.name(shown.axes().across()));
    }

    String description() {
        int all = shown.finding().shown().size();
        int suiting = shown.finding().suiting(shown.riders()).size();
        int best = shown.axes().best(shown.finding().shown()).size();
        return say.words().text("scatter.description", all, suiting, best);
    }

    /** What is said of a point. */
    String said(Candidate candidate) {
        TradeOff axes = shown.axes();
        return say.words()
                .text(
                        "scatter.point",
                        candidate.cogs(),
                        say.amount(axes.up(), axes.up().of(candidate)),
                        say.amount(axes.across(), axes.across().of(candidate)));
    }

    private record Frame(double width, double height) {
        double x(double share) {
            return LEFT + share * (width - LEFT - RIGHT);
        }

        double y(double share) {
            return height - BOTTOM - share * (height - BOTTOM - TOP);
        }
    }

    private double x(Frame frame, Candidate candidate) {
        return frame.x(across.share(shown.axes().across().of(candidate)));
    }

    private double y(Frame frame, Candidate candidate) {
        return frame.y(up.share(shown.axes().up().of(candidate)));
    }

    /** The point nearest to a place, within reach of a finger. */
    Optional<Candidate> nearest(double px, double py, double width, double height) {
        Frame frame = new Frame(width, height);
        Comparator<Candidate> near = Comparator.comparingDouble(one -> away(frame, one, px, py));
        return points().min(near).filter(one -> away(frame, one, px, py) <= NEAR);
    }

    private double away(Frame frame, Candidate one, double px, double py) {
        return Math.hypot(x(frame, one) - px, y(frame, one) - py);
    }

    void paint(Drawing drawing) {
        Frame frame = new Frame(drawing.width(), drawing.height());
        grid(drawing, frame);
        List<Candidate> hollow = new ArrayList<>();
        List<Candidate> solid = new ArrayList<>();
        shown.finding().shown().forEach(one -> (one.suits(shown.riders()) ? solid : hollow).add(one));
        hollow.forEach(one -> drawing.stroke(disc(frame, one, 2.4), 1.1, Token.EDGE));
        solid.forEach(one -> drawing.fill(disc(frame, one, 2.8), Token.INK));
        best(drawing, frame);
        today(drawing, frame);
        letters(drawing, frame);
        shown.chosen().ifPresent(one -> drawing.stroke(disc(frame, one, 8), 2, Token.ACCENT));
    }

    private Ellipse2D disc(Frame frame, Candidate one, double radius) {
        return new Ellipse2D.Double(x(frame, one) - radius, y(frame, one) - radius, 2 * radius, 2 * radius);
    }

    private void grid(Drawing drawing, Frame frame) {
        List<Double> ups = up.ticks();
        for (double tick : ups) {
            double y = frame.y(up.share(tick));
            drawing.level(LEFT, frame.width() - RIGHT, y, 1, Token.HAIRLINE);
            String text = say.number(tick, up.decimals())
                    + (tick == ups.get(ups.size() - 1)
                            ? "\u202F" + shown.axes().up().unit()
                            : "");
            label(drawing, text, LEFT - 8 - Type.CAPTION.width(text, Weight.REGULAR), Type.CAPTION.baseline(y));
        }
        List<Double> acrosses = across.ticks();
        for (double tick : acrosses) {
            double x = frame.x(across.share(tick));
            drawing.upright(x, TOP, frame.height() - BOTTOM, 1, Token.HAIRLINE);
            String unit = tick == acrosses.get(acrosses.size() - 1)
                    ? "\u202F" + shown.axes().across().unit()
                    : "";
            String text = say.number(tick, across.decimals());
            double half = Type.CAPTION.width(text, Weight.REGULAR) / 2;
            double left = Math.min(x - half, frame.width() - Type.CAPTION.width(text + unit, Weight.REGULAR));
            label(drawing, text + unit, left, frame.height() - 6);
        }
        drawing.level(LEFT, frame.width() - RIGHT, frame.height() - BOTTOM, 1, Token.EDGE);
        drawing.upright(LEFT, TOP, frame.height() - BOTTOM, 1, Token.EDGE);
    }

    private static void label(Drawing drawing, String text, double x, double baseline) {
        drawing.text(text, x, baseline, Type.CAPTION, Weight.REGULAR, Token.MUTED);
    }

    /** From the worst end of the upright axis to the first of the best, from one to the next, to the worst end across. */
    private void best(Drawing drawing, Frame frame) {
        List<Candidate> best = shown.axes().best(shown.finding().shown());
        if (best.isEmpty()) {
            return;
        }
        boolean lowUp = shown.axes().up().better() == Better.LOWER;
        boolean lowAcross = shown.axes().across().better() == Better.LOWER;
        Path2D line = new Path2D.Double();
        line.moveTo(x(frame, best.get(0)), frame.y(lowUp ? 1 : 0));
        double y = y(frame, best.get(0));
        for (Candidate one : best) {
            line.lineTo(x(frame, one), y);
            y = y(frame, one);
            line.lineTo(x(frame, one), y);
        }
        line.lineTo(frame.x(lowAcross ? 1 : 0), y);
        drawing.stroke(line, 1.6, Token.ACCENT);
        best.forEach(one -> drawing.fill(disc(frame, one, 3.2), Token.ACCENT));
    }

    private void today(Drawing drawing, Frame frame) {
        Candidate now = shown.finding().today();
        double x = x(frame, now);
        double y = y(frame, now);
        sign.paint(drawing.pen(Token.SURFACE), x, y, 4.75);
        double width = Type.SECONDARY.width(today, Weight.STRONG);
        double left = x - 14 - width > LEFT ? x - 14 - width : x + 14;
        double above = y - 22 > TOP + 12 ? y - 22 : y + 26;
        drawing.stroke(
                new java.awt.geom.Line2D.Double(left < x ? left + width : left, above + (above < y ? 3 : -8), x, y),
                0.8,
                Token.EDGE);
        sign.paint(drawing.pen(Token.SURFACE), x, y, 4.75);
        drawing.box(left - 2, above - 11, width + 4, 14, Token.SURFACE);
        drawing.text(today, left, above, Type.SECONDARY, Weight.STRONG, Token.INK);
    }

    private void letters(Drawing drawing, Frame frame) {
        shown.pinned()
                .forEach(cassette -> shown.find(cassette)
                        .ifPresent(one -> drawing.text(
                                shown.letter(cassette),
                                x(frame, one) + 9,
                                y(frame, one) - 6,
                                Type.SECONDARY,
                                Weight.STRONG,
                                Token.ACCENT)));
    }
}
