package groupwright.workbench.documents;

import groupwright.documents.project.Numbers;
import java.util.List;
import java.util.Optional;

/**
 * The documents of a project.
 *
 * @param rows one for each document, in their order
 */
record DocumentsSheet(List<Row> rows) {
    /**
     * A document.
     *
     * @param name as it is asked for
     * @param title as it is shown
     * @param numbers what its numbers read; nothing where its template is broken
     * @param problem why there are none; empty where there are
     */
    record Row(String name, String title, Optional<Numbers.Read> numbers, String problem) {}

    DocumentsSheet {
        rows = List.copyOf(rows);
    }

    Optional<Row> row(String name) {
        return rows.stream().filter(row -> row.name().equals(name)).findFirst();
    }
}
