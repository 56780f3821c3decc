package groupwright.workbench.documents;

import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Level;
import groupwright.definition.ledger.View;
import groupwright.documents.labels.Labels;
import groupwright.documents.numbers.Reader;
import groupwright.documents.project.Numbers;
import groupwright.documents.project.ProjectDocuments;
import groupwright.documents.project.ProjectTemplates;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * What the numbers of all documents read in one state of a project; documents whose template is broken are not in it.
 *
 * @param documents in their order
 */
public record DocumentNumbers(List<Document> documents) {
    /** One document. */
    public record Document(String name, String title, Numbers.Read numbers) {}

    public DocumentNumbers {
        documents = List.copyOf(documents);
    }

    /** Reads them; on the ledger's thread. Costs as much as making all documents without their pages. */
    public static DocumentNumbers read(View view, Whereabouts where, Locale locale) {
        ProjectDocuments documents = new ProjectDocuments(view, where.files(), where.folder(), new Reader(locale));
        Labels labels = Labels.of(locale);
        List<Document> found = new ArrayList<>();
        for (String name : documents.available()) {
            if (documents.numbers(name) instanceof Numbers.Read read) {
                found.add(new Document(name, ProjectTemplates.title(name, labels), read));
            }
        }
        return new DocumentNumbers(found);
    }

    /** The documents in whose text an answer stands. */
    public List<Document> with(Ask ask) {
        return documents.stream()
                .filter(document -> document.numbers().all().stream()
                        .anyMatch(shown -> shown.ask().equals(ask)))
                .toList();
    }

    /** The documents of which a number reads otherwise than in an earlier state. */
    public List<Document> changedSince(DocumentNumbers earlier) {
        return documents.stream()
                .filter(document -> earlier.named(document.name())
                        .filter(before -> !document.numbers()
                                .changedSince(before.numbers())
                                .isEmpty())
                        .isPresent())
                .toList();
    }

    /** The figures about the product that stand in any of them. */
    public Set<Ask> figures() {
        Set<Ask> found = new LinkedHashSet<>();
        for (Document document : documents) {
            document.numbers().all().stream()
                    .map(Numbers.Shown::ask)
                    .filter(ask -> ask.figure().level() == Level.CALCULUS)
                    .forEach(found::add);
        }
        return found;
    }

    private Optional<Document> named(String name) {
        return documents.stream()
                .filter(document -> document.name().equals(name))
                .findFirst();
    }
}
