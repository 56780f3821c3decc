package groupwright.definition.storage;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Another Java process that runs a class of these tests. */
final class ChildProcess implements AutoCloseable {
    private final Process process;
    private final BufferedReader output;

    private ChildProcess(Process process) {
        this.process = process;
        this.output = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    }

    static ChildProcess start(Class<?> main, String... arguments) throws IOException {
        String classPath = String.join(System.getProperty("path.separator"), place(ProjectFolder.class), place(main));
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        List<String> command = new ArrayList<>(
                List.of(java, "-Xshare:auto", "-XX:TieredStopAtLevel=1", "-Xmx128m", "-cp", classPath, main.getName()));
        command.addAll(List.of(arguments));
        return new ChildProcess(new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start());
    }

    private static String place(Class<?> type) {
        try {
            return Path.of(type.getProtectionDomain()
                            .getCodeSource()
                            .getLocation()
                            .toURI())
                    .toString();
        } catch (URISyntaxException e) {
            throw new IllegalStateException("classes lie in files", e);
        }
    }

    long pid() {
        return process.pid();
    }

    /** Waits for the next line; the empty text at the end. */
    String line() throws IOException {
        String line = output.readLine();
        return line == null ? "" : line;
    }

    Stream<String> remainingLines() {
        return output.lines();
    }

    /** Ends it as if its machine had lost it: no shutdown code runs. */
    void kill() throws InterruptedException {
        process.toHandle().destroyForcibly(); // through the handle, what it said can still be read
        process.waitFor();
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }
}
