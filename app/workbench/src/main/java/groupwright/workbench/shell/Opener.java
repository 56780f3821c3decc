package groupwright.workbench.shell;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.ledger.LedgerThread;
import groupwright.definition.problem.Problem;
import groupwright.definition.project.NewProject;
import groupwright.definition.session.Session;
import groupwright.definition.session.SessionOpening;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;

/** Opens projects on ledger threads of their own and tells the window what came of it. */
final class Opener {
    private Opener() {}

    /** A project that was opened, with the thread it lives on. */
    record Opened(LedgerThread thread, Shell.Opened project) {}

    /** What came of opening, to be told to the window on the event thread. */
    interface Told {
        void to(MainWindow window);
    }

    private interface Finding {
        Path folder() throws IOException;
    }

    /**
     * Begins to open what the program starts with: the project asked for, the one last worked on, or the sample. It needs no
     * window yet, so that the look can be set up meanwhile.
     */
    static CompletableFuture<Told> begin(Surrounding surrounding, Optional<Path> asked) {
        Optional<Path> last = surrounding.preferences().project();
        return opening(() -> {
            if (asked.isPresent()) {
                return asked.get();
            }
            return last.isPresent() && Files.exists(last.get().resolve("project.json"))
                    ? last.get()
                    : sample(surrounding);
        });
    }

    static CompletableFuture<Told> open(Path folder) {
        return opening(() -> folder);
    }

    static CompletableFuture<Told> openSample(Surrounding surrounding) {
        return opening(() -> sample(surrounding));
    }

    private static Path sample(Surrounding surrounding) throws IOException {
        Path shipped = surrounding
                .sample()
                .orElseThrow(() -> new IOException("the sample project is not beside the program; build it again"));
        return surrounding.data().sampleLike(shipped);
    }

    /** Opens the sample as it came. */
    static CompletableFuture<Told> freshSample(Surrounding surrounding) {
        return opening(() -> {
            sample(surrounding);
            surrounding.data().freshSample(surrounding.sample().orElseThrow());
            return surrounding.data().sample();
        });
    }

    /** Starts a project and opens it. */
    static CompletableFuture<Told> startNew(NewProjectDialog.Wanted wanted) {
        CompletableFuture<Told> told = new CompletableFuture<>();
        LedgerThread thread = new LedgerThread();
        thread.start(() -> {
            Optional<Problem> problem =
                    NewProject.start(wanted.folder(), wanted.name(), wanted.currency(), Optional.of(wanted.date()));
            if (problem.isPresent()) {
                told.complete(window -> window.notOpened(wanted.folder(), problem.get()));
                thread.close();
            } else {
                told.complete(openOn(thread, wanted.folder()));
            }
            return null;
        });
        return told;
    }

    private static CompletableFuture<Told> opening(Finding finding) {
        CompletableFuture<Told> told = new CompletableFuture<>();
        LedgerThread thread = new LedgerThread();
        thread.start(() -> {
            try {
                told.complete(openOn(thread, finding.folder()));
            } catch (IOException unreachable) {
                Problem problem = Problem.ofFile("", plain(unreachable), "");
                told.complete(window -> window.notOpened(Path.of(""), problem));
                thread.close();
            }
            return null;
        });
        return told;
    }

    private static String plain(IOException trouble) {
        return trouble.getMessage() == null ? trouble.getClass().getSimpleName() : trouble.getMessage();
    }

    private static Told openOn(LedgerThread thread, Path folder) {
        try {
            SessionOpening outcome = Session.open(folder, Catalogue.ofServices());
            if (outcome instanceof SessionOpening.Opened opened) {
                Shell.Opened project = Shell.Opened.of(opened.session(), opened.problems());
                return window -> window.opened(new Opened(thread, project));
            }
            Problem problem = ((SessionOpening.NotOpened) outcome).problem();
            thread.close();
            return window -> window.notOpened(folder, problem);
        } catch (RuntimeException | Error mistake) { // the thread has nobody else to tell it to
            Problem problem = Problem.ofFile(
                    folder.toString(), "something went wrong inside the program (" + mistake + ")", "report it");
            return window -> window.notOpened(folder, problem);
        }
    }
}
