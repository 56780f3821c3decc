package groupwright.workbench.documents;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.ledger.Ledger;
import groupwright.definition.ledger.LedgerThread;
import groupwright.definition.record.Definition;
import groupwright.documents.pages.FontShelf;
import groupwright.documents.project.Numbers;
import groupwright.documents.project.ProjectDocuments;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.look.Words;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Writes the documents of one state of the project, with a ledger of its own, so that editing goes on meanwhile, and keeps
 * what their numbers read. Stopping keeps the documents that are written.
 *
 * @param keeping the program's folder for what is kept about documents
 */
record Writing(Words words, Definition definition, DocumentsReading.Wish wish, Path keeping)
        implements Bench.Work<Writing.Outcome> {
    /**
     * What came of it.
     *
     * @param written what the numbers of all documents read when they were written last
     */
    record Outcome(List<Path> files, List<String> problems, WrittenNumbers written) {
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
        Map<String, WrittenNumbers.Texts> numbers = new TreeMap<>();
        Whereabouts where = wish.where();
        try (LedgerThread thread = new LedgerThread()) {
            Ledger ledger = new Ledger(Catalogue.ofServices(), definition, Ledger.DEEPEST);
            ProjectDocuments documents = new ProjectDocuments(
                    ledger,
                    where.files(),
                    where.folder(),
                    wish.reader(),
                    new FontShelf(),
                    wish.choices().paper());
            Optional<LocalDate> date = definition.project().date().or(() -> Optional.of(wish.today()));
            List<String> names = documents.available();
            for (int i = 0; i < names.size() && !progress.isStopped(); i++) {
                progress.at(i, names.size());
                String name = names.get(i);
                ProjectDocuments.Outcome outcome = thread.call(() -> documents.write(
                        List.of(name), date, where.out(), wish.choices().formats()));
                files.addAll(outcome.written());
                problems.addAll(outcome.problems());
                if (!outcome.written().isEmpty()
                        && thread.call(() -> documents.numbers(name)) instanceof Numbers.Read read) {
                    numbers.put(name, thread.call(() -> WrittenNumbers.Texts.of(ledger, read)));
                }
            }
        }
        return new Outcome(files, problems, keep(numbers, problems));
    }

    private WrittenNumbers keep(Map<String, WrittenNumbers.Texts> numbers, List<String> problems) {
        Path project = wish.where().folder();
        WrittenNumbers written = WrittenNumbers.read(keeping, project).with(numbers);
        try {
            written.write(keeping, project);
        } catch (IOException trouble) {
            problems.add(words.text("keep.trouble", keeping.toString(), String.valueOf(trouble.getMessage())));
        }
        return written;
    }
}
