package groupwright.workbench.shell;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.ledger.LedgerThread;
import groupwright.definition.problem.Problem;
import groupwright.definition.project.NewProject;
import groupwright.definition.session.Session;
import groupwright.definition.session.SessionOpening;
import java.awt.EventQueue;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;

/** Opens projects on ledger threads of their own and tells the window what came of it. */
final class Opener {
    private Opener() {}

    /** A project that was opened, with the thread it lives on. */
    record Opened(LedgerThread thread, Shell.Opened project) {}

    private interface Finding {
        Path folder() throws IOException;
    }

    /** Opens what the program starts with: the project asked for, the one last worked on, or the sample. */
    static void start(MainWindow window, Surrounding surrounding, Optional<Path> asked) {
        Optional<Path> last = surrounding.preferences().project();
        open(window, () -> {
            if (asked.isPresent()) {
                return asked.get();
            }
            return last.isPresent() && Files.exists(last.get().resolve("project.json"))
                    ? last.get()
                    : sample(surrounding);
        });
    }

    static void open(MainWindow window, Path folder) {
        open(window, () -> folder);
    }

    static void openSample(MainWindow window, Surrounding surrounding) {
        open(window, () -> sample(surrounding));
    }

    private static Path sample(Surrounding surrounding) throws IOException {
        Path shipped = surrounding
                .sample()
                .orElseThrow(() -> new IOException("the sample project is not beside the program; build it again"));
        return surrounding.data().sampleLike(shipped);
    }

    /** Opens the sample as it came. */
    static void freshSample(MainWindow window, Surrounding surrounding) {
        open(window, () -> {
            sample(surrounding);
            surrounding.data().freshSample(surrounding.sample().orElseThrow());
            return surrounding.data().sample();
        });
    }

    /** Starts a project and opens it. */
    static void startNew(MainWindow window, NewProjectDialog.Wanted wanted) {
        LedgerThread thread = new LedgerThread();
        thread.start(() -> {
            Optional<Problem> problem =
                    NewProject.start(wanted.folder(), wanted.name(), wanted.currency(), Optional.of(wanted.date()));
            if (problem.isPresent()) {
                EventQueue.invokeLater(() -> window.notOpened(wanted.folder(), problem.get()));
                thread.close();
            } else {
                openOn(thread, window, wanted.folder());
            }
            return null;
        });
    }

    private static void open(MainWindow window, Finding finding) {
        LedgerThread thread = new LedgerThread();
        thread.start(() -> {
            try {
                openOn(thread, window, finding.folder());
            } catch (IOException unreachable) {
                Problem problem = Problem.ofFile("", plain(unreachable), "");
                EventQueue.invokeLater(() -> window.notOpened(Path.of(""), problem));
                thread.close();
            }
            return null;
        });
    }

    private static String plain(IOException trouble) {
        return trouble.getMessage() == null ? trouble.getClass().getSimpleName() : trouble.getMessage();
    }

    private static void openOn(LedgerThread thread, MainWindow window, Path folder) {
        Supplier<Runnable> opening = () -> {
            SessionOpening outcome = Session.open(folder, Catalogue.ofServices());
            if (outcome instanceof SessionOpening.Opened opened) {
                Shell.Opened project = Shell.Opened.of(opened.session(), opened.problems());
                return () -> window.opened(new Opened(thread, project));
            }
            Problem problem = ((SessionOpening.NotOpened) outcome).problem();
            thread.close();
            return () -> window.notOpened(folder, problem);
        };
        Runnable told;
        try {
            told = opening.get();
        } catch (RuntimeException | Error mistake) { // the thread has nobody else to tell it to
            Problem problem = Problem.ofFile(
                    folder.toString(), "something went wrong inside the program (" + mistake + ")", "report it");
            told = () -> window.notOpened(folder, problem);
        }
        EventQueue.invokeLater(told);
    }
}
