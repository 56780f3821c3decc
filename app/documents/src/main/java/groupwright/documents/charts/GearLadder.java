package groupwright.documents.charts;

import groupwright.documents.numbers.Reader;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * How far each gear carries in one turn of the crank: a lane for each ring of each concept on one logarithmic axis, and
 * what riders need as uprights through all lanes.
 *
 * @param riders whose wheel it is, for example {@code G-002}
 * @param lanes from top to bottom, at least one
 * @param needs what these riders need of the lowest or highest gear
 * @param reader whose words, digits and measures it has
 */
public record GearLadder(String riders, List<Lane> lanes, List<Need> needs, Reader reader) implements Chart {
    /**
     * The gears of one ring.
     *
     * @param concept name of the concept, for example {@code C-002}
     * @param ring teeth of the ring
     * @param developmentsM metres for one turn of the crank, rising; at least one, each above 0
     */
    public record Lane(ConceptSign sign, String concept, int ring, List<Double> developmentsM) {
        public Lane {
            Objects.requireNonNull(sign, "sign");
            Objects.requireNonNull(concept, "concept");
            developmentsM = developmentsM.stream().sorted().toList();
            if (developmentsM.isEmpty()) {
                throw new IllegalArgumentException("a lane needs a gear, " + concept + " ring " + ring + " has none");
            }
            developmentsM.forEach(development -> checkDevelopment(development));
        }

        double lowest() {
            return developmentsM.get(0);
        }

        double highest() {
            return developmentsM.get(developmentsM.size() - 1);
        }
    }

    /**
     * What riders need.
     *
     * @param developmentM where the limit stands
     * @param sentence stands at the upright
     */
    public record Need(double developmentM, String sentence) {
        public Need {
            Objects.requireNonNull(sentence, "sentence");
            checkDevelopment(developmentM);
        }
    }

    public GearLadder {
        Objects.requireNonNull(riders, "riders");
        Objects.requireNonNull(reader, "reader");
        lanes = List.copyOf(lanes);
        needs = List.copyOf(needs);
        if (lanes.isEmpty()) {
            throw new IllegalArgumentException("a gear ladder needs at least one lane");
        }
    }

    /** A ladder in metric measures. */
    public GearLadder(String riders, List<Lane> lanes, List<Need> needs, Locale locale) {
        this(riders, lanes, needs, new Reader(locale));
    }

    private static void checkDevelopment(double development) {
        if (!(development > 0 && Double.isFinite(development))) {
            throw new IllegalArgumentException("a development must be finite and above 0 m, was " + development);
        }
    }

    @Override
    public String title() {
        return new GearLadderWords(this).title();
    }

    @Override
    public String caption() {
        return new GearLadderWords(this).caption();
    }

    @Override
    public String description() {
        return new GearLadderWords(this).description();
    }

    @Override
    public ChartTable table() {
        return new GearLadderWords(this).table();
    }

    @Override
    public ChartSize size(TextWidths widths, double width) {
        GearLadderLayout layout = GearLadderLayout.of(this, widths, width);
        return new ChartSize(layout.width(), layout.height());
    }

    @Override
    public void paint(Pen pen, double width) {
        new GearLadderPainter(this, GearLadderLayout.of(this, pen.lettering(), width)).paint(pen);
    }
}
