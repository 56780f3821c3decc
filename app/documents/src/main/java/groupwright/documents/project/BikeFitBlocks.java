package groupwright.documents.project;

import groupwright.definition.assessment.FitMatrix;
import groupwright.definition.assessment.FitMatrix.Check;
import groupwright.definition.figure.MissingInput;
import groupwright.definition.record.Bike;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Entry;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordId;
import groupwright.documents.content.BlockAnswer;
import groupwright.documents.content.Column;
import groupwright.documents.content.Inline;
import groupwright.documents.content.Phrase;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** One bike: each check of each concept, and what is not known yet. */
final class BikeFitBlocks {
    private BikeFitBlocks() {}

    /**
     * Checks as rows, concepts as columns, the worst of the checks last.
     *
     * @param arguments a bike
     */
    static BlockAnswer checks(Sheet sheet, String arguments) {
        Bike bike = BlockArguments.of("fit-checks", arguments, List.of())
                .one(sheet, Bike.class, "bike")
                .orElseThrow(() -> new Invalid("", "fit-checks names no bike", "write for example fit-checks B-001"));
        FitMatrix fit = new FitMatrix(sheet.view());
        List<Concept> concepts = fit.concepts();
        if (concepts.isEmpty()) {
            return sheet.nothing();
        }
        List<Column> columns = new ArrayList<>(
                List.of(sheet.textColumn("fit.check"), sheet.textColumn("fit.askedBy"), sheet.textColumn("fit.limit")));
        concepts.forEach(concept -> columns.add(Column.text(concept.id().text())));
        Map<String, Map<RecordId, Check>> checks = byName(fit, concepts, bike.id());
        List<List<Phrase>> rows = new ArrayList<>();
        checks.values().forEach(of -> rows.add(row(new FitCheckText(sheet), concepts, bike.id(), of)));
        List<Phrase> last =
                new ArrayList<>(List.of(Phrase.of(sheet.labels().text("fit.all")), Phrase.of(""), Phrase.of("")));
        concepts.forEach(concept ->
                last.add(Phrase.of(new Inline.Judged(Marks.verdict(fit.fits(concept.id(), bike.id()))))));
        rows.add(last);
        return new BlockAnswer.Table(columns, rows);
    }

    private static Map<String, Map<RecordId, Check>> byName(FitMatrix fit, List<Concept> concepts, RecordId bike) {
        Map<String, Map<RecordId, Check>> checks = new LinkedHashMap<>();
        for (Concept concept : concepts) {
            for (Check check : fit.checks(concept.id(), bike)) {
                checks.computeIfAbsent(check.name(), any -> new TreeMap<>()).put(concept.id(), check);
            }
        }
        return checks;
    }

    private static List<Phrase> row(
            FitCheckText text, List<Concept> concepts, RecordId bike, Map<RecordId, Check> checks) {
        Check any = checks.values().iterator().next();
        List<Phrase> row = new ArrayList<>(
                List.of(Phrase.of(text.name(any)), Phrase.of(text.requirement(any)), Phrase.of(text.limit(any))));
        for (Concept concept : concepts) {
            Check check = checks.get(concept.id());
            row.add(check == null ? Phrase.of(FieldText.NOTHING) : text.verdict(check, List.of(bike, concept.id())));
        }
        return row;
    }

    /**
     * What is missing for the verdicts, each record once, with what to write and who can tell.
     *
     * @param arguments a bike; without one all that the document speaks of
     */
    static BlockAnswer missing(Sheet sheet, String arguments) {
        List<Bike> bikes = BlockArguments.of("fit-missing", arguments, List.of())
                .one(sheet, Bike.class, "bike")
                .map(List::of)
                .orElseGet(sheet::bikes);
        Map<RecordId, List<MissingInput>> byRecord = new TreeMap<>();
        FitMatrix fit = new FitMatrix(sheet.view());
        for (Bike bike : bikes) {
            for (Concept concept : fit.concepts()) {
                List<MissingInput> inputs =
                        new ArrayList<>(fit.fits(concept.id(), bike.id()).missing());
                fit.checks(concept.id(), bike.id())
                        .forEach(check -> inputs.addAll(check.verdict().missing()));
                inputs.forEach(input -> byRecord.computeIfAbsent(input.address().record(), any -> new ArrayList<>())
                        .add(input));
            }
        }
        List<Phrase> items = new ArrayList<>();
        byRecord.forEach((record, inputs) -> items.add(Phrase.of(item(sheet, sheet.existing(record), inputs))));
        return items.isEmpty()
                ? new BlockAnswer.Paragraph(Phrase.of(sheet.labels().text("fit.nothingMissing")))
                : new BlockAnswer.Items(items);
    }

    private static String item(Sheet sheet, Entry record, List<MissingInput> inputs) {
        return record.id() + " " + record.title() + ": "
                + new MissingText(sheet.labels()).remedies(inputs, field -> String.join(".", field.path())) + ". "
                + from(sheet, record);
    }

    /** Who can tell: the numbers of a bike come from its maker, all others are ours. */
    private static String from(Sheet sheet, Entry record) {
        if (!(record instanceof Bike bike)) {
            return sheet.labels().text("fit.fromUs");
        }
        return bike.source().isEmpty()
                ? sheet.labels().text("fit.fromMakerAlone")
                : sheet.labels().text("fit.fromMaker", bike.source());
    }
}
