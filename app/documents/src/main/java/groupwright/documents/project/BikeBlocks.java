package groupwright.documents.project;

import groupwright.definition.record.Amount;
import groupwright.definition.record.Bike;
import groupwright.definition.record.RecordKinds;
import groupwright.documents.content.BlockAnswer;
import groupwright.documents.content.Column;
import groupwright.documents.content.Phrase;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The bikes the groupset must fit. */
final class BikeBlocks {
    private BikeBlocks() {}

    static BlockAnswer bikes(Sheet sheet, String arguments) {
        List<Column> columns = List.of(
                sheet.textColumn("block.id"),
                sheet.textColumn("bikes.title"),
                sheet.numberColumn("bikes.chainstay"),
                sheet.numberColumn("bikes.drop"),
                sheet.textColumn("bikes.axle"),
                sheet.numberColumn("bikes.smallest"),
                sheet.numberColumn("bikes.ring"),
                sheet.numberColumn("bikes.growth"));
        List<List<Phrase>> rows = new ArrayList<>();
        for (Bike bike : sheet.definition().all(RecordKinds.BIKE)) {
            if (bike.isCurrent()) {
                rows.add(List.of(
                        Phrase.of(bike.id().text()),
                        Phrase.of(bike.title()),
                        amount(sheet, bike.chainstay_mm()),
                        amount(sheet, bike.bottomBracketDrop_mm()),
                        sheet.plain(bike.rearAxle()),
                        amount(sheet, bike.driverSmallest_teeth()),
                        amount(sheet, bike.largestRing_teeth()),
                        amount(sheet, Optional.of(bike.chainGrowth_mm()))));
            }
        }
        return new BlockAnswer.Table(columns, rows);
    }

    private static Phrase amount(Sheet sheet, Optional<Amount> amount) {
        return sheet.plain(
                amount.map(value -> sheet.text().input(value, "").value()).orElse(""));
    }
}
