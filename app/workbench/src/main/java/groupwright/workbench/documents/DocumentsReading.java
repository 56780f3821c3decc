package groupwright.workbench.documents;

import groupwright.definition.ledger.View;
import groupwright.documents.labels.Labels;
import groupwright.documents.numbers.Reader;
import groupwright.documents.project.Numbers;
import groupwright.documents.project.Preview;
import groupwright.documents.project.ProjectDocuments;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Asks the ledger for documents; on its thread. Making one costs as much as it has numbers. */
final class DocumentsReading {
    private final View view;
    private final Whereabouts where;
    private final Locale locale;

    DocumentsReading(View view, Whereabouts where, Locale locale) {
        this.view = view;
        this.where = where;
        this.locale = locale;
    }

    private ProjectDocuments documents() {
        return new ProjectDocuments(view, where.files(), where.folder(), new Reader(locale));
    }

    /** All documents with what their numbers read. */
    DocumentsSheet all() {
        ProjectDocuments documents = documents();
        Labels labels = Labels.of(locale);
        List<DocumentsSheet.Row> rows = new ArrayList<>();
        for (String name : ProjectDocuments.names()) {
            Numbers numbers = documents.numbers(name);
            rows.add(new DocumentsSheet.Row(
                    name,
                    labels.text("document." + name),
                    numbers instanceof Numbers.Read read ? Optional.of(read) : Optional.empty(),
                    numbers instanceof Numbers.Refused refused
                            ? refused.obstacles().get(0).sentence()
                            : ""));
        }
        return new DocumentsSheet(rows);
    }

    /**
     * The pages of one document.
     *
     * @param today the date it carries where the project has none
     */
    Preview pages(String name, LocalDate today) {
        Optional<LocalDate> own = view.definition().project().date();
        return documents().preview(name, own.or(() -> Optional.of(today)));
    }
}
