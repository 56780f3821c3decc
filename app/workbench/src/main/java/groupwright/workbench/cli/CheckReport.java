package groupwright.workbench.cli;

import groupwright.definition.assessment.Assessment;
import groupwright.definition.assessment.ClaimState;
import groupwright.definition.assessment.RequirementStanding;
import groupwright.definition.assessment.Rung;
import groupwright.definition.figure.Verdict;
import groupwright.definition.quality.Finding;
import groupwright.definition.quality.Measure;
import groupwright.definition.quality.Statement;
import groupwright.definition.quality.StatementChecks;
import groupwright.definition.record.Claim;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Criterion;
import groupwright.definition.record.Need;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Requirement;
import groupwright.definition.record.RiderGroup;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * How a whole project stands.
 *
 * @param lead verdicts for the lead concept; nothing where the project names none
 * @param others verdicts for the other concepts that are worked on
 * @param coverage how far the requirements have come for the lead concept, in all and by rider group
 * @param unanswered needs that no requirement answers
 * @param withoutNeed requirements that answer no need
 * @param claims how each claim stands
 * @param advice what was found in the wording of requirements; those with nothing to say left out
 */
record CheckReport(
        Optional<ConceptVerdicts> lead,
        List<ConceptVerdicts> others,
        List<Coverage> coverage,
        List<Need> unanswered,
        List<Requirement> withoutNeed,
        List<Assessment.ClaimStanding> claims,
        List<Wording> advice) {

    /** How all agreed requirements stand for one concept. */
    record ConceptVerdicts(Concept concept, List<Row> rows) {}

    /** How one requirement stands; with the criterion the verdict speaks of. */
    record Row(Requirement requirement, RequirementStanding standing) {
        Verdict verdict() {
            return standing.verdict();
        }

        Optional<Criterion> criterion() {
            return requirement.criteria().stream()
                    .filter(criterion -> criterion.id().equals(verdict().criterion()))
                    .findFirst();
        }
    }

    /** Counts by rung; in all, where no riders are named. */
    record Coverage(Optional<RiderGroup> riders, Map<Rung, Integer> counts) {}

    /** Advice on one statement. */
    record Wording(Requirement requirement, List<Finding> findings) {}

    private static final Set<ClaimState> NO_LONGER_HOLDS =
            Set.of(ClaimState.CHANGED_SINCE_APPROVAL, ClaimState.UNSUPPORTED);

    static CheckReport of(OpenProject project) {
        Assessment assessment = project.assessment();
        Optional<RecordId> lead = assessment.lead();
        return new CheckReport(
                lead.flatMap(id -> project.definition().get(id, Concept.class))
                        .map(concept -> verdicts(assessment, concept)),
                assessment.concepts().stream()
                        .filter(concept -> !lead.equals(Optional.of(concept.id())))
                        .map(concept -> verdicts(assessment, concept))
                        .toList(),
                lead.map(id -> coverage(assessment, id)).orElse(List.of()),
                assessment.unansweredNeeds(),
                assessment.requirementsWithoutNeed(),
                assessment.claims(),
                advice(assessment));
    }

    private static ConceptVerdicts verdicts(Assessment assessment, Concept concept) {
        return new ConceptVerdicts(
                concept,
                assessment.requirements().stream()
                        .filter(requirement -> requirement.state() == Requirement.State.AGREED)
                        .map(requirement -> new Row(requirement, assessment.standing(requirement.id(), concept.id())))
                        .toList());
    }

    private static List<Coverage> coverage(Assessment assessment, RecordId lead) {
        List<Coverage> coverage = new ArrayList<>();
        coverage.add(new Coverage(Optional.empty(), assessment.coverage(lead)));
        for (RiderGroup group : assessment.riderGroups()) {
            coverage.add(new Coverage(Optional.of(group), assessment.coverage(lead, group.id())));
        }
        return coverage;
    }

    private static List<Wording> advice(Assessment assessment) {
        StatementChecks checks = StatementChecks.in(java.util.Locale.ENGLISH);
        return assessment.requirements().stream()
                .map(requirement -> new Wording(requirement, checks.check(statement(requirement))))
                .filter(wording -> !wording.findings().isEmpty())
                .toList();
    }

    private static Statement statement(Requirement requirement) {
        return new Statement(requirement.statement(), requirement.criteria().isEmpty() ? Measure.NONE : Measure.GIVEN);
    }

    /** Whether the claim is in use as approved. */
    static boolean isApproved(Assessment.ClaimStanding standing) {
        return standing.claim().state() == Claim.State.APPROVED
                && standing.claim().isCurrent();
    }

    /** Fails where a requirement misses for certain for the lead concept, or an approved claim no longer holds. */
    Exit exit() {
        boolean misses = leadVerdicts().stream().anyMatch(Verdict::missesForCertain);
        boolean gone = claims.stream()
                .anyMatch(standing -> isApproved(standing) && NO_LONGER_HOLDS.contains(standing.state()));
        return misses || gone ? Exit.FAILS : Exit.FINE;
    }

    /**
     * Fails also where a verdict is too close to call or misses input, where no concept leads, and where a newer formula
     * gives an approved claim another number.
     */
    Exit strictExit() {
        boolean open = lead.isEmpty() || !leadVerdicts().stream().allMatch(Verdict::meetsForCertain);
        boolean recalculated = claims.stream()
                .anyMatch(standing -> isApproved(standing) && standing.state() == ClaimState.RECALCULATED);
        return open || recalculated ? Exit.FAILS : exit();
    }

    private List<Verdict> leadVerdicts() {
        return lead.stream()
                .flatMap(verdicts -> verdicts.rows().stream())
                .map(Row::verdict)
                .toList();
    }
}
