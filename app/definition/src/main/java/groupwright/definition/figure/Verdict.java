package groupwright.definition.figure;

import java.util.List;
import java.util.Optional;

/**
 * Whether a criterion is met.
 *
 * @param outcome meets, misses, or missing input
 * @param certainty whether the target lies outside the band of the value
 * @param value what was compared; a missing answer where the outcome is missing input
 * @param margin how far on the good side, in the figure's unit; negative where it misses; 0 where input is missing
 * @param marginPct the same in percent of the target; empty where the target is 0
 * @param band how well the value is known
 * @param at for which subject: the worst of those compared
 * @param criterion id of the criterion it speaks of; empty while only one is compared
 */
public record Verdict(
        Outcome outcome,
        Certainty certainty,
        Answer value,
        double margin,
        Optional<Double> marginPct,
        Band band,
        Subject at,
        String criterion)
        implements Answer {
    /** The verdict's word. */
    public enum Outcome {
        MEETS,
        MISSES,
        MISSING_INPUT
    }

    /** Whether what we know suffices for the word. */
    public enum Certainty {
        CERTAIN,
        TOO_CLOSE_TO_CALL
    }

    /** Whether it meets for certain. */
    public boolean meetsForCertain() {
        return outcome == Outcome.MEETS && certainty == Certainty.CERTAIN;
    }

    /** Whether it misses for certain. */
    public boolean missesForCertain() {
        return outcome == Outcome.MISSES && certainty == Certainty.CERTAIN;
    }

    /** The inputs that are missing. */
    public List<MissingInput> missing() {
        return value instanceof Missing missing ? missing.inputs() : List.of();
    }

    /** In the words of screen and page. */
    public String words() {
        return switch (outcome) {
            case MISSING_INPUT -> "missing input";
            case MEETS -> certainty == Certainty.CERTAIN ? "meets" : "meets, too close to call";
            case MISSES -> certainty == Certainty.CERTAIN ? "misses" : "misses, too close to call";
        };
    }

    /** The same verdict as that of one criterion among several. */
    public Verdict ofCriterion(String id) {
        return new Verdict(outcome, certainty, value, margin, marginPct, band, at, id);
    }
}
