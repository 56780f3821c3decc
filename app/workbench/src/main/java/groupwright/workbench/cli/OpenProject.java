package groupwright.workbench.cli;

import groupwright.definition.assessment.Assessment;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.figure.FigureText;
import groupwright.definition.ledger.Ledger;
import groupwright.definition.ledger.LedgerThread;
import groupwright.definition.ledger.View;
import groupwright.definition.problem.Problem;
import groupwright.definition.project.ProjectFiles;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordId;
import java.nio.file.Path;
import java.util.List;

/**
 * A project that was read, with a ledger about it.
 *
 * @param folder where it lies
 * @param files what was read
 * @param view answers about it; only for the thread of the job
 */
record OpenProject(Path folder, ProjectFiles files, View view) {
    /** What is done with a project. */
    interface Job {
        Exit in(OpenProject project);
    }

    /**
     * Reads a project, says what is wrong with its files, and does a job with the rest.
     *
     * @return what the job says, or that something could not be read where the job found all fine
     * @throws Refusal if nothing can be answered because project.json cannot be read
     */
    static Exit doing(Surroundings surroundings, Path folder, Job job) throws InterruptedException {
        ProjectFiles files = ProjectFiles.read(folder);
        Definition definition = files.definition().orElseThrow(() -> new Refusal(files.problems()));
        files.problems().forEach(surroundings::say);
        try (LedgerThread thread = new LedgerThread()) {
            Exit exit = thread.call(() -> job.in(
                    new OpenProject(folder, files, new Ledger(Catalogue.ofServices(), definition, Ledger.DEEPEST))));
            return exit == Exit.FINE && !files.problems().isEmpty() ? Exit.REFUSED : exit;
        }
    }

    Definition definition() {
        return view.definition();
    }

    List<Problem> problems() {
        return files.problems();
    }

    Assessment assessment() {
        return new Assessment(view);
    }

    /**
     * The lead concept.
     *
     * @throws Invalid if the project names none
     */
    RecordId lead() {
        return assessment()
                .lead()
                .orElseThrow(
                        () -> new Invalid("", "the project names no lead concept", "set leadConcept in project.json"));
    }

    /** The question a text asks, about records that are there. */
    Ask ask(String text) {
        try {
            Ask ask = FigureText.parse(text)
                    .resolve(view.catalogue(), assessment().lead());
            ask.subject().ids().forEach(this::checkPresent);
            return ask;
        } catch (Invalid invalid) {
            throw Refusal.of(invalid);
        }
    }

    /** Refuses a record the project does not have. */
    void checkPresent(RecordId id) {
        if (definition().get(id).isEmpty()) {
            throw RecordChoice.unknown(definition(), id.text(), id.letters());
        }
    }
}
