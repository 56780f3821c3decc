package groupwright.workbench.shell;

import groupwright.workbench.look.Look;
import groupwright.workbench.look.Theme;
import groupwright.workbench.start.DataFolder;
import groupwright.workbench.start.Preferences;
import java.awt.EventQueue;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;

/** Opens the window of the program. */
public final class Windows {
    private final Optional<Path> shipped;

    /** @param program the jar that runs, beside which the sample lies */
    public Windows(Optional<Path> program) {
        this.shipped = program.map(jar -> jar.resolveSibling("samples").resolve("tarnbeck"));
    }

    /**
     * Opens the window and waits until it is closed.
     *
     * @param project what to open; nothing means the project last worked on, at first the sample
     */
    public void openAndWait(Optional<Path> project) {
        DataFolder data = DataFolder.of(System.getenv());
        Preferences preferences = Preferences.read(data);
        Locale locale =
                preferences.language().isEmpty() ? Locale.getDefault() : Locale.forLanguageTag(preferences.language());
        CountDownLatch closed = new CountDownLatch(1);
        Surrounding surrounding = new Surrounding(data, preferences, shipped, locale);
        CompletableFuture<Opener.Told> opening = Opener.begin(surrounding, project);
        EventQueue.invokeLater(() -> {
            Look.setUp(
                    preferences.dark() == Preferences.Dark.YES ? Theme.DARK : Theme.LIGHT,
                    preferences.scalePct() / 100.0);
            MainWindow window = new MainWindow(surrounding, closed::countDown);
            window.start(opening);
        });
        try {
            closed.await();
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
