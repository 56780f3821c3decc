package groupwright.documents.project;

import groupwright.definition.assessment.Rung;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Missing;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Subject;
import groupwright.definition.figure.Verdict;
import groupwright.definition.record.Criterion;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Requirement;
import groupwright.definition.record.RiderGroup;
import groupwright.documents.content.BlockAnswer;
import groupwright.documents.content.Column;
import groupwright.documents.content.Inline;
import groupwright.documents.content.Phrase;
import groupwright.documents.numbers.Measured;
import groupwright.documents.trace.ShownValue;
import groupwright.documents.trace.TraceEntry;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Blocks about requirements and how they stand for the lead concept. */
final class RequirementBlocks {
    private RequirementBlocks() {}

    private static final String LEAST_WEIGHT = "least-weight";
    private static final String MOST = "most";
    /** Where bars stand in a row of verdicts. */
    private static final int BARS = 4;

    static List<Requirement> agreed(Sheet sheet) {
        return sheet.assessment().requirements().stream()
                .filter(requirement -> requirement.state() == Requirement.State.AGREED)
                .toList();
    }

    /** Agreed requirements that count enough. */
    private static List<Requirement> weighty(Sheet sheet, BlockArguments arguments) {
        double least = arguments.number(LEAST_WEIGHT).orElse(0.0);
        return agreed(sheet).stream()
                .filter(requirement -> requirement.weight() >= least)
                .toList();
    }

    /**
     * One row a criterion: target, value, bar, verdict.
     *
     * @param arguments {@code least-weight=8} leaves out requirements that count less
     */
    static BlockAnswer verdicts(Sheet sheet, String arguments) {
        RecordId lead = sheet.lead();
        List<Column> columns = List.of(
                sheet.textColumn("block.id"),
                sheet.textColumn("verdicts.requirement"),
                sheet.numberColumn("verdicts.target"),
                Column.number(lead.text()),
                Column.text(sheet.labels().text("verdicts.margin")),
                sheet.textColumn("verdicts.verdict"));
        List<List<Phrase>> rows = new ArrayList<>();
        for (Requirement requirement :
                weighty(sheet, BlockArguments.of("verdicts", arguments, List.of(LEAST_WEIGHT)))) {
            for (Criterion criterion : requirement.criteria()) {
                rows.add(row(sheet, lead, requirement, criterion));
            }
        }
        return new BlockAnswer.Table(columns, rows);
    }

    /** The same without bars, for narrow places. */
    static BlockAnswer verdictsInShort(Sheet sheet, String arguments) {
        BlockAnswer.Table whole = (BlockAnswer.Table) verdicts(sheet, arguments);
        return new BlockAnswer.Table(
                withoutBars(whole.columns()),
                whole.rows().stream().map(RequirementBlocks::withoutBars).toList());
    }

    private static <T> List<T> withoutBars(List<T> cells) {
        List<T> rest = new ArrayList<>(cells);
        rest.remove(BARS);
        return rest;
    }

    private static List<Phrase> row(Sheet sheet, RecordId lead, Requirement requirement, Criterion criterion) {
        Verdict verdict = sheet.assessment().verdict(requirement.id(), lead, criterion);
        return List.of(
                Phrase.of(requirement.id().text()),
                Phrase.of(requirement.title() + which(requirement, criterion) + where(verdict, lead)),
                Phrase.of(sheet.targets().of(criterion)),
                value(sheet, criterion, verdict),
                Phrase.of(Marks.bar(verdict)),
                Phrase.of(new Inline.Judged(Marks.verdict(verdict))));
    }

    /** What tells several criteria of one requirement apart: the words of their parameters. */
    private static String which(Requirement requirement, Criterion criterion) {
        if (requirement.criteria().size() < 2 || criterion.parameters().values().isEmpty()) {
            return "";
        }
        return ": "
                + String.join(", ", criterion.parameters().values().values()).replace('-', ' ');
    }

    /** The rider group or bike that is worst, where the verdict depends on one. */
    private static String where(Verdict verdict, RecordId lead) {
        String others = verdict.at().ids().stream()
                .filter(id -> !id.equals(lead) && !id.letters().equals("R"))
                .map(RecordId::text)
                .collect(Collectors.joining(", "));
        return others.isEmpty() ? "" : " (" + others + ")";
    }

    private static Phrase value(Sheet sheet, Criterion criterion, Verdict verdict) {
        if (!(verdict.value() instanceof Quantity)) {
            return Phrase.of("—");
        }
        Ask ask = ask(sheet, criterion, verdict.at());
        TraceEntry entry = sheet.traces().entry(ask);
        return Phrase.of(new Inline.Live(ShownValue.of(entry.shown().value()), entry));
    }

    private static Ask ask(Sheet sheet, Criterion criterion, Subject at) {
        return new Ask(sheet.view().catalogue().find(criterion.figure()).orElseThrow(), at, criterion.parameters());
    }

    /** Each requirement as a sentence, with what it answers and how it is verified. */
    static BlockAnswer statements(Sheet sheet, String arguments) {
        List<Column> columns = List.of(
                sheet.textColumn("block.id"),
                sheet.textColumn("statements.statement"),
                sheet.textColumn("statements.answers"),
                sheet.textColumn("statements.verified"));
        List<List<Phrase>> rows = new ArrayList<>();
        for (Requirement requirement : agreed(sheet)) {
            rows.add(List.of(
                    Phrase.of(requirement.id().text()),
                    Phrase.of(requirement.statement()),
                    sheet.plain(
                            requirement.answers().stream().map(RecordId::text).collect(Collectors.joining(", "))),
                    Phrase.of(sheet.labels()
                            .text("verification."
                                    + requirement.verification().name().toLowerCase(Locale.ROOT)))));
        }
        return new BlockAnswer.Table(columns, rows);
    }

    /**
     * What stands in the way of each agreed requirement that does not meet for certain, in the order of ids; with
     * {@code most} those that count most first, and how many more there are.
     *
     * @param arguments {@code least-weight=8} leaves out requirements that count less, {@code most=4} all but the first
     */
    static BlockAnswer open(Sheet sheet, String arguments) {
        BlockArguments read = BlockArguments.of("open", arguments, List.of(LEAST_WEIGHT, MOST));
        Optional<Double> most = read.number(MOST);
        Comparator<Requirement> order =
                Comparator.comparingInt(requirement -> most.isEmpty() ? 0 : -requirement.weight());
        List<Phrase> items = weighty(sheet, read).stream()
                .sorted(order) // stable, so ids keep their order among equals
                .flatMap(requirement -> item(sheet, requirement).stream())
                .toList();
        int shown = (int) Math.min(items.size(), Math.round(most.orElse((double) items.size())));
        List<Phrase> first = new ArrayList<>(items.subList(0, shown));
        if (shown < items.size()) {
            first.add(Phrase.of(sheet.labels().text("open.more", Integer.toString(items.size() - shown))));
        }
        return new BlockAnswer.Items(first);
    }

    private static Optional<Phrase> item(Sheet sheet, Requirement requirement) {
        Verdict verdict = sheet.assessment().verdict(requirement.id(), sheet.lead());
        return verdict.meetsForCertain()
                ? Optional.empty()
                : Optional.of(Phrase.of(
                        new Inline.Plain(requirement.id() + " " + requirement.title() + ": "),
                        new Inline.Judged(Marks.verdict(verdict)),
                        new Inline.Plain(why(sheet, requirement, verdict))));
    }

    private static String why(Sheet sheet, Requirement requirement, Verdict verdict) {
        String owner =
                requirement.owner().isEmpty() ? "" : " " + sheet.labels().text("open.owner", requirement.owner());
        if (verdict.value() instanceof Missing missing) {
            return ". " + sheet.text().missing(missing) + "." + owner;
        }
        String unit =
                verdict.value() instanceof Quantity quantity ? quantity.unit().symbol() : "";
        Measured measured = sheet.reader().in(unit);
        int decimals = decimals(sheet, requirement, verdict);
        return " "
                + sheet.labels()
                        .text(
                                "open.margin",
                                measured.with(measured.signed(verdict.margin(), decimals))
                                        .text())
                + owner;
    }

    private static int decimals(Sheet sheet, Requirement requirement, Verdict verdict) {
        return requirement.criteria().stream()
                .filter(criterion -> criterion.id().equals(verdict.criterion()))
                .findFirst()
                .flatMap(criterion -> sheet.view().catalogue().find(criterion.figure()))
                .map(figure -> figure.decimals() + 1)
                .orElse(2);
    }

    /** How many requirements have reached each rung, in all and by rider group. */
    static BlockAnswer coverage(Sheet sheet, String arguments) {
        List<Column> columns = new ArrayList<>(List.of(sheet.textColumn("coverage.riders")));
        for (Rung rung : Rung.values()) {
            columns.add(sheet.numberColumn("rung." + rung.word()));
        }
        List<List<Phrase>> rows = new ArrayList<>();
        rows.add(counts(sheet.labels().text("coverage.all"), sheet.assessment().coverage(sheet.lead())));
        for (RiderGroup group : sheet.assessment().riderGroups()) {
            rows.add(counts(group.id() + " " + group.title(), sheet.assessment().coverage(sheet.lead(), group.id())));
        }
        return new BlockAnswer.Table(columns, rows);
    }

    private static List<Phrase> counts(String head, Map<Rung, Integer> counts) {
        List<Phrase> row = new ArrayList<>(List.of(Phrase.of(head)));
        counts.values().forEach(count -> row.add(Phrase.of(count.toString())));
        return row;
    }
}
