package groupwright.workbench.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Neither the machine nor a mistake of the program changes how it answers. */
class SurroundingsTest {
    @TempDir
    Path folder;

    @Test
    void localeAndTimeZoneChangeNothing() {
        SmallProject project = SmallProject.below(folder);
        String[][] lines = {
            {"check", "small"}, {"check", "small", "--json"}, {"figures", "small"}, {"figures", "small", "--json"}
        };
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        for (String[] line : lines) {
            Run plain = project.run(line);
            try {
                Locale.setDefault(Locale.forLanguageTag("tr-TR-u-nu-deva"));
                TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
                assertEquals(plain, project.run(line));
            } finally {
                Locale.setDefault(locale);
                TimeZone.setDefault(zone);
            }
        }
    }

    /** An output that breaks stands for any mistake inside. */
    @Test
    void anInternalErrorIsOneSentence() {
        PrintStream broken = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8) {
            @Override
            public void print(String text) {
                throw new IllegalStateException("no paper");
            }
        };
        StringBuilder said = new StringBuilder();
        PrintStream err = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8) {
            @Override
            public void print(String text) {
                said.append(text);
            }
        };
        CommandLineFace face = new CommandLineFace(new Surroundings(broken, err, folder, Optional.empty()));
        assertEquals(3, face.run(java.util.List.of("--help")));
        assertEquals(
                "internal error: IllegalStateException, no paper; run the same once more with --stacktrace and report"
                        + " what it shows.\n",
                said.toString());
        said.setLength(0);
        assertEquals(3, face.run(java.util.List.of("--help", "--stacktrace")));
        assertTrue(said.toString().contains("\tat "), said.toString());
    }
}
