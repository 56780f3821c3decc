package groupwright.definition.assessment;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Band;
import groupwright.definition.figure.Missing;
import groupwright.definition.figure.MissingInput;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Series;
import groupwright.definition.figure.Subject;
import groupwright.definition.figure.Unit;
import groupwright.definition.figure.Verdict;
import groupwright.definition.record.Address;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Criterion.Comparator;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Support;
import java.util.Optional;

/**
 * What a value must reach.
 *
 * @param comparator on which side the good values lie
 * @param target the limit, or the lower of two
 * @param upper the upper limit where there are two
 * @param unit unit of the limit; empty means the figure's own
 * @param at the criterion or support that states it, for what is missing
 */
record Limit(Comparator comparator, double target, Optional<Double> upper, String unit, Address at) {
    /** Numbers that differ by less than this share are equal: sums of tooth counts and grams carry rounding errors. */
    private static final double NOISE = 1e-9;

    /** The limit of a support of a claim; nothing where only the value itself is watched. */
    static Optional<Limit> of(RecordId claim, Support support) {
        return support.comparator()
                .map(side -> new Limit(
                        side == Support.Side.AT_LEAST ? Comparator.AT_LEAST : Comparator.AT_MOST,
                        support.limit().map(Amount::value).orElseThrow(),
                        Optional.empty(),
                        support.unit(),
                        Address.of(claim, "supports", support.id())));
    }

    /** The verdict on an answer. */
    Verdict judge(Answer answer, Band band, Subject subject) {
        if (answer instanceof Quantity quantity) {
            if (!unit.isEmpty() && !unit.equals(quantity.unit().symbol())) {
                return missing("unit", otherUnit(quantity.unit()), subject);
            }
            return judge(quantity, band, subject);
        } else if (answer instanceof Missing) {
            return missing(answer, subject);
        }
        String what = answer instanceof Series ? "gives a list of numbers" : "gives no number";
        return missing("figure", "the figure " + what + "; choose one that gives one number", subject);
    }

    private String otherUnit(Unit ofFigure) {
        return "the limit is in " + unit
                + (ofFigure.symbol().isEmpty()
                        ? ", but the figure is a bare number; leave the unit out"
                        : ", but the figure is in " + ofFigure + "; write the limit in " + ofFigure);
    }

    private Verdict missing(String field, String remedy, Subject subject) {
        return missing(Missing.of(new MissingInput(at.child(field), remedy)), subject);
    }

    /** The verdict where there is no answer to judge. */
    static Verdict missing(Answer missing, Subject subject) {
        return new Verdict(
                Verdict.Outcome.MISSING_INPUT,
                Verdict.Certainty.CERTAIN,
                missing,
                0,
                Optional.empty(),
                Band.NOT_STATED,
                subject,
                "");
    }

    private Verdict judge(Quantity quantity, Band band, Subject subject) {
        double nearest = nearestLimit(quantity.value());
        double exact = margin(quantity.value());
        double margin = Math.abs(exact) <= NOISE * Math.max(1, Math.abs(nearest)) ? 0 : exact;
        boolean meets = margin >= 0;
        boolean close = band instanceof Band.Between between
                && (inside(between, target)
                        || upper.filter(u -> inside(between, u)).isPresent());
        return new Verdict(
                meets ? Verdict.Outcome.MEETS : Verdict.Outcome.MISSES,
                close ? Verdict.Certainty.TOO_CLOSE_TO_CALL : Verdict.Certainty.CERTAIN,
                quantity,
                margin,
                nearest == 0 ? Optional.empty() : Optional.of(100 * margin / Math.abs(nearest)),
                band,
                subject,
                "");
    }

    private static boolean inside(Band.Between band, double limit) {
        return band.low() < limit && limit < band.high();
    }

    /** How far the value lies on the good side; negative beyond the limit. */
    private double margin(double value) {
        return switch (comparator) {
            case AT_LEAST -> value - target;
            case AT_MOST -> target - value;
            case BETWEEN -> Math.min(value - target, upper.orElseThrow() - value);
        };
    }

    private double nearestLimit(double value) {
        return comparator == Comparator.BETWEEN && upper.orElseThrow() - value < value - target
                ? upper.orElseThrow()
                : target;
    }
}
