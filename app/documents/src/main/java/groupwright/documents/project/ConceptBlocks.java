package groupwright.documents.project;

import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.FigureText;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Scope;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordId;
import groupwright.documents.content.BlockAnswer;
import groupwright.documents.content.Column;
import groupwright.documents.content.Phrase;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Blocks that set concepts side by side. */
final class ConceptBlocks {
    private ConceptBlocks() {}

    /** What each concept is. */
    static BlockAnswer setUps(Sheet sheet, String arguments) {
        List<Column> columns = List.of(
                sheet.textColumn("block.id"),
                sheet.textColumn("concepts.title"),
                sheet.textColumn("concepts.rings"),
                sheet.textColumn("concepts.cogs"));
        List<List<Phrase>> rows = new ArrayList<>();
        for (Concept concept : sheet.assessment().concepts()) {
            rows.add(List.of(
                    Phrase.of(concept.id().text()),
                    Phrase.of(concept.title()),
                    Phrase.of(joined(concept.rings(), " / ")),
                    Phrase.of(joined(concept.cogs(), "-"))));
        }
        return new BlockAnswer.Table(columns, rows);
    }

    private static String joined(List<Integer> teeth, String between) {
        return teeth.stream().map(Object::toString).collect(Collectors.joining(between));
    }

    /**
     * Figures as rows, concepts as columns.
     *
     * @param arguments figures in the figure grammar without a concept, parted by commas; a figure about riders as well is
     *     asked for each rider group, unless the text names one
     */
    static BlockAnswer figures(Sheet sheet, String arguments) {
        if (arguments.isBlank()) {
            throw new Invalid("", "the block names no figure", "write for example figures gear-range, largest-step");
        }
        List<Concept> concepts = sheet.assessment().concepts();
        if (concepts.isEmpty()) {
            return sheet.nothing();
        }
        List<Column> columns = new ArrayList<>(List.of(
                sheet.textColumn("block.figure"), sheet.textColumn("block.for"), sheet.textColumn("block.unit")));
        concepts.forEach(concept -> columns.add(Column.number(concept.id().text())));
        List<List<Phrase>> rows = new ArrayList<>();
        for (String text : arguments.split(",")) {
            rows.addAll(rows(sheet, text.strip(), concepts));
        }
        return new BlockAnswer.Table(columns, rows);
    }

    private static List<List<Phrase>> rows(Sheet sheet, String text, List<Concept> concepts) {
        FigureText figure = FigureText.parse(text);
        Set<Scope> scopes = sheet.view()
                .catalogue()
                .find(figure.figure())
                .map(Figure::scopes)
                .orElse(Set.of());
        boolean forAllRiders = scopes.contains(Scope.RIDERS)
                && figure.records().stream()
                        .noneMatch(id -> Scope.of(id.letters()).equals(java.util.Optional.of(Scope.RIDERS)));
        List<List<Phrase>> rows = new ArrayList<>();
        if (!forAllRiders) {
            rows.add(row(sheet, text, figure, concepts, ""));
        } else {
            sheet.assessment()
                    .riderGroups()
                    .forEach(group -> rows.add(row(
                            sheet,
                            text + " " + group.id(),
                            figure,
                            concepts,
                            group.id().text())));
        }
        return rows;
    }

    private static List<Phrase> row(
            Sheet sheet, String text, FigureText figure, List<Concept> concepts, String riders) {
        List<Phrase> cells = new ArrayList<>();
        String unit = "";
        String name = figure.figure();
        for (Concept concept : concepts) {
            Ask ask = sheet.ask(text + " " + concept.id());
            name = sheet.text().name(ask.figure());
            unit = sheet.view().ask(ask) instanceof Quantity quantity
                    ? sheet.text().measured(quantity.unit()).unit()
                    : unit;
            cells.add(Phrase.of(sheet.bare(ask)));
        }
        List<Phrase> row = new ArrayList<>();
        row.add(Phrase.of(name));
        row.add(Phrase.of(subject(sheet, figure, riders)));
        row.add(Phrase.of(unit));
        row.addAll(cells);
        return row;
    }

    private static String subject(Sheet sheet, FigureText figure, String riders) {
        List<String> words = new ArrayList<>();
        figure.records().stream().map(RecordId::text).forEach(words::add);
        if (!riders.isEmpty()) {
            words.add(riders);
        }
        figure.parameters()
                .values()
                .forEach((name, value) -> words.add(sheet.text().parameter(name) + " " + value));
        return String.join(", ", words);
    }
}
