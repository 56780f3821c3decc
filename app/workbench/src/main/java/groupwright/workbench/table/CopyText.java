package groupwright.workbench.table;

import java.util.List;
import java.util.stream.Collectors;

/** Rows as text for a spreadsheet: heads first, cells parted by tabs, numbers with their units. */
final class CopyText {
    private CopyText() {}

    /**
     * @param columns positions of the columns shown, in their order on the screen
     */
    static String of(List<TableColumn> all, List<Integer> columns, List<TableRow> rows) {
        StringBuilder text =
                new StringBuilder(columns.stream().map(at -> all.get(at).head()).collect(Collectors.joining("\t")));
        for (TableRow row : rows) {
            text.append('\n')
                    .append(columns.stream()
                            .map(at -> row.cells().get(at).copied().replaceAll("[\\t\\n\\r]+", " "))
                            .collect(Collectors.joining("\t")));
        }
        return text.toString();
    }
}
