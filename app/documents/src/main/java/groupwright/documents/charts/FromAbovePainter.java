package groupwright.documents.charts;

import groupwright.documents.charts.FromAboveLayout.Standing;
import java.awt.Color;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;

/** Draws rings, cogs and chains from above. */
final class FromAbovePainter {
    private static final double RING = 3;
    private static final double COG = 2;
    private static final double CHAIN = 1.4;
    private static final double MARK = 4;
    /** From the middle of a line of text to its baseline. */
    private static final double BASELINE = 4;

    private static final float[] CENTRE_LINE = {9, 3, 2, 3};

    private final FromAbove above;
    private final FromAboveLayout layout;
    private final FromAboveWords words;

    FromAbovePainter(FromAbove above, FromAboveLayout layout) {
        this.above = above;
        this.layout = layout;
        this.words = new FromAboveWords(above);
    }

    void paint(Pen pen) {
        centre(pen);
        above.entrants().forEach(entrant -> wheels(pen, entrant));
        above.entrants().forEach(entrant -> chain(pen, entrant));
        ringNames(pen);
        angles(pen);
    }

    /** The middle of the cassette, dash-dot as centre lines are by ISO 128. */
    private void centre(Pen pen) {
        double y = Pen.sharp(layout.y(above.centreMm()));
        double end = layout.labelsX() - FromAboveLayout.GAP;
        pen.dashed(
                new Line2D.Double(layout.bracketX() - halfOfLargestRing(), y, end, y),
                1,
                CENTRE_LINE,
                pen.palette().edge());
        pen.text(
                words.centre(),
                layout.labelsX(),
                y + BASELINE,
                Lettered.LABEL,
                pen.palette().muted());
    }

    private double halfOfLargestRing() {
        return layout.perMm()
                * above.entrants().stream()
                        .flatMap(entrant -> entrant.rings().stream())
                        .mapToDouble(FromAbove.Wheel::radiusMm)
                        .max()
                        .orElse(0);
    }

    private void wheels(Pen pen, FromAbove.Entrant entrant) {
        Color hue = entrant.sign().hue(pen.palette());
        entrant.rings().forEach(ring -> wheel(pen, ring, layout.bracketX(), RING, hue));
        entrant.cogs().forEach(cog -> wheel(pen, cog, layout.axleX(), COG, hue));
    }

    private void wheel(Pen pen, FromAbove.Wheel wheel, double x, double thickness, Color hue) {
        double half = wheel.radiusMm() * layout.perMm();
        double y = layout.y(wheel.lineMm());
        pen.line(x - half, y, x + half, y, thickness, hue);
    }

    private void chain(Pen pen, FromAbove.Entrant entrant) {
        Line2D line = new Line2D.Double(
                layout.bracketX(),
                layout.y(entrant.ring().lineMm()),
                layout.axleX(),
                layout.y(entrant.cog().lineMm()));
        entrant.sign()
                .pattern()
                .ifPresentOrElse(
                        dashes -> pen.dashed(line, CHAIN, dashes, entrant.sign().hue(pen.palette())),
                        () -> pen.stroke(line, CHAIN, entrant.sign().hue(pen.palette())));
    }

    /** A ring with its concept. */
    private record Named(FromAbove.Entrant entrant, FromAbove.Wheel ring) {}

    private void ringNames(Pen pen) {
        List<Named> rings = new ArrayList<>();
        above.entrants().forEach(entrant -> entrant.rings().forEach(ring -> rings.add(new Named(entrant, ring))));
        for (Standing<Named> name :
                layout.apart(rings, named -> layout.y(named.ring().lineMm()))) {
            Named named = name.what();
            double left = layout.bracketX() - named.ring().radiusMm() * layout.perMm() - FromAboveLayout.GAP;
            String text = words.ring(named.entrant(), named.ring());
            Lettered style = named.entrant().sign().lettered(Lettered.LABEL);
            pen.text(
                    text,
                    left - style.width(text, pen.lettering()),
                    name.y() + BASELINE,
                    style,
                    pen.palette().ink());
        }
    }

    private void angles(Pen pen) {
        for (Standing<FromAbove.Entrant> placed :
                layout.apart(above.entrants(), entrant -> layout.y(entrant.cog().lineMm()))) {
            FromAbove.Entrant entrant = placed.what();
            double x = layout.labelsX();
            double baseline = placed.y() + BASELINE;
            entrant.sign().paint(pen, x + FromAboveLayout.SIGN / 2, placed.y(), MARK);
            x += FromAboveLayout.SIGN + FromAboveLayout.GAP;
            Lettered style = entrant.sign().lettered(Lettered.CAPTION);
            for (String part : List.of(entrant.concept(), entrant.angle())) {
                pen.text(part, x, baseline, style, pen.palette().ink());
                x += style.width(part, pen.lettering()) + FromAboveLayout.GAP;
            }
            pen.text(
                    entrant.verdict(),
                    x,
                    baseline,
                    Lettered.CAPTION,
                    pen.palette().ink());
        }
    }
}
