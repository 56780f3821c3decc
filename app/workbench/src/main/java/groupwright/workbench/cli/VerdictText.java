package groupwright.workbench.cli;

import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Verdict;
import groupwright.definition.record.Entry;
import groupwright.definition.record.RecordId;
import groupwright.documents.labels.Labels;
import groupwright.documents.numbers.Reader;
import groupwright.documents.numbers.TargetText;
import groupwright.documents.trace.ShownValue;
import groupwright.workbench.cli.CheckReport.ConceptVerdicts;
import groupwright.workbench.cli.CheckReport.Row;
import groupwright.workbench.cli.TextTable.Side;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Verdicts for people: in a table for one concept, as counts where several are compared. */
final class VerdictText {
    private final OpenProject project;
    private final Reader reader;
    private final TargetText targets;

    VerdictText(OpenProject project, Reader reader) {
        this.project = project;
        this.reader = reader;
        this.targets = new TargetText(reader, Labels.of(reader.locale()));
    }

    /** One row a requirement: verdict, value, target, margin, where it is worst, how far it has come. */
    TextTable table(ConceptVerdicts concept) {
        TextTable table = new TextTable(
                List.of(Side.LEFT, Side.LEFT, Side.RIGHT, Side.LEFT, Side.RIGHT, Side.RIGHT, Side.LEFT, Side.LEFT));
        table.row("requirement", "verdict", "value", "target", "margin", "in %", "worst", "rung");
        for (Row row : concept.rows()) {
            Verdict verdict = row.verdict();
            table.row(
                    row.requirement().id() + " " + row.requirement().title(),
                    verdict.words(),
                    value(row),
                    row.criterion().map(targets::of).orElse(""),
                    margin(row),
                    marginPct(verdict),
                    worst(concept.concept().id(), verdict),
                    row.standing().rung().map(rung -> rung.word()).orElse(""));
        }
        return table;
    }

    /** What is missing for each verdict that lacks input, a line each. */
    String missing(ConceptVerdicts concept) {
        StringBuilder lines = new StringBuilder();
        for (Row row : concept.rows()) {
            row.verdict()
                    .missing()
                    .forEach(input -> lines.append(row.requirement().id())
                            .append(" lacks ")
                            .append(input.address())
                            .append(": ")
                            .append(input.remedy())
                            .append('\n'));
        }
        return lines.toString();
    }

    /** For example: meets 14; misses 2 (R-005, R-009). */
    String counts(ConceptVerdicts concept) {
        Map<String, List<String>> byWords = new LinkedHashMap<>();
        for (Row row : concept.rows()) {
            byWords.computeIfAbsent(row.verdict().words(), any -> new ArrayList<>())
                    .add(row.requirement().id().text());
        }
        return byWords.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(entry -> entry.getKey() + " " + entry.getValue().size()
                        + (entry.getKey().equals("meets") ? "" : " (" + String.join(", ", entry.getValue()) + ")"))
                .collect(Collectors.joining("; "));
    }

    private int decimals(Row row) {
        return row.criterion()
                .flatMap(criterion -> project.view().catalogue().find(criterion.figure()))
                .map(figure -> figure.decimals())
                .orElse(2);
    }

    private String value(Row row) {
        return row.verdict().value() instanceof Quantity quantity
                ? new ShownValue(
                                reader.number(quantity.value(), decimals(row)),
                                quantity.unit().symbol())
                        .text()
                : "";
    }

    private String margin(Row row) {
        return row.verdict().value() instanceof Quantity quantity
                ? new ShownValue(
                                reader.signed(row.verdict().margin(), decimals(row) + 1),
                                quantity.unit().symbol())
                        .text()
                : "";
    }

    private String marginPct(Verdict verdict) {
        return verdict.value() instanceof Quantity
                ? verdict.marginPct().map(share -> reader.signed(share, 1)).orElse("")
                : "";
    }

    /** The rider group or bike, by id and name. */
    private String worst(RecordId concept, Verdict verdict) {
        return verdict.at().ids().stream()
                .filter(id -> !id.equals(concept) && !id.letters().equals("R"))
                .map(id -> id
                        + project.definition()
                                .get(id)
                                .map(Entry::title)
                                .map(title -> " " + title)
                                .orElse(""))
                .collect(Collectors.joining(", "));
    }
}
