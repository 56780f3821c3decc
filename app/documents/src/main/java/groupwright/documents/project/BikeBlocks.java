package groupwright.documents.project;

import groupwright.definition.record.Amount;
import groupwright.definition.record.Bike;
import groupwright.documents.content.BlockAnswer;
import groupwright.documents.content.Column;
import groupwright.documents.content.Phrase;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The bikes the groupset must fit. */
final class BikeBlocks {
    private static final String MILLIMETRE = "mm";
    private static final String TEETH = "teeth";

    private BikeBlocks() {}

    static BlockAnswer bikes(Sheet sheet, String arguments) {
        List<Column> columns = List.of(
                sheet.textColumn("block.id"),
                sheet.textColumn("bikes.title"),
                sheet.numberColumn("bikes.chainstay", MILLIMETRE),
                sheet.numberColumn("bikes.drop", MILLIMETRE),
                sheet.textColumn("bikes.axle"),
                sheet.numberColumn("bikes.smallest"),
                sheet.numberColumn("bikes.ring"),
                sheet.numberColumn("bikes.growth", MILLIMETRE));
        List<List<Phrase>> rows = new ArrayList<>();
        for (Bike bike : sheet.bikes()) {
            rows.add(List.of(
                    Phrase.of(bike.id().text()),
                    Phrase.of(bike.title()),
                    amount(sheet, bike.chainstay_mm(), MILLIMETRE),
                    amount(sheet, bike.bottomBracketDrop_mm(), MILLIMETRE),
                    sheet.plain(bike.rearAxle()),
                    amount(sheet, bike.driverSmallest_teeth(), TEETH),
                    amount(sheet, bike.largestRing_teeth(), TEETH),
                    amount(sheet, Optional.of(bike.chainGrowth_mm()), MILLIMETRE)));
        }
        return new BlockAnswer.Table(columns, rows);
    }

    private static Phrase amount(Sheet sheet, Optional<Amount> amount, String unit) {
        return sheet.plain(amount.map(sheet.reader().in(unit)::amount).orElse(""));
    }
}
