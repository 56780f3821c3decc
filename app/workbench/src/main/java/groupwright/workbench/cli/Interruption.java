package groupwright.workbench.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Lets Ctrl+C end a long command with our own exit code: the thread that works is interrupted, says so, and the program ends
 * with {@link Exit#BROKEN} instead of the code of the signal.
 */
final class Interruption {
    private static final long MOST_MS = 5000;
    private static final long LAST_WORDS_MS = 250;

    private final CountDownLatch ended = new CountDownLatch(1);
    private final Thread hook;

    /** Begins; the work is over where {@link #end} is called. */
    Interruption(Thread worker) {
        hook = new Thread(() -> stop(worker), "interruption");
        Runtime.getRuntime().addShutdownHook(hook);
    }

    private void stop(Thread worker) {
        worker.interrupt();
        try {
            if (ended.await(MOST_MS, TimeUnit.MILLISECONDS)) {
                worker.join(LAST_WORDS_MS); // it never ends before us: its own exit waits for this hook
            }
        } catch (InterruptedException nobodyDoes) {
            Thread.currentThread().interrupt();
        }
        Runtime.getRuntime().halt(Exit.BROKEN.code());
    }

    /** The work is over. */
    void end() {
        ended.countDown();
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException ending) {
            // the program ends already, and the hook is what ends it
        }
    }
}
