package groupwright.workbench.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What is wrong with one file is said in one sentence, and the rest is answered. */
class BadProjectTest {
    private static final String REQUIREMENT = "requirements/R-003.json";
    private static final byte[] NOTHING = {};

    @TempDir
    Path folder;

    static Stream<Arguments> brokenFiles() {
        return Stream.of(
                broken("malformed", REQUIREMENT + ":1:", p -> p.with(REQUIREMENT, "{\"id\": ]".getBytes())),
                broken(
                        "wrong type",
                        "weight",
                        p -> p.with(REQUIREMENT, "\"draft\"", "\"draft\", \"weight\": \"heavy\"")),
                broken("id apart from file name", "R-003", p -> p.with(REQUIREMENT, "R-003", "R-004")),
                broken(
                        "duplicate key",
                        REQUIREMENT,
                        p -> p.with(REQUIREMENT, "\"state\"", "\"id\": \"R-003\", \"state\"")),
                broken(
                        "reference to nothing",
                        "N-777",
                        p -> p.with(REQUIREMENT, "\"draft\"", "\"draft\", \"answers\": [\"N-777\"]")),
                broken("zero teeth", "concepts/C-002.json", p -> p.with("concepts/C-002.json", "34", "0")),
                broken("negative teeth", "concepts/C-002.json", p -> p.with("concepts/C-002.json", "10,", "-10,")),
                broken("cogs out of order", "concepts/C-002.json", p -> p.with("concepts/C-002.json", "18,", "8,")),
                broken("0 bytes", REQUIREMENT, p -> p.with(REQUIREMENT, NOTHING)),
                broken("UTF-16", REQUIREMENT, p -> p.with(REQUIREMENT, "{}".getBytes(StandardCharsets.UTF_16))),
                broken("link out", REQUIREMENT, BadProjectTest::linkedOut));
    }

    private static Arguments broken(String what, String named, UnaryOperator<SmallProject> breaking) {
        return Arguments.of(what, named, breaking);
    }

    private static SmallProject linkedOut(SmallProject project) {
        try {
            Path outside = Files.writeString(project.folder().resolveSibling("secret.json"), "{}");
            Files.delete(project.folder().resolve(REQUIREMENT));
            Files.createSymbolicLink(project.folder().resolve(REQUIREMENT), outside);
            return project;
        } catch (IOException failed) {
            throw new IllegalStateException(failed);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("brokenFiles")
    void oneBrokenFileIsNamedAndTheRestAnswered(String what, String named, UnaryOperator<SmallProject> breaking) {
        Run run = breaking.apply(SmallProject.below(folder)).run("check", "small", "--json");
        assertAll(
                () -> assertEquals(2, run.exit(), run.err()),
                () -> assertEquals(1, run.err().lines().count(), run.err()),
                () -> assertTrue(run.err().contains(named), run.err()),
                () -> assertTrue(run.out().contains("\"verdict\": \"meets\""), run.out()));
        Schemas.CHECK.accepts(run.out());
    }

    static Stream<Arguments> noProjects() {
        return Stream.of(
                Arguments.of("missing folder", "small/nowhere"),
                Arguments.of("a file", "small/project.json"),
                Arguments.of("empty folder", "empty"),
                Arguments.of("no project.json", "small/requirements"),
                Arguments.of("malformed project.json", "malformed"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("noProjects")
    void withoutProjectFileNothingIsAnswered(String what, String name) throws IOException {
        SmallProject.below(folder);
        Files.createDirectory(folder.resolve("empty"));
        new SmallProject(folder.resolve("malformed")).with("project.json", "{".getBytes());
        for (String command : new String[] {"check", "figures"}) {
            Run run = Run.in(folder, command, name, "--json");
            assertEquals(2, run.exit());
            assertEquals(1, run.err().lines().count(), run.err());
            Schemas.PROBLEMS.accepts(run.out());
        }
    }

    /** A certain miss is known whatever else cannot be read. */
    @Test
    void aMissGoesBeforeAnUnreadableFile() {
        SmallProject project = SmallProject.below(folder)
                .with("requirements/R-001.json", "440", "460")
                .with(REQUIREMENT, NOTHING);
        assertEquals(1, project.run("check", "small").exit());
    }

    @Test
    void duplicateIdInAnotherFileIsNamed() {
        SmallProject project =
                SmallProject.below(folder).with("requirements/R-009.json", "{\"id\": \"R-001\"}".getBytes());
        Run run = project.run("check", "small");
        assertEquals(2, run.exit());
        assertTrue(run.err().contains("requirements/R-009.json"), run.err());
    }

    @Test
    void newAndDocumentsDoNotWriteBelowAFile() throws IOException {
        SmallProject project = SmallProject.below(folder);
        Run created = project.run("new", "small/project.json/inside");
        Run written = project.run("documents", "small", "--out", "small/project.json/inside", "--only", "claims");
        assertAll(
                () -> assertEquals(2, created.exit()),
                () -> assertEquals(1, created.err().lines().count(), created.err()),
                () -> assertEquals(2, written.exit()),
                () -> assertEquals(1, written.err().lines().count(), written.err()));
    }

    @Test
    void newLeavesAFullFolderAlone() {
        SmallProject project = SmallProject.below(folder);
        Run run = project.run("new", "small");
        assertEquals(2, run.exit());
        assertTrue(run.err().endsWith("small: is not empty; name a new folder or an empty one.\n"), run.err());
    }
}
