package groupwright.documents.charts;

import groupwright.documents.numbers.Reader;
import java.util.List;
import java.util.Objects;

/**
 * Rings, cogs and the chain of the lowest gear from above, concepts over each other on one bike. To scale along the bike;
 * across it {@link #ACROSS} times larger, outwards up.
 *
 * @param bike name of the bike
 * @param spanMm from ring to cog along the bike, above 0
 * @param centreMm middle of the cassette from the middle plane of the frame
 * @param entrants at least one; the lead concept last lies on top
 * @param lacking names of the concepts that cannot be drawn yet
 * @param reader whose words, digits and measures it has
 */
public record FromAbove(
        String bike, double spanMm, double centreMm, List<Entrant> entrants, List<String> lacking, Reader reader)
        implements Chart {
    /** How many times larger lengths across the bike are drawn than those along it. */
    public static final int ACROSS = 4;

    /**
     * A ring or cog.
     *
     * @param lineMm from the middle plane of the frame outwards
     */
    public record Wheel(int teeth, double lineMm) {
        private static final double PITCH_MM = 12.7;

        public Wheel {
            if (teeth < 3 || !Double.isFinite(lineMm)) {
                throw new IllegalArgumentException("no wheel of " + teeth + " teeth at " + lineMm + " mm");
            }
        }

        /** Of the circle through the pins of the chain: p / (2 sin(pi / z)). */
        double radiusMm() {
            return PITCH_MM / (2 * Math.sin(Math.PI / teeth));
        }
    }

    /**
     * One concept.
     *
     * @param rings at least one
     * @param cogs at least one
     * @param ring of the lowest gear, one of the rings
     * @param cog of the lowest gear, one of the cogs
     * @param angle of the chain in that gear, as the reader writes it
     * @param verdict on the angle in words; empty where no requirement asks for it
     */
    public record Entrant(
            ConceptSign sign,
            String concept,
            List<Wheel> rings,
            List<Wheel> cogs,
            Wheel ring,
            Wheel cog,
            String angle,
            String verdict) {
        public Entrant {
            Objects.requireNonNull(sign, "sign");
            Objects.requireNonNull(concept, "concept");
            Objects.requireNonNull(angle, "angle");
            Objects.requireNonNull(verdict, "verdict");
            rings = List.copyOf(rings);
            cogs = List.copyOf(cogs);
            if (!rings.contains(ring) || !cogs.contains(cog)) {
                throw new IllegalArgumentException(ring + " and " + cog + " are no gear of " + concept);
            }
        }
    }

    public FromAbove {
        Objects.requireNonNull(bike, "bike");
        Objects.requireNonNull(reader, "reader");
        entrants = List.copyOf(entrants);
        lacking = List.copyOf(lacking);
        if (entrants.isEmpty() || !(spanMm > 0 && Double.isFinite(spanMm)) || !Double.isFinite(centreMm)) {
            throw new IllegalArgumentException(
                    "a drawing needs a concept and a bike, had " + entrants.size() + ", " + spanMm + ", " + centreMm);
        }
    }

    @Override
    public String title() {
        return new FromAboveWords(this).title();
    }

    @Override
    public String caption() {
        return new FromAboveWords(this).caption();
    }

    @Override
    public String description() {
        return new FromAboveWords(this).description();
    }

    @Override
    public ChartTable table() {
        return new FromAboveWords(this).table();
    }

    @Override
    public ChartSize size(TextWidths widths, double width) {
        FromAboveLayout layout = FromAboveLayout.of(this, widths, width);
        return new ChartSize(layout.width(), layout.height());
    }

    @Override
    public void paint(Pen pen, double width) {
        new FromAbovePainter(this, FromAboveLayout.of(this, pen.lettering(), width)).paint(pen);
    }
}
