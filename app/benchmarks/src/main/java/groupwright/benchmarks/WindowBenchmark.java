package groupwright.benchmarks;

import com.formdev.flatlaf.FlatLightLaf;
import groupwright.workbench.shell.Windows;
import groupwright.workbench.start.DataFolder;
import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.Window;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How long it takes from nothing until a window stands: ours on the sample with its first place filled, and as peer a bare
 * FlatLaf window with a table. Each in a virtual machine of its own, cold. Needs a display.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 0)
@Measurement(iterations = 1)
@Fork(5)
public class WindowBenchmark {
    private static final int ROWS = 50;
    private static final int COLUMNS = 8;
    private static final int LOOK_MS = 2;

    private Path data;

    /** A data folder with the copy of the sample in it, as at any start but the first. */
    @Setup
    public void data() throws IOException, URISyntaxException {
        data = Files.createTempDirectory("window-benchmark-");
        System.setProperty(DataFolder.PROPERTY, data.toString());
        new DataFolder(data).sampleLike(sample());
    }

    /** The sample lies beside the program's jar. */
    private static Path sample() throws URISyntaxException {
        Path jar = Path.of(Windows.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .toURI());
        return jar.resolveSibling("samples").resolve("tarnbeck");
    }

    /** The peer. */
    @Benchmark
    public boolean bareWindow() throws InterruptedException, InvocationTargetException {
        EventQueue.invokeAndWait(() -> {
            FlatLightLaf.setup();
            JFrame frame = new JFrame("bare");
            frame.add(new JScrollPane(new JTable(ROWS, COLUMNS)));
            frame.setSize(1440, 900);
            frame.setVisible(true);
        });
        return waitFor(child -> child instanceof JTable);
    }

    /** Ours, until it stands. */
    @Benchmark
    public boolean ourWindow() throws InterruptedException, InvocationTargetException {
        open();
        return waitFor(child -> "window".equals(child.getName()) || child instanceof JComponent);
    }

    /** Ours, until the first place shows what it read of the sample. */
    @Benchmark
    public boolean ourFirstPlace() throws InterruptedException, InvocationTargetException {
        open();
        return waitFor(child -> child instanceof JTable table && table.getRowCount() > 0);
    }

    private static void open() {
        Thread opening = new Thread(() ->
                new Windows(Optional.of(Path.of("groupwright.jar").toAbsolutePath())).openAndWait(Optional.empty()));
        opening.setDaemon(true);
        opening.start();
    }

    /** A window that stays open would keep the machine waiting for it. */
    @TearDown
    public void close() throws InterruptedException, InvocationTargetException {
        EventQueue.invokeAndWait(() -> {
            for (Window window : Window.getWindows()) {
                window.dispose();
            }
        });
    }

    private static boolean waitFor(Predicate<Component> there) throws InterruptedException, InvocationTargetException {
        boolean[] ready = {false};
        while (!ready[0]) {
            Thread.sleep(LOOK_MS);
            EventQueue.invokeAndWait(() -> {
                for (Window window : Window.getWindows()) {
                    ready[0] |= window.isShowing() && holds(window, there);
                }
            });
        }
        EventQueue.invokeAndWait(() -> {}); // what was asked to be painted is painted
        return ready[0];
    }

    private static boolean holds(Container container, Predicate<Component> there) {
        for (Component child : container.getComponents()) {
            if (child.isShowing() && there.test(child) || child instanceof Container inner && holds(inner, there)) {
                return true;
            }
        }
        return false;
    }
}
