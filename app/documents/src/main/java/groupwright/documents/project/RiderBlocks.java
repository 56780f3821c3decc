package groupwright.documents.project;

import groupwright.definition.record.Amount;
import groupwright.definition.record.Need;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.RiderGroup;
import groupwright.documents.content.BlockAnswer;
import groupwright.documents.content.Column;
import groupwright.documents.content.Phrase;
import groupwright.documents.numbers.Measured;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Blocks about riders and what they said. */
final class RiderBlocks {
    private RiderBlocks() {}

    /** Rider groups as columns, what is known of them as rows. */
    static BlockAnswer groups(Sheet sheet, String arguments) {
        List<RiderGroup> groups = sheet.assessment().riderGroups();
        if (groups.isEmpty()) {
            return sheet.nothing();
        }
        List<Column> columns = new ArrayList<>(List.of(sheet.textColumn("block.of")));
        groups.forEach(group -> columns.add(Column.number(group.id() + " " + group.title())));
        List<List<Phrase>> rows = new ArrayList<>();
        rows.add(row(sheet, "riders.mass", "kg", groups, group -> total(sheet, group)));
        rows.add(row(sheet, "riders.powerHour", "W", groups, group -> amount(sheet, group.powerHour_W())));
        rows.add(row(sheet, "riders.cadence", "rpm", groups, group -> window(sheet, group)));
        rows.add(row(sheet, "riders.wheel", "", groups, group -> wheel(sheet, group)));
        rows.add(row(sheet, "riders.rolling", "", groups, group -> amount(sheet, group.rollingResistance())));
        rows.add(row(sheet, "riders.drag", "m²", groups, group -> amount(sheet, group.dragArea_m2())));
        rows.add(row(sheet, "riders.climbs", "", groups, group -> climbs(sheet, group)));
        return new BlockAnswer.Table(columns, rows);
    }

    private static List<Phrase> row(
            Sheet sheet, String label, String unit, List<RiderGroup> groups, Function<RiderGroup, String> cell) {
        String head = sheet.labels().text(label, sheet.reader().in(unit).unit());
        List<Phrase> row = new ArrayList<>(List.of(Phrase.of(head)));
        groups.forEach(group -> row.add(sheet.plain(cell.apply(group))));
        return row;
    }

    private static String amount(Sheet sheet, Optional<Amount> amount) {
        return amount.map(value -> sheet.text().input(value, "").value()).orElse("");
    }

    private static String total(Sheet sheet, RiderGroup group) {
        if (group.riderMass_kg().isEmpty() || group.bikeMass_kg().isEmpty()) {
            return "";
        }
        double parts = group.riderMass_kg().get().value()
                + group.bikeMass_kg().get().value()
                + group.luggage_kg().value();
        return sheet.reader().in("kg").exact(parts);
    }

    private static String window(Sheet sheet, RiderGroup group) {
        return amount(sheet, group.cadenceLeast_rpm()) + " – " + amount(sheet, group.cadenceMost_rpm());
    }

    private static String wheel(Sheet sheet, RiderGroup group) {
        return group.rollOut_mm()
                .map(measured -> in(sheet, "mm")
                        .with(in(sheet, "mm").exact(measured.value()))
                        .text())
                .orElseGet(() -> amount(sheet, group.tyre_mm()) + "-" + amount(sheet, group.beadSeat_mm()));
    }

    private static Measured in(Sheet sheet, String unit) {
        return sheet.reader().in(unit);
    }

    private static String climbs(Sheet sheet, RiderGroup group) {
        return group.climbs().stream()
                .map(climb -> sheet.reader().exact(climb.grade_pct().value()) + " %")
                .collect(Collectors.joining(", "));
    }

    /** Needs in riders' words. */
    static BlockAnswer needs(Sheet sheet, String arguments) {
        List<Column> columns = List.of(
                sheet.textColumn("block.id"),
                sheet.textColumn("needs.words"),
                sheet.textColumn("needs.riders"),
                sheet.textColumn("needs.importance"));
        List<List<Phrase>> rows = new ArrayList<>();
        for (Need need : sheet.definition().all(RecordKinds.NEED)) {
            if (need.isCurrent()) {
                rows.add(List.of(
                        Phrase.of(need.id().text()),
                        Phrase.of(sheet.quoted(need)),
                        sheet.plain(need.riders().stream().map(Object::toString).collect(Collectors.joining(", "))),
                        Phrase.of(sheet.labels()
                                .text("needs." + need.importance().name().toLowerCase(Locale.ROOT)))));
            }
        }
        return new BlockAnswer.Table(columns, rows);
    }
}
