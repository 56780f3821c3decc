package groupwright.documents.project;

import groupwright.definition.record.Concept;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordId;
import groupwright.documents.content.BlockAnswer;
import groupwright.documents.content.Column;
import groupwright.documents.content.Phrase;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The cogs of a concept with their steps and shift positions. */
final class GearBlocks {
    private GearBlocks() {}

    /**
     * One row a cog.
     *
     * @param arguments a concept, or lead
     */
    static BlockAnswer gears(Sheet sheet, String arguments) {
        Concept concept = concept(sheet, arguments);
        Map<String, Double> steps = series(sheet, "steps " + concept.id());
        Map<String, Double> positions = series(sheet, "like-positions " + concept.id());
        List<Column> columns = new ArrayList<>(List.of(sheet.numberColumn("gears.cog")));
        concept.rings()
                .forEach(ring -> columns.add(Column.number(sheet.labels().text("gears.ratio", ring.toString()))));
        columns.add(sheet.numberColumn("gears.step"));
        columns.add(sheet.numberColumn("gears.likePositions"));
        List<List<Phrase>> rows = new ArrayList<>();
        for (int i = 0; i < concept.cogs().size(); i++) {
            int cog = concept.cogs().get(i);
            List<Phrase> row = new ArrayList<>(List.of(Phrase.of(Integer.toString(cog))));
            concept.rings().forEach(ring -> row.add(Phrase.of(sheet.reader().number((double) ring / cog, 3))));
            String pair = i == 0 ? "" : concept.cogs().get(i - 1) + "-" + cog;
            row.add(cell(sheet, steps, pair, 1));
            row.add(cell(sheet, positions, pair, 0));
            rows.add(row);
        }
        return new BlockAnswer.Table(columns, rows);
    }

    private static Phrase cell(Sheet sheet, Map<String, Double> values, String pair, int decimals) {
        Double value = values.get(pair);
        return Phrase.of(value == null ? "" : sheet.reader().number(value, decimals));
    }

    private static Map<String, Double> series(Sheet sheet, String question) {
        return ConceptCharts.byPosition(sheet.view().ask(sheet.ask(question)));
    }

    private static Concept concept(Sheet sheet, String arguments) {
        RecordId id = arguments.isBlank() || arguments.equals("lead")
                ? sheet.lead()
                : RecordId.parse(arguments)
                        .orElseThrow(
                                () -> new Invalid("", "\"" + arguments + "\" is no concept", "write lead or C-001"));
        return sheet.definition()
                .get(id, Concept.class)
                .orElseThrow(() -> new Invalid("", "there is no concept " + id, "name one of the project"));
    }
}
