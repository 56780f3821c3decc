package groupwright.definition.assessment;

import groupwright.definition.record.Decision;
import java.util.Optional;

/**
 * How the options of a decision did: scores and their mean weighed by the criteria. The weighed sum is the plainest rule of
 * multi-criteria choice (Keeney and Raiffa 1976, additive value function, from memory); it neglects that criteria may
 * depend on each other.
 *
 * @param decision with options, criteria, weights and scores
 */
public record WeighedOptions(Decision decision) {
    /** The score of an option by a criterion; the last one where there are several. */
    public Optional<Double> score(String option, String criterion) {
        return decision.scores().stream()
                .filter(score ->
                        score.option().equals(option) && score.criterion().equals(criterion))
                .map(score -> score.score().value())
                .reduce((first, last) -> last);
    }

    /**
     * Σ weight · score / Σ weight over all criteria, on the scale of the scores; nothing where a score of a criterion that
     * counts is missing or no criterion counts. O(criteria · scores).
     */
    public Optional<Double> mean(String option) {
        double sum = 0;
        double weights = 0;
        for (Decision.Weighing criterion : decision.criteria()) {
            double weight = criterion.weight_pct().value();
            Optional<Double> score = score(option, criterion.id());
            if (weight > 0 && score.isEmpty()) {
                return Optional.empty();
            }
            sum += weight * score.orElse(0.0);
            weights += weight;
        }
        return weights > 0 ? Optional.of(sum / weights) : Optional.empty();
    }
}
