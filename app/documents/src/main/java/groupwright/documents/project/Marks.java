package groupwright.documents.project;

import groupwright.definition.figure.Band;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Verdict;
import groupwright.documents.content.Inline;
import java.util.Optional;

/** Verdicts of the ledger as marks and bars, on pages and on the screen. */
public final class Marks {
    private Marks() {}

    /** Which mark a verdict has. */
    public static groupwright.documents.content.Verdict verdict(Verdict verdict) {
        boolean certain = verdict.certainty() == Verdict.Certainty.CERTAIN;
        return switch (verdict.outcome()) {
            case MISSING_INPUT -> groupwright.documents.content.Verdict.MISSING_INPUT;
            case MEETS ->
                certain
                        ? groupwright.documents.content.Verdict.MEETS
                        : groupwright.documents.content.Verdict.MEETS_CLOSE;
            case MISSES ->
                certain
                        ? groupwright.documents.content.Verdict.MISSES
                        : groupwright.documents.content.Verdict.MISSES_CLOSE;
        };
    }

    /** The bar from the target to the value in shares of the target; none is drawn where the target is zero. */
    public static Inline.Bar bar(Verdict verdict) {
        if (verdict.marginPct().isEmpty() || !(verdict.value() instanceof Quantity quantity)) {
            return Inline.Bar.missing();
        }
        double margin = verdict.marginPct().get() / 100;
        return new Inline.Bar(margin, band(verdict, quantity, margin), verdict(verdict));
    }

    /** The band on the scale of the margin; for "at most" high values lie on the bad side, so the ends change places. */
    private static Optional<groupwright.documents.content.Band> band(
            Verdict verdict, Quantity quantity, double margin) {
        if (!(verdict.band() instanceof Band.Between between) || verdict.margin() == 0) {
            return Optional.empty();
        }
        double scale = margin / verdict.margin();
        double half = (between.high() - between.low()) / 2 * scale;
        double middle = margin + ((between.high() + between.low()) / 2 - quantity.value()) * scale;
        return Optional.of(new groupwright.documents.content.Band(middle - half, middle + half));
    }
}
