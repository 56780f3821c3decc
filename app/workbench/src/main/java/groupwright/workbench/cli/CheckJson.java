package groupwright.workbench.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import groupwright.definition.assessment.Assessment;
import groupwright.definition.figure.Verdict;
import groupwright.definition.ledger.ValueText;
import groupwright.definition.quality.Finding;
import groupwright.definition.record.Criterion;
import groupwright.workbench.cli.CheckReport.ConceptVerdicts;
import groupwright.workbench.cli.CheckReport.Coverage;
import groupwright.workbench.cli.CheckReport.Row;
import groupwright.workbench.cli.CheckReport.Wording;
import java.util.stream.Stream;

/** How a project stands, for machines. */
final class CheckJson {
    private CheckJson() {}

    static ObjectNode of(OpenProject project, CheckReport report) {
        ObjectNode answer = JsonText.start();
        answer.put("name", project.definition().project().name());
        answer.put("contentHash", project.files().contentHash().hex());
        report.lead()
                .ifPresent(lead -> answer.put("leadConcept", lead.concept().id().text()));
        answer.set("verdicts", verdicts(report));
        answer.set("coverage", JsonText.list(report.coverage(), CheckJson::coverage));
        answer.set(
                "unansweredNeeds",
                JsonText.list(
                        report.unanswered(),
                        need -> JsonText.NODES
                                .objectNode()
                                .put("need", need.id().text())
                                .put("words", need.words())));
        answer.set(
                "requirementsWithoutNeed",
                JsonText.list(
                        report.withoutNeed(),
                        requirement -> JsonText.NODES
                                .objectNode()
                                .put("requirement", requirement.id().text())
                                .put("title", requirement.title())));
        answer.set("claims", JsonText.list(report.claims(), CheckJson::claim));
        answer.set("statements", JsonText.list(report.advice(), CheckJson::wording));
        answer.set("problems", JsonText.problems(project.problems()));
        return answer;
    }

    /** The lead concept's first. */
    private static ArrayNode verdicts(CheckReport report) {
        ArrayNode all = JsonText.NODES.arrayNode();
        Stream.concat(report.lead().stream(), report.others().stream())
                .forEach(concept -> concept.rows().forEach(row -> all.add(verdict(concept, row))));
        return all;
    }

    private static ObjectNode verdict(ConceptVerdicts concept, Row row) {
        Verdict verdict = row.verdict();
        ObjectNode node = JsonText.NODES
                .objectNode()
                .put("concept", concept.concept().id().text())
                .put("requirement", row.requirement().id().text())
                .put("title", row.requirement().title())
                .put("verdict", verdict.words())
                .put("outcome", ValueText.word(verdict.outcome()))
                .put("certain", verdict.certainty() == Verdict.Certainty.CERTAIN);
        node.set("subject", AnswerJson.subject(verdict.at()));
        row.criterion().ifPresent(criterion -> addCriterion(node, criterion));
        AnswerJson.addValue(node, verdict.value());
        if (verdict.outcome() != Verdict.Outcome.MISSING_INPUT) {
            node.set("margin", JsonText.number(verdict.margin()));
            verdict.marginPct().ifPresent(share -> node.set("margin_pct", JsonText.number(share)));
        }
        AnswerJson.addBand(node, verdict.value(), verdict.band());
        row.standing().rung().ifPresent(rung -> node.put("rung", rung.word()));
        return node;
    }

    private static void addCriterion(ObjectNode node, Criterion criterion) {
        node.put("criterion", criterion.id())
                .put("figure", criterion.figure())
                .put("comparator", ValueText.word(criterion.comparator()));
        node.set("target", JsonText.number(criterion.target().value()));
        criterion.upper().ifPresent(upper -> node.set("upper", JsonText.number(upper.value())));
    }

    private static ObjectNode coverage(Coverage coverage) {
        ObjectNode node = JsonText.NODES.objectNode();
        coverage.riders().ifPresent(group -> node.put("riders", group.id().text()));
        coverage.counts().forEach((rung, count) -> node.put(rung.word(), count));
        return node;
    }

    private static ObjectNode claim(Assessment.ClaimStanding standing) {
        return JsonText.NODES
                .objectNode()
                .put("claim", standing.claim().id().text())
                .put("wording", standing.claim().wording())
                .put("approved", CheckReport.isApproved(standing))
                .put("state", standing.state().word())
                .put("reason", standing.detail());
    }

    private static ObjectNode wording(Wording wording) {
        ObjectNode node = JsonText.NODES
                .objectNode()
                .put("requirement", wording.requirement().id().text());
        node.set("findings", JsonText.list(wording.findings(), CheckJson::finding));
        return node;
    }

    private static ObjectNode finding(Finding finding) {
        return JsonText.NODES
                .objectNode()
                .put("check", finding.check().id())
                .put("from", finding.from())
                .put("to", finding.to())
                .put("words", finding.words())
                .put("reason", finding.reason())
                .put("better", finding.better());
    }
}
