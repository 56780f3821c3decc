package groupwright.documents.project;

import groupwright.definition.record.Part;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
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
    private PartBlocks() {}

    /** Weight of the lead concept's parts by group. */
    static BlockAnswer byGroup(Sheet sheet, String arguments) {
        RecordId lead = sheet.lead();
        List<Column> columns = List.of(
                sheet.textColumn("parts.group"),
                sheet.numberColumn("parts.count"),
                sheet.numberColumn("parts.basic"),
                sheet.numberColumn("parts.predicted"));
        Map<String, List<Part>> groups = new TreeMap<>();
        List<Part> all = sheet.definition().all(RecordKinds.PART);
        for (Part part : all) {
            boolean hasChildren = all.stream().anyMatch(other -> other.parent().equals(Optional.of(part.id())));
            if (part.isCurrent() && !hasChildren && uses(part, lead)) {
                groups.computeIfAbsent(part.group(), any -> new ArrayList<>()).add(part);
            }
        }
        List<List<Phrase>> rows = new ArrayList<>();
        groups.forEach((group, parts) -> rows.add(List.of(
                sheet.plain(group),
                Phrase.of(Integer.toString(parts.size())),
                sum(sheet, parts, "part-mass-basic"),
                sum(sheet, parts, "part-mass-predicted"))));
        rows.add(List.of(
                Phrase.of(sheet.labels().text("parts.total")),
                Phrase.of(""),
                Phrase.of(sheet.bare(sheet.ask("mass-basic " + lead))),
                Phrase.of(sheet.bare(sheet.ask("mass-predicted " + lead)))));
        return new BlockAnswer.Table(columns, rows);
    }

    private static boolean uses(Part part, RecordId concept) {
        return part.concepts().isEmpty() || part.concepts().contains(concept);
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
        return Phrase.of(sheet.reader().number(total, 0));
    }
}
