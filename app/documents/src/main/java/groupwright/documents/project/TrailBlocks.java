package groupwright.documents.project;

import groupwright.definition.assessment.Asked;
import groupwright.definition.assessment.Assessment.ClaimStanding;
import groupwright.definition.assessment.ClaimState;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Level;
import groupwright.definition.figure.Quantity;
import groupwright.definition.ledger.Workings;
import groupwright.definition.record.Claim;
import groupwright.definition.record.Need;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Requirement;
import groupwright.documents.content.BlockAnswer;
import groupwright.documents.content.Column;
import groupwright.documents.content.Inline;
import groupwright.documents.content.Phrase;
import groupwright.documents.trace.TraceEntry;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Blocks that follow numbers: from a need to the page where its answer stands, and back from records and claims. */
final class TrailBlocks {
    private TrailBlocks() {}

    /** One row a criterion of an agreed requirement: its needs, its answer, what that rests on, claims, places. */
    static BlockAnswer forwards(Sheet sheet, String arguments) {
        BlockArguments.of("trails", arguments, List.of());
        List<Column> columns = List.of(
                sheet.textColumn("trail.needs"),
                sheet.textColumn("verdicts.requirement"),
                sheet.textColumn("trail.asks"),
                sheet.numberColumn("trail.answer"),
                sheet.textColumn("trail.from"),
                sheet.textColumn("trail.claims"),
                sheet.textColumn("trail.places"));
        List<List<Phrase>> rows = new ArrayList<>();
        for (Requirement requirement : RequirementBlocks.agreed(sheet)) {
            Trail trail = Trail.of(sheet, requirement);
            trail.steps().forEach(step -> rows.add(row(sheet, trail, step)));
        }
        return new BlockAnswer.Table(columns, rows);
    }

    private static List<Phrase> row(Sheet sheet, Trail trail, Trail.Step step) {
        List<TraceEntry> entries =
                step.ask().map(sheet.traces()::entry).stream().toList();
        Phrase answer = step.ask().map(ask -> Phrase.of(sheet.live(ask))).orElse(Phrase.of("—"));
        return List.of(
                sheet.plain(ids(trail.needs().stream().map(Need::id).toList())),
                Phrase.of(trail.requirement().id().text()),
                Phrase.of(figure(sheet, step) + " " + sheet.targets().of(step.criterion())),
                answer,
                sheet.plain(records(step)),
                sheet.plain(ids(trail.claims().stream().map(Claim::id).toList())),
                entries.isEmpty() ? Phrase.of("—") : Phrase.of(new Inline.Places(entries)));
    }

    private static String figure(Sheet sheet, Trail.Step step) {
        return step.ask()
                .map(ask -> sheet.name(ask.figure())
                        + sheet.parameters(step.criterion().parameters()))
                .orElse(step.criterion().figure());
    }

    private static String ids(List<RecordId> ids) {
        return ids.stream().map(RecordId::text).collect(Collectors.joining(", "));
    }

    /** The records behind an answer, many of a kind only counted; the entry of the number names each. */
    private static String records(Trail.Step step) {
        List<RecordId> ids = step.inputs().stream()
                .map(input -> input.address().record())
                .distinct()
                .sorted()
                .toList();
        return IdRuns.counted(ids);
    }

    /** One row a field that an agreed requirement or a claim rests on: figures, requirements, needs and claims behind it. */
    static BlockAnswer backwards(Sheet sheet, String arguments) {
        BlockArguments.of("trails-back", arguments, List.of());
        List<Column> columns = List.of(
                sheet.textColumn("trail.kept"),
                sheet.textColumn("trail.figures"),
                sheet.textColumn("trail.requirements"),
                sheet.textColumn("trail.needs"),
                sheet.textColumn("trail.claims"));
        Map<String, Behind> fields = new TreeMap<>();
        for (Requirement requirement : RequirementBlocks.agreed(sheet)) {
            Trail trail = Trail.of(sheet, requirement);
            for (Trail.Step step : trail.steps()) {
                step.ask()
                        .ifPresent(ask -> step.inputs()
                                .forEach(input -> behind(fields, input).add(sheet.name(ask.figure()), trail)));
            }
        }
        for (ClaimStanding standing : said(sheet)) {
            for (Ask ask : Asked.asks(sheet.view(), standing.claim())) {
                sheet.view()
                        .trace(ask)
                        .forEach(input -> behind(fields, input).add(sheet.name(ask.figure()), standing.claim()));
            }
        }
        return new BlockAnswer.Table(
                columns,
                fields.entrySet().stream()
                        .map(field -> field.getValue().row(sheet, field.getKey()))
                        .toList());
    }

    private static Behind behind(Map<String, Behind> fields, Workings.FieldInput input) {
        return fields.computeIfAbsent(
                input.address().record() + "." + input.address().path().get(0), any -> new Behind());
    }

    private static List<ClaimStanding> said(Sheet sheet) {
        return sheet.assessment().claims().stream()
                .filter(standing -> standing.claim().isCurrent() && standing.state() != ClaimState.WITHDRAWN)
                .toList();
    }

    /** What hangs on one field. */
    private static final class Behind {
        private final Set<String> figures = new LinkedHashSet<>();
        private final Set<RecordId> requirements = new LinkedHashSet<>();
        private final Set<RecordId> needs = new LinkedHashSet<>();
        private final Set<RecordId> claims = new LinkedHashSet<>();

        void add(String figure, Trail trail) {
            figures.add(figure);
            requirements.add(trail.requirement().id());
            trail.needs().forEach(need -> needs.add(need.id()));
            trail.claims().forEach(claim -> claims.add(claim.id()));
        }

        void add(String figure, Claim claim) {
            figures.add(figure);
            claims.add(claim.id());
        }

        List<Phrase> row(Sheet sheet, String address) {
            return List.of(
                    Phrase.of(address),
                    Phrase.of(String.join(sheet.labels().text("list.separator"), figures)),
                    sheet.plain(sorted(requirements)),
                    sheet.plain(sorted(needs)),
                    sheet.plain(sorted(claims)));
        }

        private static String sorted(Set<RecordId> ids) {
            return IdRuns.text(ids.stream().sorted().toList());
        }
    }

    /** One row a claim: what it rests on, back to what riders said. */
    static BlockAnswer claims(Sheet sheet, String arguments) {
        BlockArguments.of("claim-trails", arguments, List.of());
        List<Column> columns = List.of(
                sheet.textColumn("trail.claim"),
                sheet.textColumn("claims.state"),
                sheet.textColumn("trail.answers"),
                sheet.textColumn("trail.requirements"),
                sheet.textColumn("trail.needs"));
        List<List<Phrase>> rows = new ArrayList<>();
        for (ClaimStanding standing : said(sheet)) {
            rows.add(List.of(
                    Phrase.of(standing.claim().id().text()),
                    Phrase.of(sheet.labels().text("claim." + standing.state().name())),
                    answers(sheet, standing.claim()),
                    sheet.plain(ids(standing.claim().requirements())),
                    sheet.plain(needs(sheet, standing.claim()))));
        }
        return new BlockAnswer.Table(columns, rows);
    }

    private static Phrase answers(Sheet sheet, Claim claim) {
        List<Inline> parts = new ArrayList<>();
        for (Ask ask : Asked.asks(sheet.view(), claim)) {
            if (ask.figure().level() != Level.CALCULUS) {
                continue; // verdicts have a column of their own, the requirements
            }
            parts.add(new Inline.Plain(
                    (parts.isEmpty() ? "" : sheet.labels().text("list.separator")) + sheet.name(ask.figure()) + " "));
            parts.add(sheet.live(ask));
        }
        return parts.isEmpty() ? Phrase.of("—") : new Phrase(parts);
    }

    private static String needs(Sheet sheet, Claim claim) {
        return claim.requirements().stream()
                .flatMap(id -> sheet.definition().get(id, Requirement.class).stream())
                .flatMap(requirement -> requirement.answers().stream())
                .distinct()
                .sorted()
                .map(RecordId::text)
                .collect(Collectors.joining(", "));
    }

    /**
     * The trail of one requirement as a picture.
     *
     * @param arguments a requirement; without one the agreed requirement that counts most of those that have an answer and
     *     a need, of equals the first
     */
    static BlockAnswer picture(Sheet sheet, String arguments) {
        Optional<Requirement> named =
                BlockArguments.of("trail", arguments, List.of()).one(sheet, Requirement.class, "requirement");
        return named.or(() -> weightiest(sheet))
                .map(requirement -> picture(sheet, requirement))
                .orElseGet(() -> sheet.nothing());
    }

    private static Optional<Requirement> weightiest(Sheet sheet) {
        return RequirementBlocks.agreed(sheet).stream()
                .filter(requirement -> !requirement.answers().isEmpty())
                .filter(requirement -> sheet.assessment()
                                .verdict(requirement.id(), sheet.lead())
                                .value()
                        instanceof Quantity)
                .sorted(Comparator.comparingInt((Requirement requirement) -> -requirement.weight()))
                .findFirst();
    }

    private static BlockAnswer picture(Sheet sheet, Requirement requirement) {
        Trail trail = Trail.of(sheet, requirement);
        List<TraceEntry> entries = trail.steps().stream()
                .flatMap(step -> step.ask().stream())
                .map(sheet.traces()::entry)
                .toList();
        return new BlockAnswer.Drawing(TrailPicture.of(sheet, trail), entries);
    }
}
