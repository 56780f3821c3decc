package groupwright.definition.ledger;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * The one thread that owns a ledger. Its stack is deep enough for {@link Ledger#DEEPEST} questions inside each other; only
 * what is used of it costs memory.
 */
public final class LedgerThread implements AutoCloseable {
    private static final long STACK_BYTES = 1L << 30;

    private final ExecutorService executor = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(null, task, "ledger", STACK_BYTES);
        thread.setDaemon(true);
        return thread;
    });

    /** Starts a task; it is done after all that were started before. */
    public <T> Future<T> start(Callable<T> task) {
        return executor.submit(task);
    }

    /** Does a task and waits for it; what it throws is thrown here. */
    public <T> T call(Callable<T> task) throws InterruptedException {
        try {
            return start(task).get();
        } catch (ExecutionException failed) {
            if (failed.getCause() instanceof RuntimeException cause) {
                throw cause;
            } else if (failed.getCause() instanceof Error cause) {
                throw cause;
            }
            throw new IllegalStateException("a task of the ledger failed", failed.getCause());
        }
    }

    @Override
    public void close() {
        executor.shutdownNow();
    }
}
