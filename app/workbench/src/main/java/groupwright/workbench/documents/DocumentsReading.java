package groupwright.workbench.documents;

import groupwright.definition.figure.Missing;
import groupwright.definition.ledger.View;
import groupwright.definition.project.ProjectFiles;
import groupwright.definition.record.Definition;
import groupwright.documents.labels.Labels;
import groupwright.documents.numbers.Reader;
import groupwright.documents.pages.FontShelf;
import groupwright.documents.project.Numbers;
import groupwright.documents.project.Preview;
import groupwright.documents.project.ProjectDocuments;
import groupwright.documents.project.ProjectTemplates;
import groupwright.workbench.start.DocumentChoices;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Makes documents with their pages, and keeps each until the project, its template or a choice is another. Ledger thread
 * only. Making one costs as much as it has numbers and text; one that is kept costs reading its template.
 */
final class DocumentsReading {
    private final FontShelf fonts = new FontShelf();
    private final Map<String, Made> kept = new HashMap<>();

    /**
     * What is asked for beside a document's name.
     *
     * @param window language of the window, in which titles are shown
     * @param today the date documents carry where the project has none
     */
    record Wish(Whereabouts where, DocumentChoices choices, Locale window, LocalDate today) {
        Reader reader() {
            return new Reader(choices.locale(window), choices.measures());
        }

        ProjectTemplates templates() {
            return new ProjectTemplates(where.folder());
        }
    }

    private record Made(Definition of, Wish wish, ProjectTemplates.Found from, DocumentsSheet sheet) {
        boolean isStill(Definition definition, Wish next, ProjectTemplates.Found template) {
            ProjectFiles files = wish.where().files();
            return of == definition
                    && files == next.where().files()
                    && wish.where().folder().equals(next.where().folder())
                    && wish.choices().equals(next.choices())
                    && wish.today().equals(next.today())
                    && from.equals(template);
        }
    }

    /** A document as it is now. */
    DocumentsSheet read(View view, Wish wish, String name) {
        ProjectTemplates.Found template = wish.templates().find(name);
        Made last = kept.get(name);
        if (last != null && last.isStill(view.definition(), wish, template)) {
            return last.sheet();
        }
        DocumentsSheet sheet = make(view, wish, name, template);
        kept.put(name, new Made(view.definition(), wish, template, sheet));
        return sheet;
    }

    private DocumentsSheet make(View view, Wish wish, String name, ProjectTemplates.Found template) {
        String title = ProjectTemplates.title(name, Labels.of(wish.window()));
        Optional<LocalDate> own = view.definition().project().date();
        Preview preview = documents(view, wish).preview(name, own.or(() -> Optional.of(wish.today())));
        if (preview instanceof Preview.Ready ready) {
            Numbers.Read read = new Numbers.Read(ready.document().trace(), ready.asks());
            int missing = (int) read.all().stream()
                    .filter(shown -> view.ask(shown.ask()) instanceof Missing)
                    .count();
            return new DocumentsSheet(
                    name, title, template, preview, Optional.of(WrittenNumbers.Texts.of(view, read)), missing);
        }
        return new DocumentsSheet(name, title, template, preview, Optional.empty(), 0);
    }

    private ProjectDocuments documents(View view, Wish wish) {
        return new ProjectDocuments(
                view,
                wish.where().files(),
                wish.where().folder(),
                wish.reader(),
                fonts,
                wish.choices().paper());
    }
}
