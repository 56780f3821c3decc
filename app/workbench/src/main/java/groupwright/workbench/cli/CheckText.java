package groupwright.workbench.cli;

import groupwright.definition.assessment.Assessment;
import groupwright.definition.assessment.Rung;
import groupwright.definition.record.Concept;
import groupwright.documents.numbers.Reader;
import groupwright.workbench.cli.CheckReport.ConceptVerdicts;
import groupwright.workbench.cli.CheckReport.Coverage;
import groupwright.workbench.cli.CheckReport.Wording;
import groupwright.workbench.cli.TextTable.Side;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** How a project stands, for people: verdicts first, advice on wording last. */
final class CheckText {
    private final OpenProject project;
    private final CheckReport report;
    private final VerdictText verdicts;
    private final ClaimText claims;
    private final StringBuilder lines = new StringBuilder();

    CheckText(OpenProject project, CheckReport report, Reader reader) {
        this.project = project;
        this.report = report;
        this.verdicts = new VerdictText(project, reader);
        this.claims = new ClaimText(project, reader);
    }

    String text() {
        String name = project.definition().project().name();
        report.lead()
                .ifPresentOrElse(
                        lead -> {
                            head(name + ": " + named(lead.concept()) + " leads");
                            lines.append(
                                    lead.rows().isEmpty() ? "No requirement is agreed yet.\n" : verdicts.table(lead));
                            lines.append(verdicts.missing(lead));
                        },
                        () -> head(name + ": no concept leads; name one as leadConcept in project.json"));
        others();
        coverage();
        list(
                "Needs no requirement answers",
                report.unanswered().stream()
                        .map(need -> need.id() + " \"" + need.words() + "\"")
                        .toList());
        list(
                "Requirements that answer no need",
                report.withoutNeed().stream()
                        .map(requirement -> requirement.id() + " " + requirement.title())
                        .toList());
        claims();
        advice();
        return lines.toString();
    }

    private static String named(Concept concept) {
        return concept.id() + " " + concept.title();
    }

    private void head(String words) {
        lines.append(lines.isEmpty() ? "" : "\n").append(words).append('\n');
    }

    private void list(String head, List<String> items) {
        if (!items.isEmpty()) {
            head(head + " (" + items.size() + ")");
            items.forEach(item -> lines.append(item).append('\n'));
        }
    }

    private void others() {
        if (!report.others().isEmpty()) {
            head("The other concepts");
            for (ConceptVerdicts other : report.others()) {
                lines.append(named(other.concept()))
                        .append(": ")
                        .append(verdicts.counts(other))
                        .append('\n');
            }
        }
    }

    private void coverage() {
        if (report.coverage().isEmpty()) {
            return;
        }
        List<Side> sides = new ArrayList<>(List.of(Side.LEFT));
        sides.addAll(Collections.nCopies(Rung.values().length, Side.RIGHT));
        TextTable table = new TextTable(sides);
        List<String> heads = new ArrayList<>(List.of("Coverage"));
        for (Rung rung : Rung.values()) {
            heads.add(rung.word());
        }
        table.row(heads.toArray(String[]::new));
        for (Coverage row : report.coverage()) {
            List<String> cells = new ArrayList<>();
            cells.add(
                    row.riders().map(group -> group.id() + " " + group.title()).orElse("all requirements"));
            row.counts().values().forEach(count -> cells.add(count.toString()));
            table.row(cells.toArray(String[]::new));
        }
        lines.append('\n').append(table);
    }

    private void claims() {
        list("Claims", report.claims().stream().map(this::claim).toList());
    }

    private String claim(Assessment.ClaimStanding standing) {
        String why = standing.detail().isEmpty() ? "" : " (" + standing.detail() + ")";
        return standing.claim().id() + " " + standing.state().word() + why + ": " + claims.wording(standing.claim());
    }

    /** Advice never changes the exit code. */
    private void advice() {
        int findings = report.advice().stream()
                .mapToInt(wording -> wording.findings().size())
                .sum();
        if (findings == 0) {
            return;
        }
        head("Advice on wording: " + findings + " findings in "
                + report.advice().size() + " requirements");
        for (Wording wording : report.advice()) {
            lines.append(wording.requirement().id())
                    .append(' ')
                    .append(wording.requirement().title());
            lines.append(" (").append(wording.findings().size()).append(")\n");
            wording.findings()
                    .forEach(finding -> lines.append("  ")
                            .append(finding.words().isEmpty() ? "" : "\"" + finding.words() + "\": ")
                            .append(finding.reason())
                            .append(' ')
                            .append(finding.better())
                            .append('\n'));
        }
    }
}
