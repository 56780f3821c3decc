package groupwright.workbench.cli;

import groupwright.drivetrain.search.Progress;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.function.LongSupplier;

/**
 * Tells people who wait how far a long computation is, in one line that is written over and wiped in the end; nothing is
 * written in the first second. The computation stops when its thread is interrupted
 * or nobody watches any more.
 */
final class Watch implements Progress, AutoCloseable {
    private static final long PATIENCE_NS = 1_000_000_000L;
    private static final long PAUSE_NS = 200_000_000L;
    private static final Path STANDARD_ERROR = Path.of("/proc/self/fd/2");

    private final Consumer<String> screen;
    private final LongSupplier clockNs;
    private long next;
    private String what = "";
    private int width;
    private boolean closed;

    /**
     * @param screen where the line goes
     * @param clockNs a clock that only goes forward, in nanoseconds
     */
    Watch(Consumer<String> screen, LongSupplier clockNs) {
        this.screen = screen;
        this.clockNs = clockNs;
        this.next = clockNs.getAsLong() + PATIENCE_NS;
    }

    /** One that writes to standard error where that is a console, and nowhere else. */
    static Watch on(Surroundings surroundings) {
        return new Watch(isConsole() ? surroundings.err()::print : text -> {}, System::nanoTime);
    }

    /** Whether standard error is a console: exact where the system tells, else whether the program has one at all. */
    private static boolean isConsole() {
        try {
            if (Files.isSymbolicLink(STANDARD_ERROR)) {
                return Files.readSymbolicLink(STANDARD_ERROR).toString().matches("/dev/(pts/.*|tty.*|console)");
            }
        } catch (IOException hidden) {
            return false; // nobody can tell, and a log must not fill with progress
        }
        return System.console() != null;
    }

    /** Names what is done from here on, for example {@code judging cassettes}. */
    synchronized Watch doing(String next) {
        what = next;
        return this;
    }

    @Override
    public synchronized void report(long done, long total) {
        if (!closed && clockNs.getAsLong() >= next) {
            next = clockNs.getAsLong() + PAUSE_NS;
            String line = what + ": " + 100 * done / total + " %";
            screen.accept("\r" + line + " ".repeat(Math.max(0, width - line.length())));
            width = Math.max(width, line.length());
        }
    }

    @Override
    public synchronized boolean cancelled() {
        return closed || Thread.currentThread().isInterrupted();
    }

    /** Wipes the line, for good: the computation may still be about to stop on another thread. */
    @Override
    public synchronized void close() {
        if (!closed && width > 0) {
            screen.accept("\r" + " ".repeat(width) + "\r");
        }
        closed = true;
    }
}
