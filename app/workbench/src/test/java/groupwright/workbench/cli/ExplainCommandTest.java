package groupwright.workbench.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The golden texts are what people read; after a wanted change of them or of a figure's own words write them anew:
 * {@code mvn -pl app/workbench -am test -Dtest=ExplainCommandTest -Dsurefire.failIfNoSpecifiedTests=false
 * -Dgroupwright.regenerate=true}.
 */
class ExplainCommandTest {
    private static final Path GOLDEN = Path.of("src/test/resources/groupwright/workbench/cli/explain");
    private static final boolean REGENERATE = Boolean.getBoolean("groupwright.regenerate");

    @TempDir
    Path folder;

    private SmallProject project;

    @BeforeEach
    void copy() {
        project = SmallProject.below(folder);
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource({
        "gear-range.txt, gear-range lead",
        "verdict.txt, verdict C-001 R-001",
        "missing.txt, lowest-development lead G-002",
        "gear-range.json, gear-range lead --json",
        "verdict.json, verdict C-001 R-001 --json"
    })
    void treeIsAsItWas(String golden, String figure) throws IOException {
        Run run = project.run(("explain small " + figure).split(" "));
        Path file = GOLDEN.resolve(golden);
        if (REGENERATE) {
            Files.createDirectories(GOLDEN);
            Files.writeString(file, run.out());
        }
        assertEquals(Files.readString(file), run.out());
        assertEquals(0, run.exit());
    }

    /** Two criteria ask the same figure: it is worked out under the first, and only answered under the second. */
    @Test
    void eachAnswerIsWorkedOutOnce() {
        project.with("requirements/R-001.json", "\"criteria\": [", """
                "criteria": [{"id": "k0", "figure": "gear-range", "comparator": "at-most", "target": 600, "unit": "%"},""");
        String text = project.run("explain", "small", "verdict lead R-001").out();
        assertEquals(1, occurrences(text, "C-001.cogs"), text);
        assertEquals(1, occurrences(text, "gear-range C-001 = 450.0\u202F% (exact), see above\n"), text);
        String json =
                project.run("explain", "small", "verdict lead R-001", "--json").out();
        assertEquals(1, occurrences(json, "\"field\": \"cogs\""), json);
        assertEquals(2, occurrences(json, "\"figure\": \"gear-range\""), json);
    }

    private static int occurrences(String text, String words) {
        return text.split(java.util.regex.Pattern.quote(words), -1).length - 1;
    }

    @Test
    void leadBesideAnotherConceptIsOneTooMany() {
        Run run = project.run("explain", "small", "gear-range lead C-002");
        assertEquals(
                "gear-range: two records of one kind, C-002 and C-001; name one; name each kind once.\n", run.err());
        assertEquals(2, run.exit());
    }

    @Test
    void leadNeedsALeadConcept() {
        project.with("project.json", ",\n  \"leadConcept\": \"C-001\"", "");
        Run run = project.run("explain", "small", "gear-range lead");
        assertEquals(2, run.exit());
        assertTrue(
                run.err().contains("the project names no lead concept; set leadConcept in project.json."), run.err());
    }
}
