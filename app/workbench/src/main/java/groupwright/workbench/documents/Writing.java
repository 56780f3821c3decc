package groupwright.workbench.documents;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.ledger.Ledger;
import groupwright.definition.ledger.LedgerThread;
import groupwright.definition.record.Definition;
import groupwright.documents.numbers.Reader;
import groupwright.documents.project.Format;
import groupwright.documents.project.ProjectDocuments;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.look.Words;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Writes the documents of one state of the project, with a ledger of its own, so that editing goes on meanwhile. Stopping
 * keeps the documents that are written.
 */
record Writing(
        Words words, Definition definition, Whereabouts where, Locale locale, LocalDate today, Set<Format> formats)
        implements Bench.Work<Writing.Outcome> {
    /** What came of it. */
    record Outcome(List<Path> files, List<String> problems) {
        Outcome {
            files = List.copyOf(files);
            problems = List.copyOf(problems);
        }
    }

    @Override
    public String name() {
        return words.text("writing");
    }

    @Override
    public Outcome with(Bench.Progress progress) throws InterruptedException {
        List<Path> files = new ArrayList<>();
        List<String> problems = new ArrayList<>();
        List<String> names = ProjectDocuments.names();
        try (LedgerThread thread = new LedgerThread()) {
            Ledger ledger = new Ledger(Catalogue.ofServices(), definition, Ledger.DEEPEST);
            ProjectDocuments documents =
                    new ProjectDocuments(ledger, where.files(), where.folder(), new Reader(locale));
            Optional<LocalDate> date = definition.project().date().or(() -> Optional.of(today));
            for (int i = 0; i < names.size() && !progress.isStopped(); i++) {
                progress.at(i, names.size());
                List<String> one = List.of(names.get(i));
                ProjectDocuments.Outcome outcome = thread.call(() -> documents.write(one, date, where.out(), formats));
                files.addAll(outcome.written());
                problems.addAll(outcome.problems());
            }
        }
        return new Outcome(files, problems);
    }
}
