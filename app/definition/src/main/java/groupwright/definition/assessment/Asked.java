package groupwright.definition.assessment;

import groupwright.definition.figure.Ask;
import groupwright.definition.figure.FigureText;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Verdict;
import groupwright.definition.ledger.View;
import groupwright.definition.record.Claim;
import groupwright.definition.record.Criterion;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.Requirement;
import groupwright.definition.record.Support;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Who wants to know an answer: the criteria that ask for it, and the claims that rest on it. */
public final class Asked {
    private Asked() {}

    /**
     * A criterion that asks for an answer.
     *
     * @param verdict on exactly this answer; the requirement's own may speak of a worse rider group or bike
     */
    public record By(Requirement requirement, Criterion criterion, Verdict verdict) {}

    /** The criteria of requirements in use that ask for this answer, in the order of ids. O(criteria of the project). */
    public static List<By> by(View view, Ask ask) {
        List<By> found = new ArrayList<>();
        for (Requirement requirement : new Assessment(view).requirements()) {
            if (measures(requirement, ask)) {
                for (Criterion criterion : requirement.criteria()) {
                    if (asks(criterion, ask)) {
                        found.add(new By(requirement, criterion, verdict(view, ask, requirement, criterion)));
                    }
                }
            }
        }
        return found;
    }

    private static boolean measures(Requirement requirement, Ask ask) {
        return ask.subject()
                        .get(Scope.REQUIREMENT)
                        .map(requirement.id()::equals)
                        .orElse(true)
                && isAmong(requirement.riders(), ask, Scope.RIDERS)
                && isAmong(requirement.bikes(), ask, Scope.BIKE);
    }

    private static boolean isAmong(List<RecordId> named, Ask ask, Scope scope) {
        return named.isEmpty() || ask.subject().get(scope).map(named::contains).orElse(true);
    }

    private static boolean asks(Criterion criterion, Ask ask) {
        try {
            return criterion.figure().equals(ask.figure().id())
                    && new Ask(ask.figure(), ask.subject(), criterion.parameters()).equals(ask);
        } catch (Invalid otherParameters) {
            return false; // the criterion is broken and says so where it stands
        }
    }

    private static Verdict verdict(View view, Ask ask, Requirement requirement, Criterion criterion) {
        return Verdicts.on(requirement.id(), criterion, view.ask(ask), view.band(ask), ask.subject());
    }

    /**
     * The claims not withdrawn or retired that rest on an answer, or on a requirement that asks for it. O(claims of the
     * project).
     */
    public static List<Claim> restingOn(View view, Ask ask) {
        List<RecordId> requirements =
                by(view, ask).stream().map(by -> by.requirement().id()).toList();
        List<Claim> found = new ArrayList<>();
        for (Claim claim : view.definition().all(RecordKinds.CLAIM)) {
            boolean said = claim.retired().isEmpty() && claim.state() != Claim.State.WITHDRAWN;
            if (said && (claim.requirements().stream().anyMatch(requirements::contains) || rests(view, claim, ask))) {
                found.add(claim);
            }
        }
        return found;
    }

    private static boolean rests(View view, Claim claim, Ask ask) {
        return asks(view, claim).contains(ask);
    }

    /** The questions a claim rests on that can be asked today, in the order of its wording and supports. */
    public static List<Ask> asks(View view, Claim claim) {
        return List.copyOf(
                Basis.of(claim, view.catalogue(), view.definition().project().leadConcept())
                        .asks()
                        .values());
    }

    /** The question a support of a claim asks today; nothing where it cannot be asked. */
    public static Optional<Ask> ask(View view, Support support) {
        try {
            return Optional.of(FigureText.parse(support.figure())
                    .resolve(view.catalogue(), view.definition().project().leadConcept()));
        } catch (Invalid broken) {
            return Optional.empty(); // how the claim stands says what is broken
        }
    }

    /**
     * Whether a support of a claim keeps its limit today, with the band of the value; nothing where it has no limit or cannot
     * be asked.
     */
    public static Optional<Verdict> verdictOn(View view, RecordId claim, Support support) {
        Optional<Limit> limit = Limit.of(claim, support);
        Optional<Ask> asked = ask(view, support);
        if (limit.isEmpty() || asked.isEmpty()) {
            return Optional.empty();
        }
        Ask ask = asked.get();
        return Optional.of(limit.get().judge(view.ask(ask), view.band(ask), ask.subject()));
    }

    /** What stands for a requirement and a concept in answers that name both. */
    public static Ask verdictOn(View view, RecordId requirement, RecordId concept) {
        return FigureText.parse(VerdictFigures.VERDICT + " " + concept + " " + requirement)
                .resolve(view.catalogue(), Optional.empty());
    }
}
