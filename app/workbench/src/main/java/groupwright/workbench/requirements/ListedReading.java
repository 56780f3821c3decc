package groupwright.workbench.requirements;

import groupwright.definition.assessment.Asked;
import groupwright.definition.assessment.Rung;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Verdict;
import groupwright.definition.quality.Check;
import groupwright.definition.quality.Finding;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Requirement;
import groupwright.workbench.components.Ladder;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Reads how one requirement stands. */
final class ListedReading {
    /** So many kinds of findings are named in a row; the detail shows all. */
    private static final int NAMED = 2;

    private final Reading reading;
    private final Optional<RecordId> lead;
    private final RowReading rows;

    ListedReading(Reading reading, Optional<RecordId> lead) {
        this.reading = reading;
        this.lead = lead;
        this.rows = new RowReading(reading, lead);
    }

    Listed of(Requirement requirement) {
        Optional<Ask> verdict = lead.map(concept -> Asked.verdictOn(reading.view(), requirement.id(), concept));
        List<Row> own = rows(requirement, verdict);
        return new Listed(
                requirement.id(),
                requirement.title(),
                requirement.kind(),
                requirement.weight(),
                requirement.riders(),
                ladder(requirement),
                facets(requirement),
                margin(own),
                verdict,
                words(requirement, own),
                own);
    }

    private List<Row> rows(Requirement requirement, Optional<Ask> verdict) {
        if (!requirement.isCurrent()) {
            return note(requirement, "note.retired", requirement.retired(), Row.Step.BRING_BACK, verdict);
        } else if (requirement.state() == Requirement.State.PARKED) {
            return note(requirement, "note.parked", requirement.stateReason(), Row.Step.TAKE_UP_AGAIN, verdict);
        } else if (requirement.criteria().isEmpty()) {
            return List.of(new Row.Note(requirement.id(), wrong(requirement), Row.Step.CHOOSE_FIGURE, verdict));
        }
        List<Row> found = new ArrayList<>();
        requirement.criteria().forEach(criterion -> found.add(rows.of(requirement, criterion)));
        return found;
    }

    private List<Row> note(Requirement requirement, String key, String reason, Row.Step step, Optional<Ask> verdict) {
        String sentence = reason.isBlank() ? reading.text(key + ".noReason") : reading.text(key, reason);
        return List.of(new Row.Note(requirement.id(), sentence, step, verdict));
    }

    /** What keeps a statement without criteria from being measured, in one sentence and the way out of it. */
    private String wrong(Requirement requirement) {
        List<Finding> findings = reading.findings(requirement);
        boolean several = findings.stream().anyMatch(finding -> finding.check() == Check.SEVERAL);
        String way = reading.text(several ? "note.split" : "note.choose");
        List<String> titles = findings.stream()
                .map(Finding::check)
                .distinct()
                .sorted()
                .limit(NAMED)
                .map(reading.checks()::title)
                .toList();
        if (titles.isEmpty()) {
            return way;
        }
        String first = titles.get(0);
        String named = titles.size() == 1 ? first : first + ", " + decapitalised(titles.get(1));
        return named + ". " + way;
    }

    private static String decapitalised(String text) {
        return text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
    }

    /** The rungs reached. What misses for certain hangs; what is too close to call, or lacks input, is not there yet. */
    Ladder ladder(Requirement requirement) {
        Optional<Rung> highest = lead.flatMap(concept ->
                reading.assessment().standing(requirement.id(), concept).rung());
        boolean misses = highest.isPresent()
                && lead.filter(concept -> reading.assessment()
                                .verdict(requirement.id(), concept)
                                .missesForCertain())
                        .isPresent();
        Ladder.Step above = misses && highest.get() == Rung.MEASURABLE ? Ladder.Step.FAILS : Ladder.Step.OPEN;
        return Ladder.of(highest.orElse(Rung.STATED), above, reading.locale());
    }

    private Set<Facet> facets(Requirement requirement) {
        if (!requirement.isCurrent()) {
            return EnumSet.of(Facet.RETIRED);
        }
        EnumSet<Facet> facets = EnumSet.of(Facet.ALL);
        if (requirement.state() == Requirement.State.PARKED) {
            facets.add(Facet.PARKED);
            return facets;
        } else if (requirement.state() == Requirement.State.DRAFT) {
            facets.add(Facet.DRAFT);
        }
        lead.ifPresent(concept -> facets.addAll(standing(requirement, concept)));
        return facets;
    }

    private Set<Facet> standing(Requirement requirement, RecordId concept) {
        Optional<Rung> rung =
                reading.assessment().standing(requirement.id(), concept).rung();
        if (rung.equals(Optional.of(Rung.STATED))) {
            return EnumSet.of(Facet.NOT_MEASURABLE);
        }
        Verdict verdict = reading.assessment().verdict(requirement.id(), concept);
        if (verdict.outcome() == Verdict.Outcome.MISSING_INPUT) {
            return EnumSet.of(Facet.MISSING_INPUT);
        } else if (verdict.certainty() == Verdict.Certainty.TOO_CLOSE_TO_CALL) {
            return EnumSet.of(Facet.TOO_CLOSE);
        }
        return verdict.missesForCertain() ? EnumSet.of(Facet.MISSES) : EnumSet.noneOf(Facet.class);
    }

    private static OptionalDouble margin(List<Row> rows) {
        return rows.stream()
                .filter(Row.Measured.class::isInstance)
                .map(Row.Measured.class::cast)
                .flatMap(row -> row.verdict().flatMap(Verdict::marginPct).stream())
                .mapToDouble(Double::doubleValue)
                .min();
    }

    private static String words(Requirement requirement, List<Row> rows) {
        StringBuilder words = new StringBuilder()
                .append(requirement.id())
                .append(' ')
                .append(requirement.title())
                .append(' ')
                .append(requirement.statement())
                .append(' ')
                .append(requirement.owner());
        for (Row row : rows) {
            if (row instanceof Row.Measured measured) {
                words.append(' ').append(measured.figure()).append(' ').append(measured.where());
                measured.verdict().ifPresent(verdict -> words.append(' ').append(verdict.words()));
            }
        }
        return words.toString().toLowerCase(Locale.ROOT);
    }
}
