package groupwright.workbench.shell;

import java.awt.AWTEvent;
import java.awt.EventQueue;
import java.awt.Toolkit;
import java.lang.reflect.InvocationTargetException;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;

/** Watches the event thread: how long the longest dispatch took, and what was thrown there. */
final class EventThread extends EventQueue {
    private final AtomicLong longestNs = new AtomicLong();
    private final AtomicReference<String> longest = new AtomicReference<>("");
    private final AtomicReference<Throwable> thrown = new AtomicReference<>();

    private static EventThread watching;

    private EventThread() {}

    /** Starts to watch anew. One queue watches for all tests of a process, because taking it off again can lose events. */
    static synchronized EventThread watched() {
        if (watching == null) {
            watching = new EventThread();
            Toolkit.getDefaultToolkit().getSystemEventQueue().push(watching);
        }
        watching.longestNs.set(0);
        watching.longest.set("");
        watching.thrown.set(null);
        return watching;
    }

    @Override
    protected void dispatchEvent(AWTEvent event) {
        long start = System.nanoTime();
        try {
            super.dispatchEvent(event);
        } catch (RuntimeException | Error mistake) {
            thrown.compareAndSet(null, mistake);
            throw mistake;
        } finally {
            long took = System.nanoTime() - start;
            if (took > longestNs.getAndAccumulate(took, Math::max)) {
                longest.set(event.toString());
            }
        }
    }

    /** What was thrown first, if anything. */
    Optional<Throwable> thrown() {
        return Optional.ofNullable(thrown.get());
    }

    /** For the log of the tests; never asserted, because machines differ. */
    String report() {
        String what = longest.get();
        return "longest dispatch %.1f ms: %s"
                .formatted(longestNs.get() / 1e6, what.substring(0, Math.min(160, what.length())));
    }

    /** Does something on the event thread and answers what it gave. */
    static <T> T on(Supplier<T> task) {
        AtomicReference<T> result = new AtomicReference<>();
        try {
            EventQueue.invokeAndWait(() -> result.set(task.get()));
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(interrupted);
        } catch (InvocationTargetException failed) {
            throw new AssertionError(failed.getCause());
        }
        return result.get();
    }
}
