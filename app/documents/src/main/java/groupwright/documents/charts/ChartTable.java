package groupwright.documents.charts;

import java.util.List;

/**
 * The numbers of a chart as rows.
 *
 * @param heads one for each column, at least one
 * @param texts how many columns, from the first, hold words; the others hold numbers
 * @param rows each as long as the heads
 */
public record ChartTable(List<String> heads, int texts, List<List<String>> rows) {
    public ChartTable {
        heads = List.copyOf(heads);
        rows = rows.stream().map(List::copyOf).toList();
        if (heads.isEmpty() || texts < 0 || texts > heads.size()) {
            throw new IllegalArgumentException(texts + " of " + heads.size() + " columns hold words");
        }
        for (List<String> row : rows) {
            if (row.size() != heads.size()) {
                throw new IllegalArgumentException(
                        "a row has " + row.size() + " cells, the table " + heads.size() + " columns");
            }
        }
    }
}
