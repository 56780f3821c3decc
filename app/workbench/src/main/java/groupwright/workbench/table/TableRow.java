package groupwright.workbench.table;

import groupwright.definition.record.RecordId;
import java.util.List;

/**
 * One row: a record with its cells.
 *
 * @param id the record
 * @param cells one for each column, in the order of the columns
 */
public record TableRow(RecordId id, List<TableCell> cells) {
    public TableRow {
        cells = List.copyOf(cells);
    }
}
