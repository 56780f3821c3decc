package groupwright.workbench.shell;

import groupwright.workbench.start.DataFolder;
import groupwright.workbench.start.Preferences;
import java.io.IOException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;

/** Writes preferences, away from the event thread. */
final class Keeper {
    private static final int PATIENCE_S = 2;

    private final DataFolder data;
    private final ExecutorService thread = Executors.newSingleThreadExecutor(task -> {
        Thread worker = new Thread(task, "preferences");
        worker.setDaemon(true);
        return worker;
    });

    Keeper(DataFolder data) {
        this.data = data;
    }

    void keep(Preferences preferences) {
        thread.submit(() -> {
            try {
                preferences.write(data);
            } catch (IOException unwritable) {
                // a preference that is forgotten harms no work, and there is nothing a user could do about it here
            }
            return null;
        });
    }

    /** Ends it after what is being written. */
    void end() {
        thread.shutdown();
        try {
            thread.awaitTermination(PATIENCE_S, TimeUnit.SECONDS);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
