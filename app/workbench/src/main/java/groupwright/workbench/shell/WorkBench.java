package groupwright.workbench.shell;

import groupwright.workbench.bench.Bench;
import groupwright.workbench.components.ProgressLine;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Words;
import groupwright.workbench.workings.StackLayout;
import java.util.OptionalDouble;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.Timer;

/** Long work, one after the other on a thread of its own; what lasts is shown with a count and can be stopped. */
final class WorkBench extends JPanel {
    private static final int SHOWN_AFTER_MS = 300;
    private static final int REFRESH_MS = 100;

    private final transient Words words;
    private final transient Executor eventThread;
    private final transient Consumer<Throwable> broken;
    private final transient ExecutorService thread = Executors.newSingleThreadExecutor(task -> {
        Thread worker = new Thread(task, "work");
        worker.setDaemon(true);
        return worker;
    });

    WorkBench(Words words, Executor eventThread, Consumer<Throwable> broken) {
        super(new StackLayout(Metric.STEP.px()));
        this.words = words;
        this.eventThread = eventThread;
        this.broken = broken;
        setName("work");
        setOpaque(false);
        setVisible(false);
    }

    /** How far one piece of work is; written by the worker, read by the event thread. */
    private static final class Way implements Bench.Progress {
        private final AtomicBoolean stopped = new AtomicBoolean();
        private volatile long done;
        private volatile long total;

        @Override
        public void at(long reached, long all) {
            done = reached;
            total = all;
        }

        @Override
        public boolean isStopped() {
            return stopped.get();
        }
    }

    /** Starts work; once the window is closing nothing is started any more. */
    <T> void start(Bench.Work<T> work, Consumer<T> done) {
        if (thread.isShutdown()) {
            return;
        }
        Way way = new Way();
        ProgressLine line = new ProgressLine(value(work, way), () -> way.stopped.set(true), words.locale());
        line.setBorder(
                BorderFactory.createEmptyBorder(Metric.STEP.px(), Metric.GAP.px(), Metric.STEP.px(), Metric.GAP.px()));
        Timer refresh = new Timer(REFRESH_MS, event -> {
            if (line.getParent() == null) {
                add(line);
                setVisible(true);
                revalidate();
            }
            line.show(value(work, way));
        });
        refresh.setInitialDelay(SHOWN_AFTER_MS);
        refresh.start();
        thread.submit(() -> {
            try {
                T result = work.with(way);
                eventThread.execute(() -> {
                    finish(refresh, line);
                    done.accept(result);
                });
            } catch (Exception | Error mistake) { // the worker's last place where anything can be said about it
                eventThread.execute(() -> {
                    finish(refresh, line);
                    broken.accept(mistake);
                });
            }
        });
    }

    private void finish(Timer refresh, ProgressLine line) {
        refresh.stop();
        remove(line);
        setVisible(getComponentCount() > 0);
        revalidate();
    }

    private ProgressLine.Value value(Bench.Work<?> work, Way way) {
        long total = way.total;
        long done = way.done;
        String sentence = total > 0
                ? words.text("work.count", work.name(), Long.toString(done), Long.toString(total))
                : words.text("work.plain", work.name());
        return ProgressLine.Value.of(
                sentence,
                total > 0 ? OptionalDouble.of(Math.min(1.0, (double) done / total)) : OptionalDouble.empty(),
                words.locale());
    }

    /** Ends the thread. */
    void end() {
        thread.shutdownNow();
    }
}
