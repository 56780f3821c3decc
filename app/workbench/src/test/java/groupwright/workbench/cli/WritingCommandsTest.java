package groupwright.workbench.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands that leave files behind: new, documents, and the program without a command. */
class WritingCommandsTest {
    @TempDir
    Path folder;

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void aNewProjectCanBeChecked() {
        Run created = Run.in(folder, "new", "fresh", "--name", "Fräser", "--currency", "CHF");
        assertEquals(0, created.exit(), created.err());
        assertTrue(created.out().startsWith("Started \"Fräser\" in fresh.\nNext: add a rider group"), created.out());
        Run checked = Run.in(folder, "check", "fresh");
        assertEquals(0, checked.exit(), checked.err());
        assertTrue(checked.out().startsWith("Fräser: no concept leads"), checked.out());
    }

    @Test
    void aNewProjectIsCalledLikeItsFolder() throws IOException {
        Run.in(folder, "new", "fresh");
        assertTrue(Files.readString(folder.resolve("fresh/project.json")).contains("\"name\": \"fresh\""));
    }

    @Test
    void aWrongCurrencyLeavesNothingBehind() {
        Run run = Run.in(folder, "new", "fresh", "--currency", "euro");
        assertEquals("--currency: \"euro\" is no currency code; write three letters, for example EUR.\n", run.err());
        assertEquals(2, run.exit());
        assertFalse(Files.exists(folder.resolve("fresh")));
    }

    @Test
    void documentsAskedForAreWritten() throws IOException {
        SmallProject project = SmallProject.below(folder);
        Run run = project.run("documents", "small", "--only", "claims", "--out", "out");
        assertEquals(0, run.exit(), run.err());
        assertEquals("Wrote claims.md, claims.html, claims.pdf of \"Small\" to out\n", run.out());
        assertEquals(List.of("claims.html", "claims.md", "claims.pdf"), names(folder.resolve("out")));
    }

    @Test
    void oneBikeIsADocumentOfItsOwnName() throws IOException {
        SmallProject project = SmallProject.below(folder).with("bikes/B-004.json", bike("B-004", ""));
        project.with("bikes/B-005.json", bike("B-005", "sold"));
        Run run = project.run(
                "documents", "small", "--only", "fit", "--bike", "B-004", "--formats", "markdown", "--out", "out");
        assertEquals(0, run.exit(), run.err());
        assertEquals("Wrote fit-B-004.md of \"Small\" to out\n", run.out());
        assertTrue(Files.readString(folder.resolve("out/fit-B-004.md")).startsWith("# Fit, B-004\n"));
        Run retired = project.run("documents", "small", "--bike", "B-005", "--out", "never");
        assertEquals(
                "the bike B-005 has left the list (sold); name one that is on it, or empty its field retired.\n",
                retired.err());
        assertEquals(2, retired.exit());
        Run unknown = project.run("documents", "small", "--bike", "B-999", "--out", "never");
        assertEquals("there is no bike B-999 in this project; it has B-004, B-005.\n", unknown.err());
        assertEquals(2, unknown.exit());
        assertFalse(Files.exists(folder.resolve("never")));
    }

    private static byte[] bike(String id, String retired) {
        return """
                {"id": "%s", "title": "Bike", "retired": "%s"}
                """.formatted(id, retired).getBytes(StandardCharsets.UTF_8);
    }

    @Test
    void formatsAskedForAreWrittenInTheirOrderAndOnce() throws IOException {
        SmallProject project = SmallProject.below(folder);
        Run run = project.run(
                "documents", "small", "--only", "claims", "--formats", "html,markdown,html", "--out", "out");
        assertEquals("Wrote claims.md, claims.html of \"Small\" to out\n", run.out());
        assertEquals(List.of("claims.html", "claims.md"), names(folder.resolve("out")));
    }

    @Test
    void aTemplateOfTheProjectsOwnIsADocumentToo() throws IOException {
        SmallProject project = SmallProject.below(folder);
        project.with(
                "templates/service-manual.md", "# Service\n\n{{ project.name }}\n".getBytes(StandardCharsets.UTF_8));
        Run run = project.run("documents", "small", "--only", "service-manual", "--out", "out");
        assertEquals(0, run.exit(), run.err());
        assertEquals(
                "Wrote service-manual.md, service-manual.html, service-manual.pdf of \"Small\" to out\n", run.out());
        assertTrue(Files.readString(folder.resolve("out/service-manual.md")).startsWith("# Service manual\n"));
    }

    @Test
    void aDocumentThatIsNotThereIsNamedWithTheNearest() {
        Run run = SmallProject.below(folder).run("documents", "small", "--only", "claim", "--out", "out");
        assertEquals("there is no document \"claim\"; did you mean claims?\n", run.err());
        assertEquals(2, run.exit());
    }

    @Test
    void theDateIsThatOfTheProjectOrTheOneGiven() throws IOException {
        SmallProject project = SmallProject.below(folder);
        project.run("documents", "small", "--only", "claims", "--out", "one");
        project.run("documents", "small", "--only", "claims", "--out", "two", "--date", "2026-04-01");
        project.run("documents", "small", "--only", "claims", "--out", "drei", "--language", "de");
        assertAll(
                () -> assertTrue(
                        Files.readString(folder.resolve("one/claims.md")).contains("9 March 2026")),
                () -> assertTrue(
                        Files.readString(folder.resolve("two/claims.md")).contains("1 April 2026")),
                () -> assertTrue(
                        Files.readString(folder.resolve("drei/claims.md")).contains("9. März 2026")));
    }

    @Test
    void aGermanDocumentInImperialMeasuresSaysSoThroughout() throws IOException {
        SmallProject project = SmallProject.below(folder);
        Run run = project.run(
                "documents",
                "small",
                "--only",
                "specification",
                "--out",
                "out",
                "--language",
                "de",
                "--measures",
                "imperial");
        assertEquals(0, run.exit(), run.err());
        String text = Files.readString(folder.resolve("out/specification.md"));
        assertAll(
                () -> assertTrue(text.contains("# 1 Worum es geht"), text),
                () -> assertTrue(text.contains("1 in = 25,4 mm"), text),
                () -> assertFalse(text.contains("What this is about"), text));
    }

    @Test
    void thePaperIsA4UnlessLetterIsAskedFor() throws IOException {
        SmallProject project = SmallProject.below(folder);
        project.run("documents", "small", "--only", "claims", "--out", "one");
        project.run("documents", "small", "--only", "claims", "--out", "two", "--paper", "letter");
        assertTrue(mediaBox("one/claims.pdf").startsWith("[0 0 595.2"), mediaBox("one/claims.pdf"));
        assertEquals("[0 0 612 792]", mediaBox("two/claims.pdf"));
        Run run = project.run("documents", "small", "--out", "three", "--paper", "A5");
        assertEquals("--paper: \"A5\" is no paper of the documents; write a4 or letter.\n", run.err());
        assertEquals(2, run.exit());
    }

    private String mediaBox(String file) throws IOException {
        String text = Files.readString(folder.resolve(file), StandardCharsets.ISO_8859_1);
        return text.substring(text.indexOf("/MediaBox") + 9, text.indexOf(']', text.indexOf("/MediaBox")) + 1);
    }

    @Test
    void withoutADateNothingIsWritten() {
        SmallProject project = SmallProject.below(folder).with("project.json", "\"date\": \"2026-03-09\",", "");
        Run run = project.run("documents", "small", "--out", "out");
        assertEquals(
                "project.json: project, date: is missing, and documents carry a date; add it or give --date.\n",
                run.err());
        assertEquals(2, run.exit());
        assertFalse(Files.exists(folder.resolve("out")));
    }

    @Test
    void sameDocumentsAreTheSameBytes() throws IOException {
        SmallProject project = SmallProject.below(folder);
        project.run("documents", "small", "--only", "claims", "--out", "one");
        project.run("documents", "small", "--only", "claims", "--out", "two");
        for (String name : names(folder.resolve("one"))) {
            byte[] one = Files.readAllBytes(folder.resolve("one").resolve(name));
            assertTrue(
                    Arrays.equals(one, Files.readAllBytes(folder.resolve("two").resolve(name))), name);
        }
    }

    @Test
    void withoutCommandTheSampleBesideTheProgramIsWritten() throws IOException {
        Files.createDirectories(folder.resolve("dist/samples"));
        Path jar = Files.createFile(folder.resolve("dist/groupwright.jar"));
        SmallProject.copied(SmallProject.below(folder).folder(), folder.resolve("dist/samples/tarnbeck"));
        Run run = Run.in(folder, Optional.of(jar));
        assertEquals(0, run.exit(), run.err());
        assertTrue(Files.exists(folder.resolve("documents/specification.pdf")));
        assertEquals(3, run.out().lines().count(), run.out());
        assertTrue(run.out().contains("java -jar dist/groupwright.jar check dist/samples/tarnbeck"), run.out());
    }

    @Test
    void aFolderAloneIsWrittenToo() throws IOException {
        Run run = SmallProject.below(folder).run("small");
        assertEquals(0, run.exit(), run.err());
        assertTrue(names(folder.resolve("documents")).contains("specification.md"));
    }
}
