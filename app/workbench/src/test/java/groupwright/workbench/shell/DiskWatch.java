package groupwright.workbench.shell;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import jdk.jfr.Recording;
import jdk.jfr.consumer.RecordedEvent;
import jdk.jfr.consumer.RecordingFile;

/**
 * Watches which files below some folders are read and written, and by which thread, through the events of the JDK's flight
 * recorder. Files of Java itself, of libraries and of fonts lie elsewhere and are not counted.
 */
final class DiskWatch implements AutoCloseable {
    private final Recording recording = new Recording();
    private final List<Path> folders;

    /** What was seen: files any thread touched, and those the event thread touched, with the stack of each. */
    record Seen(List<String> anywhere, List<String> onTheEventThread) {}

    DiskWatch(Path... folders) {
        this.folders = List.of(folders);
        for (String event : List.of("jdk.FileRead", "jdk.FileWrite", "jdk.FileForce")) {
            recording.enable(event).withoutThreshold().withStackTrace();
        }
        recording.start();
    }

    /** Ends the watch. */
    Seen end() throws IOException {
        recording.stop();
        Path file = Files.createTempFile("disk-watch-", ".jfr");
        recording.dump(file);
        List<String> anywhere = new ArrayList<>();
        List<String> onTheEventThread = new ArrayList<>();
        for (RecordedEvent event : RecordingFile.readAllEvents(file)) {
            String path = event.getString("path");
            if (path != null && folders.stream().anyMatch(folder -> path.startsWith(folder.toString()))) {
                anywhere.add(path);
                if (event.getThread() != null && event.getThread().getJavaName().startsWith("AWT-EventQueue")) {
                    onTheEventThread.add(path + "\n" + event.getStackTrace());
                }
            }
        }
        Files.delete(file);
        return new Seen(anywhere, onTheEventThread);
    }

    @Override
    public void close() {
        recording.close();
    }
}
