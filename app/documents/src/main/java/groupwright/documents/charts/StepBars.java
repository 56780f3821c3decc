package groupwright.documents.charts;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * The steps from cog to cog of one concept as bars, with the positions a turn at which the chain can change over.
 *
 * @param concept name of the concept
 * @param steps from the smallest cogs up, at least one; each begins where the one before ends
 * @param limit what steps must not exceed
 * @param topPct step that reaches the upper end; give charts side by side the same, see {@link #largestPct}
 * @param locale language of the words and digits
 */
public record StepBars(
        ConceptSign sign, String concept, List<Step> steps, Optional<Limit> limit, double topPct, Locale locale)
        implements Chart {
    /**
     * A step between neighbouring cogs.
     *
     * @param smaller teeth
     * @param larger teeth
     * @param pct 100 · (larger / smaller - 1), as the ledger answers it
     * @param likePositions at least 1
     */
    public record Step(int smaller, int larger, double pct, int likePositions) {
        public Step {
            if (smaller >= larger) {
                throw new IllegalArgumentException("a step goes to a larger cog, was " + smaller + " to " + larger);
            }
            if (!(pct > 0 && Double.isFinite(pct)) || likePositions < 1) {
                throw new IllegalArgumentException(
                        "a step needs a size above 0 % and a position, had " + pct + " and " + likePositions);
            }
        }
    }

    /**
     * A limit.
     *
     * @param fromTeeth smaller cog from which on it holds; 0 for all
     * @param mostPct largest step it allows, above 0
     */
    public record Limit(int fromTeeth, double mostPct) {
        public Limit {
            if (!(mostPct > 0 && Double.isFinite(mostPct)) || fromTeeth < 0) {
                throw new IllegalArgumentException(
                        "a limit needs teeth from 0 and a step above 0 %, had " + fromTeeth + " and " + mostPct);
            }
        }

        boolean concerns(Step step) {
            return step.smaller() >= fromTeeth;
        }

        boolean isExceededBy(Step step) {
            return concerns(step) && step.pct() > mostPct;
        }
    }

    public StepBars {
        Objects.requireNonNull(sign, "sign");
        Objects.requireNonNull(concept, "concept");
        Objects.requireNonNull(limit, "limit");
        Objects.requireNonNull(locale, "locale");
        steps = List.copyOf(steps);
        for (int i = 1; i < steps.size(); i++) {
            if (steps.get(i).smaller() != steps.get(i - 1).larger()) {
                throw new IllegalArgumentException("step " + steps.get(i) + " does not follow " + steps.get(i - 1));
            }
        }
        if (steps.isEmpty() || !(topPct >= largestPct(steps, limit))) {
            throw new IllegalArgumentException("steps are needed and must fit below the top, which was " + topPct);
        }
    }

    /** Bars that use the whole height. */
    public static StepBars of(
            ConceptSign sign, String concept, List<Step> steps, Optional<Limit> limit, Locale locale) {
        return new StepBars(sign, concept, steps, limit, largestPct(steps, limit), locale);
    }

    /** The least top for some bars: their largest step or their limit. */
    public static double largestPct(List<Step> steps, Optional<Limit> limit) {
        double largest = steps.stream().mapToDouble(Step::pct).max().orElse(0);
        return Math.max(largest, limit.map(Limit::mostPct).orElse(0.0));
    }

    /**
     * The room in which the number of a cog stands, so that something can be done with it there.
     *
     * @param place of the cog, from 0 for the smallest
     * @param width as {@link #size} answered
     */
    public Rectangle2D cogRoom(int place, TextWidths widths, double width) {
        return StepBarsLayout.of(this, widths, width).cogRoom(place);
    }

    @Override
    public String title() {
        return new StepBarsWords(this).title();
    }

    @Override
    public String caption() {
        return new StepBarsWords(this).caption();
    }

    @Override
    public String description() {
        return new StepBarsWords(this).description();
    }

    @Override
    public ChartTable table() {
        return new StepBarsWords(this).table();
    }

    @Override
    public ChartSize size(TextWidths widths, double width) {
        StepBarsLayout layout = StepBarsLayout.of(this, widths, width);
        return new ChartSize(layout.width(), layout.height());
    }

    @Override
    public void paint(Pen pen, double width) {
        new StepBarsPainter(this, StepBarsLayout.of(this, pen.lettering(), width)).paint(pen);
    }
}
