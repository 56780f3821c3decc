package groupwright.documents.project;

import groupwright.definition.assessment.RequirementStanding;
import groupwright.definition.assessment.Rung;
import groupwright.definition.figure.Verdict;
import groupwright.definition.quality.Finding;
import groupwright.definition.quality.Measure;
import groupwright.definition.quality.Statement;
import groupwright.definition.quality.StatementChecks;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Need;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.Requirement;
import groupwright.definition.record.RiderGroup;
import groupwright.definition.record.TestResult;
import groupwright.documents.content.BlockAnswer;
import groupwright.documents.content.Column;
import groupwright.documents.content.Inline;
import groupwright.documents.content.Phrase;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** From needs through requirements to the ladder: what is covered and where the gaps are. */
final class CoverageBlocks {
    private CoverageBlocks() {}

    /**
     * One row for each need and each requirement that answers it: how far that requirement is for the lead concept. A need
     * without a requirement has a row of its own. Each row says all, so that rows can be filtered.
     *
     * @param arguments a rider group, whose needs and verdicts count then; all needs and the verdict over all groups without
     */
    static BlockAnswer needs(Sheet sheet, String arguments) {
        Optional<RiderGroup> riders =
                BlockArguments.of("need-coverage", arguments, List.of()).one(sheet, RiderGroup.class, "rider group");
        List<Column> columns = Stream.of(
                        "coverage.need",
                        "needs.words",
                        "needs.importance",
                        "verdicts.requirement",
                        "coverage.reached",
                        "verdicts.verdict")
                .map(sheet::textColumn)
                .toList();
        List<List<Phrase>> rows = new ArrayList<>();
        for (Need need : sheet.definition().all(RecordKinds.NEED)) {
            boolean about =
                    riders.isEmpty() || need.riders().contains(riders.get().id());
            if (need.isCurrent() && about) {
                rows.addAll(rows(sheet, need, riders));
            }
        }
        return new BlockAnswer.Table(columns, rows);
    }

    private static List<List<Phrase>> rows(Sheet sheet, Need need, Optional<RiderGroup> riders) {
        List<List<Phrase>> rows = new ArrayList<>();
        String words = sheet.quoted(need);
        for (Requirement requirement : sheet.assessment().requirements()) {
            boolean concerns = riders.isEmpty()
                    || requirement.riders().isEmpty()
                    || requirement.riders().contains(riders.get().id());
            if (concerns && requirement.answers().contains(need.id())) {
                List<Phrase> row = start(sheet, need);
                row.add(Phrase.of(requirement.id() + " " + requirement.title()));
                row.add(reached(sheet, requirement));
                row.add(verdict(sheet, riders, requirement));
                rows.add(row);
            }
        }
        if (rows.isEmpty()) {
            List<Phrase> gap = start(sheet, need);
            gap.add(Phrase.of(sheet.labels().text("coverage.noRequirement")));
            gap.addAll(List.of(Phrase.of("—"), Phrase.of("—")));
            rows.add(gap);
        }
        return rows;
    }

    private static List<Phrase> start(Sheet sheet, Need need) {
        return new ArrayList<>(List.of(
                Phrase.of(need.id().text()),
                Phrase.of(sheet.quoted(need)),
                Phrase.of(
                        sheet.labels().text("needs." + need.importance().name().toLowerCase(Locale.ROOT)))));
    }

    private static Phrase reached(Sheet sheet, Requirement requirement) {
        RequirementStanding standing = sheet.assessment().standing(requirement.id(), sheet.lead());
        String rung = standing.rung()
                .map(Rung::word)
                .map(word -> sheet.labels().text("rung." + word))
                .orElse("—");
        return Phrase.of(
                requirement.state() == Requirement.State.AGREED
                        ? rung
                        : sheet.labels()
                                        .text("state."
                                                + requirement.state().name().toLowerCase(Locale.ROOT)) + ", " + rung);
    }

    private static Phrase verdict(Sheet sheet, Optional<RiderGroup> riders, Requirement requirement) {
        if (requirement.criteria().isEmpty()) {
            return Phrase.of(sheet.labels().text("coverage.noCriterion"));
        }
        Verdict verdict = riders.map(
                        group -> sheet.assessment().verdictForRiders(requirement.id(), sheet.lead(), group.id()))
                .orElseGet(() -> sheet.assessment().verdict(requirement.id(), sheet.lead()));
        return Phrase.of(new Inline.Judged(Marks.verdict(verdict)));
    }

    /** Needs that no requirement answers, in the riders' words. */
    static BlockAnswer unanswered(Sheet sheet, String arguments) {
        BlockArguments.of("unanswered-needs", arguments, List.of());
        return new BlockAnswer.Items(sheet.assessment().unansweredNeeds().stream()
                .map(need -> Phrase.of(need.id() + " " + sheet.quoted(need)))
                .toList());
    }

    /** Requirements that lack something: a need, a criterion, a result of the test that shall prove them. */
    static BlockAnswer gaps(Sheet sheet, String arguments) {
        BlockArguments.of("gaps", arguments, List.of());
        List<Column> columns = List.of(
                sheet.textColumn("block.id"),
                sheet.textColumn("verdicts.requirement"),
                sheet.textColumn("gaps.lacks"),
                sheet.textColumn("gaps.owner"));
        List<List<Phrase>> rows = new ArrayList<>();
        for (Requirement requirement : sheet.assessment().requirements()) {
            String lacks = lacks(sheet, requirement);
            if (!lacks.isEmpty() && requirement.state() != Requirement.State.PARKED) {
                rows.add(List.of(
                        Phrase.of(requirement.id().text()),
                        Phrase.of(requirement.title()),
                        Phrase.of(lacks),
                        sheet.plain(requirement.owner())));
            }
        }
        return new BlockAnswer.Table(columns, rows);
    }

    private static String lacks(Sheet sheet, Requirement requirement) {
        List<String> lacks = new ArrayList<>();
        if (requirement.answers().isEmpty()) {
            lacks.add("gaps.need");
        }
        if (requirement.criteria().isEmpty()) {
            lacks.add("gaps.criterion");
        }
        boolean byTrial = requirement.verification() != Requirement.Verification.ANALYSIS;
        if (byTrial && requirement.results().stream().noneMatch(result -> isAbout(result, sheet.lead()))) {
            lacks.add("gaps.result");
        }
        return lacks.stream()
                .map(sheet.labels()::text)
                .collect(Collectors.joining(sheet.labels().text("list.separator")));
    }

    private static boolean isAbout(TestResult result, RecordId lead) {
        return result.concept().equals(lead);
    }

    /** What makes statements hard to verify: advice, none of it blocks anything. */
    static BlockAnswer statementAdvice(Sheet sheet, String arguments) {
        BlockArguments.of("statement-advice", arguments, List.of());
        StatementChecks checks = StatementChecks.in(Locale.ENGLISH); // the language requirements are written in
        List<Column> columns =
                List.of(sheet.textColumn("block.id"), sheet.textColumn("advice.words"), sheet.textColumn("advice.why"));
        List<List<Phrase>> rows = new ArrayList<>();
        for (Requirement requirement : sheet.assessment().requirements()) {
            Measure measure = requirement.criteria().isEmpty() ? Measure.NONE : Measure.GIVEN;
            for (Finding finding : checks.check(new Statement(requirement.statement(), measure))) {
                rows.add(List.of(
                        Phrase.of(requirement.id().text()),
                        sheet.plain(finding.words()),
                        Phrase.of(checks.title(finding.check()) + ": " + finding.reason())));
            }
        }
        return new BlockAnswer.Table(columns, rows);
    }

    /** Agreed requirements as rows, concepts as columns, the verdict in each cell. */
    static BlockAnswer grid(Sheet sheet, String arguments) {
        BlockArguments.of("verdict-grid", arguments, List.of());
        List<Concept> concepts = sheet.assessment().concepts();
        List<Column> columns = new ArrayList<>(List.of(
                sheet.textColumn("block.id"),
                sheet.textColumn("verdicts.requirement"),
                sheet.numberColumn("grid.weight")));
        concepts.forEach(concept -> columns.add(Column.text(concept.id().text())));
        List<List<Phrase>> rows = new ArrayList<>();
        for (Requirement requirement : RequirementBlocks.agreed(sheet)) {
            List<Phrase> row = new ArrayList<>(List.of(
                    Phrase.of(requirement.id().text()),
                    Phrase.of(requirement.title()),
                    Phrase.of(Integer.toString(requirement.weight()))));
            concepts.forEach(concept -> row.add(Phrase.of(
                    new Inline.Judged(Marks.verdict(sheet.assessment().verdict(requirement.id(), concept.id()))))));
            rows.add(row);
        }
        return new BlockAnswer.Table(columns, rows);
    }

    /** How many agreed requirements each concept meets, misses, or cannot be judged on. */
    static BlockAnswer counts(Sheet sheet, String arguments) {
        BlockArguments.of("verdict-counts", arguments, List.of());
        List<Concept> concepts = sheet.assessment().concepts();
        if (concepts.isEmpty()) {
            return sheet.nothing();
        }
        List<Column> columns = new ArrayList<>(List.of(sheet.textColumn("verdicts.verdict")));
        concepts.forEach(concept -> columns.add(Column.number(concept.id().text())));
        List<List<Phrase>> rows = new ArrayList<>();
        for (groupwright.documents.content.Verdict verdict : groupwright.documents.content.Verdict.values()) {
            List<Phrase> row = new ArrayList<>(List.of(Phrase.of(new Inline.Judged(verdict))));
            concepts.forEach(concept -> row.add(Phrase.of(Long.toString(RequirementBlocks.agreed(sheet).stream()
                    .map(requirement -> sheet.assessment().verdict(requirement.id(), concept.id()))
                    .filter(given -> Marks.verdict(given) == verdict)
                    .count()))));
            rows.add(row);
        }
        return new BlockAnswer.Table(columns, rows);
    }
}
