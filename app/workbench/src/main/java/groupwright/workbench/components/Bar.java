package groupwright.workbench.components;

import groupwright.documents.content.Band;
import groupwright.documents.content.BarShares;
import groupwright.documents.content.Inline;
import groupwright.documents.content.Verdict;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A criterion as a bar. Margin, band, stretch and scale have one unit: usually shares of the target; where the target is
 * zero, the unit of the figure.
 *
 * @param margin from the target to the value, good is positive
 * @param band what is known of the value, on the same scale
 * @param stretch how far beyond the target one would like to be
 * @param scale the margin at the ends of the bar
 * @param name for those who do not see it, for example {@code misses, 11.1 percent short}
 */
public record Bar(
        double margin, Optional<Band> band, Verdict verdict, OptionalDouble stretch, double scale, String name) {
    public Bar {
        Objects.requireNonNull(band, "band");
        Objects.requireNonNull(verdict, "verdict");
        Objects.requireNonNull(stretch, "stretch");
        Objects.requireNonNull(name, "name");
        if (!Double.isFinite(margin) || !(scale > 0 && Double.isFinite(scale))) {
            throw new IllegalArgumentException("no bar for margin " + margin + " on the scale " + scale);
        }
    }

    /** A bar in shares of the target on the usual scale; {@link groupwright.documents.project.Marks#bar} makes the inline. */
    public static Bar of(Inline.Bar bar, String name) {
        return new Bar(bar.margin(), bar.band(), bar.verdict(), OptionalDouble.empty(), BarShares.USUAL_SCALE, name);
    }

    /**
     * The same with a stretch target.
     *
     * @param at its distance from the target, in the unit of the margin
     */
    public Bar withStretch(double at) {
        return new Bar(margin, band, verdict, OptionalDouble.of(at), scale, name);
    }
}
