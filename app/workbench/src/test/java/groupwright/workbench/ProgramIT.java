package groupwright.workbench;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program as it was built, in a process of its own and from another folder. */
class ProgramIT {
    private static final Path JAR = Path.of("target/dist/groupwright.jar").toAbsolutePath();

    @TempDir
    Path folder;

    private record Ended(int exit, String out, String err) {}

    private Ended run(List<String> options, String... arguments) throws IOException, InterruptedException {
        return run(Optional.empty(), options, arguments);
    }

    /** @param display the display the program is told of; it has none where nothing is said */
    private Ended run(Optional<String> display, List<String> options, String... arguments)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(options);
        command.addAll(List.of("-jar", JAR.toString()));
        command.addAll(List.of(arguments));
        Path out = Files.createTempFile(folder, "out", "");
        Path err = Files.createTempFile(folder, "err", "");
        ProcessBuilder builder = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile());
        builder.environment().remove("DISPLAY");
        display.ifPresent(name -> builder.environment().put("DISPLAY", name));
        Process process = builder.start();
        return new Ended(
                process.waitFor(),
                Files.readString(out, StandardCharsets.UTF_8),
                Files.readString(err, StandardCharsets.UTF_8));
    }

    @Test
    void streamsAreUtf8WhateverThePlatformSays() throws Exception {
        Ended ended =
                run(List.of("-Dfile.encoding=ISO-8859-1", "-Dstdout.encoding=US-ASCII", "-Duser.language=tr"), "check");
        assertEquals(2, ended.exit());
        assertEquals("PROJECT is missing; write groupwright check PROJECT [--strict] [--json].\n", ended.err());
        Ended help = run(List.of("-Dfile.encoding=ISO-8859-1"), "explain", "--help");
        assertTrue(
                help.out()
                        .startsWith(
                                "Usage: groupwright explain PROJECT \"FIGURE SUBJECT…\" [--moves [--change 1]] [--json]\n"),
                help.out());
    }

    private void assertSampleWritten(Ended ended) throws IOException {
        assertAll(
                () -> assertEquals(0, ended.exit(), ended.err()),
                () -> assertTrue(Files.size(folder.resolve("documents/specification.pdf")) > 10_000),
                () -> assertTrue(ended.out().contains("specification.pdf"), ended.out()));
    }

    @Test
    void withoutADisplayItSaysSoAndWritesTheDocumentsOfTheSample() throws Exception {
        Ended ended = run(List.of());
        assertSampleWritten(ended);
        assertEquals("No window: there is no display; the documents are written instead.\n", ended.err());
    }

    @Test
    void behindADeadDisplayItSaysSoAndWritesThemToo() throws Exception {
        assumeTrue(File.separatorChar == '/', "displays are named like this where X11 is");
        Ended ended = run(Optional.of(":4711"), List.of());
        assertSampleWritten(ended);
        assertEquals("No window: the display :4711 does not answer; the documents are written instead.\n", ended.err());
    }

    @Test
    void noWindowIsOpenedWhereNoneIsWanted() throws Exception {
        Ended ended = run(Optional.ofNullable(System.getenv("DISPLAY")), List.of(), "--no-window");
        assertSampleWritten(ended);
        assertEquals("", ended.err());
    }

    @Test
    void theVersionIsThatOfTheBuild() throws Exception {
        assertTrue(run(List.of(), "--version").out().matches("Groupwright [0-9]+\\.[0-9]+\\.[0-9]+\n"));
    }
}
