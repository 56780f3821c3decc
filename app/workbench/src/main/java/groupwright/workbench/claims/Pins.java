package groupwright.workbench.claims;

import groupwright.definition.assessment.Assessment;
import groupwright.definition.figure.Scope;
import groupwright.definition.ledger.View;
import groupwright.definition.record.Claim;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Requirement;
import groupwright.workbench.components.Evidence;
import groupwright.workbench.components.Evidence.Pin;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;

/** What evidence a claim has: a figure, a test, a signature. */
final class Pins {
    private Pins() {}

    static Evidence of(View view, Claim claim, List<Rest> rests, Locale locale) {
        return Evidence.of(figure(rests), test(view, claim, rests), signed(claim), locale);
    }

    /** Changed before missed: what was signed and moved is what somebody has to look at. */
    private static Pin figure(List<Rest> rests) {
        if (rests.isEmpty()) {
            return Pin.NOTHING;
        } else if (rests.stream().anyMatch(Rest::hasMoved)) {
            return Pin.CHANGED;
        } else if (rests.stream().anyMatch(Rest::misses)) {
            return Pin.MISSES;
        }
        return rests.stream().anyMatch(rest -> rest.kind() == Rest.Kind.MISSING) ? Pin.PLANNED : Pin.HOLDS;
    }

    /** All requirements behind it that are verified by more than analysis need a result of the lead concept. */
    private static Pin test(View view, Claim claim, List<Rest> rests) {
        TreeSet<RecordId> behind = new TreeSet<>(claim.requirements());
        rests.forEach(rest -> Stream.of(
                        rest.ask().subject().get(Scope.REQUIREMENT),
                        rest.leads().map(address -> address.record()))
                .flatMap(Optional::stream)
                .forEach(behind::add));
        List<Requirement> tested = behind.stream()
                .flatMap(id -> view.definition().get(id, Requirement.class).stream())
                .filter(requirement -> requirement.verification() != Requirement.Verification.ANALYSIS)
                .toList();
        if (tested.isEmpty()) {
            return Pin.NOTHING;
        }
        Optional<RecordId> lead = new Assessment(view).lead();
        boolean all = tested.stream()
                .allMatch(requirement -> requirement.results().stream()
                        .anyMatch(
                                result -> lead.filter(result.concept()::equals).isPresent()));
        return all ? Pin.HOLDS : Pin.PLANNED;
    }

    private static Pin signed(Claim claim) {
        if (claim.state() == Claim.State.APPROVED) {
            return Pin.HOLDS;
        }
        return claim.approvals().isEmpty() ? Pin.NOTHING : Pin.PLANNED;
    }
}
