package groupwright.documents.project;

import groupwright.definition.assessment.Asked;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Verdict;
import groupwright.definition.ledger.View;
import groupwright.definition.ledger.Workings;
import groupwright.definition.record.Claim;
import groupwright.definition.record.Criterion;
import groupwright.definition.record.Need;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.Requirement;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The way from what riders said to what is claimed, through one requirement.
 *
 * @param requirement in the middle
 * @param needs it answers, in use
 * @param steps one for each criterion
 * @param claims not withdrawn that rest on it or on one of its answers, in the order of ids
 */
record Trail(Requirement requirement, List<Need> needs, List<Step> steps, List<Claim> claims) {
    Trail {
        needs = List.copyOf(needs);
        steps = List.copyOf(steps);
        claims = List.copyOf(claims);
    }

    /**
     * A criterion with the answer it is judged by.
     *
     * @param ask the question for the rider group and bike that are worst; empty where the figure cannot be asked
     * @param inputs every field behind the answer, directly or through other figures, in the order of addresses
     */
    record Step(Criterion criterion, Verdict verdict, Optional<Ask> ask, List<Workings.FieldInput> inputs) {
        Step {
            inputs = List.copyOf(inputs);
        }
    }

    /** The trail of a requirement for the lead concept. Cost: that of the workings of its answers, and all claims. */
    static Trail of(Sheet sheet, Requirement requirement) {
        View view = sheet.view();
        List<Need> needs = requirement.answers().stream()
                .flatMap(id -> view.definition().get(id, Need.class).stream())
                .filter(Need::isCurrent)
                .toList();
        List<Step> steps = requirement.criteria().stream()
                .map(criterion -> step(sheet, requirement, criterion))
                .toList();
        Set<Claim> found = new LinkedHashSet<>();
        for (Claim claim : view.definition().all(RecordKinds.CLAIM)) {
            boolean said = claim.isCurrent() && claim.state() != Claim.State.WITHDRAWN;
            if (said && (claim.requirements().contains(requirement.id()) || restsOn(view, claim, steps))) {
                found.add(claim);
            }
        }
        return new Trail(requirement, needs, steps, new ArrayList<>(found));
    }

    private static boolean restsOn(View view, Claim claim, List<Step> steps) {
        List<Ask> asks = Asked.asks(view, claim);
        return steps.stream().flatMap(step -> step.ask().stream()).anyMatch(asks::contains);
    }

    private static Step step(Sheet sheet, Requirement requirement, Criterion criterion) {
        Verdict verdict = sheet.assessment().verdict(requirement.id(), sheet.lead(), criterion);
        Optional<Ask> ask = sheet.view()
                .catalogue()
                .find(criterion.figure())
                .filter(figure -> figure.scopes().size() == verdict.at().ids().size())
                .map(figure -> new Ask(figure, verdict.at(), criterion.parameters()));
        return new Step(criterion, verdict, ask, ask.map(sheet.view()::trace).orElse(List.of()));
    }
}
