package groupwright.documents.project;

import groupwright.definition.figure.Scope;
import groupwright.definition.ledger.Workings;
import groupwright.definition.record.Part;
import groupwright.definition.record.RecordId;
import groupwright.documents.content.BlockAnswer;
import groupwright.documents.content.Column;
import groupwright.documents.content.Phrase;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Parts in sum. */
final class PartBlocks {
    private static final String GRAM = "g";
    private static final String BASIC = "part-mass-basic";

    private PartBlocks() {}

    /** Weight of the lead concept's parts by group. */
    static BlockAnswer byGroup(Sheet sheet, String arguments) {
        RecordId lead = sheet.lead();
        List<Column> columns = List.of(
                sheet.textColumn("parts.group"),
                sheet.numberColumn("parts.count"),
                sheet.numberColumn("parts.basic", GRAM),
                sheet.numberColumn("parts.predicted", GRAM));
        Map<String, List<Part>> groups = new TreeMap<>();
        for (Part part : partsBehind(sheet, lead)) {
            groups.computeIfAbsent(part.group(), any -> new ArrayList<>()).add(part);
        }
        List<List<Phrase>> rows = new ArrayList<>();
        groups.forEach((group, parts) -> rows.add(List.of(
                sheet.plain(group),
                Phrase.of(Integer.toString(parts.size())),
                sum(sheet, parts, BASIC),
                sum(sheet, parts, "part-mass-predicted"))));
        rows.add(List.of(
                Phrase.of(sheet.labels().text("parts.total")),
                Phrase.of(""),
                Phrase.of(sheet.bare(sheet.ask("mass-basic " + lead))),
                Phrase.of(sheet.bare(sheet.ask("mass-predicted " + lead)))));
        return new BlockAnswer.Table(columns, rows);
    }

    /** The parts the set's weight is made of, as its own workings name them, so that groups and total never differ. */
    private static List<Part> partsBehind(Sheet sheet, RecordId concept) {
        List<Part> parts = new ArrayList<>();
        for (Workings.Use use :
                sheet.view().explain(sheet.ask("mass-basic " + concept)).uses()) {
            if (use.ask().figure().id().equals(BASIC)) {
                use.ask()
                        .subject()
                        .get(Scope.PART)
                        .flatMap(id -> sheet.definition().get(id, Part.class))
                        .ifPresent(parts::add);
            }
        }
        return parts;
    }

    private static Phrase sum(Sheet sheet, List<Part> parts, String figure) {
        double total = 0;
        for (Part part : parts) {
            Optional<Double> mass = sheet.number(sheet.ask(figure + " " + part.id()));
            if (mass.isEmpty()) {
                return Phrase.of(sheet.labels().text("verdict.missing"));
            }
            total += mass.get();
        }
        return Phrase.of(sheet.reader().in(GRAM).number(total, 0));
    }
}
