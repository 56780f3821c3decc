package groupwright.workbench.requirements;

import groupwright.definition.figure.Band;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Verdict;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Criterion;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Requirement;
import groupwright.documents.trace.ShownValue;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The nearest target that any concept worked on meets, for criteria the lead concept does not meet for certain. */
final class Relaxing {
    private static final double SAME = 1e-9;

    private final Reading reading;
    private final Optional<RecordId> lead;

    Relaxing(Reading reading, Optional<RecordId> lead) {
        this.reading = reading;
        this.lead = lead;
    }

    /** One concept's worst value over rider groups and bikes, and the end of its band on the bad side. */
    private record Reached(RecordId concept, double value, double worst, String unit) {}

    /** A sentence for each criterion that is not met; between two limits nothing can be said. O(concepts · criteria). */
    List<String> of(Requirement requirement) {
        List<String> sentences = new ArrayList<>();
        if (lead.isPresent() && requirement.isCurrent()) {
            for (Criterion criterion : requirement.criteria()) {
                if (criterion.comparator() != Criterion.Comparator.BETWEEN && isOpen(requirement, criterion)) {
                    sentence(requirement, criterion).ifPresent(sentences::add);
                }
            }
        }
        return sentences;
    }

    private boolean isOpen(Requirement requirement, Criterion criterion) {
        Verdict verdict = reading.assessment().verdict(requirement.id(), lead.orElseThrow(), criterion);
        return verdict.outcome() != Verdict.Outcome.MISSING_INPUT && !verdict.meetsForCertain();
    }

    private Optional<String> sentence(Requirement requirement, Criterion criterion) {
        int good = criterion.comparator() == Criterion.Comparator.AT_LEAST ? 1 : -1;
        List<Reached> reached = new ArrayList<>();
        for (Concept concept : reading.assessment().concepts()) {
            reached(requirement, criterion, concept, good).ifPresent(reached::add);
        }
        Optional<Reached> best = reached.stream()
                .reduce((one, other) ->
                        good * (other.value() - one.value()) > SAME * Math.abs(one.value()) ? other : one);
        return best.map(found -> sentence(criterion, found, reached, good));
    }

    private Optional<Reached> reached(Requirement requirement, Criterion criterion, Concept concept, int good) {
        Verdict verdict = reading.assessment().verdict(requirement.id(), concept.id(), criterion);
        if (!(verdict.value() instanceof Quantity quantity)) {
            return Optional.empty();
        }
        double worst = verdict.band() instanceof Band.Between between
                ? (good > 0 ? between.low() : between.high())
                : quantity.value();
        return Optional.of(new Reached(
                concept.id(), quantity.value(), worst, quantity.unit().symbol()));
    }

    private String sentence(Criterion criterion, Reached best, List<Reached> reached, int good) {
        String who = reached.stream()
                .filter(one -> Math.abs(one.value() - best.value()) <= SAME * Math.abs(best.value()))
                .map(one -> one.concept().text())
                .collect(Collectors.joining(", "));
        String limit = limit(criterion, best.value(), best.unit(), good);
        String key = good > 0 ? "relax.largest" : "relax.smallest";
        return best.worst() == best.value()
                ? reading.text(key, limit, who)
                : reading.text(key + ".band", limit, who, limit(criterion, best.worst(), best.unit(), good));
    }

    /** Rounded to the easy side, so that the limit written is met. */
    private String limit(Criterion criterion, double value, String unit, int good) {
        int decimals = reading.view()
                .catalogue()
                .find(criterion.figure())
                .map(figure -> Math.min(6, figure.decimals() + 1))
                .orElse(2);
        double scale = Math.pow(10, decimals);
        double steps = value * scale;
        double nearest = Math.rint(steps);
        double rounded = Math.abs(steps - nearest) <= SAME * Math.abs(steps)
                ? nearest
                : good > 0 ? Math.floor(steps) : Math.ceil(steps);
        return new ShownValue(reading.reader().exact(rounded / scale), unit).text();
    }
}
