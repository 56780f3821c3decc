package groupwright.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Colours, fonts and lengths come from the look; nobody else spells them out. */
class NoLiteralsTest {
    private static final Path SOURCES = Path.of("src/main/java/groupwright/workbench");
    private static final Path LOOK = SOURCES.resolve("look");

    /** What follows the scale is no pixel. */
    private static final Pattern SCALED = Pattern.compile("Look\\.pixels\\([^()]*\\)");

    /** 0 and 1 are no lengths: they say "from the edge" and "whatever there is". */
    private static final Map<String, Pattern> FORBIDDEN = Map.of(
            "a colour", Pattern.compile("new Color\\(|\\bColor\\.[A-Z_a-z]+\\b(?!;)|Color\\.decode"),
            "a font", Pattern.compile("new Font\\(|deriveFont\\("),
            "a key of the look", Pattern.compile("\"Gw\\."),
            "bounds in pixels", Pattern.compile("(setBounds|setSize|new Dimension)\\(\\s*([2-9]|[1-9]\\d+)\\b"),
            "a border in pixels", Pattern.compile("(EmptyBorder|Insets)\\([^)]*\\b[1-9]\\d*\\s*[,)]"));

    @Test
    void nobodyOutsideTheLookSpellsOutColoursFontsOrPixels() throws IOException {
        List<String> found = new ArrayList<>();
        int files = 0;
        try (Stream<Path> paths = Files.walk(SOURCES)) {
            for (Path path : paths.filter(p -> p.toString().endsWith(".java") && !p.startsWith(LOOK))
                    .sorted()
                    .toList()) {
                files++;
                String source = SCALED.matcher(Files.readString(path)).replaceAll("scaled");
                FORBIDDEN.forEach((what, pattern) -> pattern.matcher(source)
                        .results()
                        .forEach(hit -> found.add(path + ": " + what + ": " + hit.group())));
            }
        }
        assertTrue(files > 40, "read only " + files);
        assertEquals(List.of(), found);
    }
}
