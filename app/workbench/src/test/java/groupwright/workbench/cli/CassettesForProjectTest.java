package groupwright.workbench.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Cassettes held against the requirements of the sample and of the small project. */
class CassettesForProjectTest {
    private static final Path SAMPLES =
            Path.of("../../samples").toAbsolutePath().normalize();
    private static final String QUESTION = "--smallest 10 --largest 45 --cogs 11 --largest-step 20 --for tarnbeck";

    @TempDir
    Path folder;

    private static Run run(String line) {
        return Run.in(SAMPLES, ("cassettes " + line).split(" "));
    }

    private static JsonNode json(String line) throws IOException {
        Run run = run(line + " --json");
        assertEquals(0, run.exit(), run.err());
        return new ObjectMapper().readTree(run.out());
    }

    private static List<String> texts(JsonNode list, String name) {
        return StreamSupport.stream(list.spliterator(), false)
                .map(one -> (name.isEmpty() ? one : one.get(name)).asText())
                .toList();
    }

    @Test
    void whereAllMissSomethingTheSmallestRelaxationIsFound() throws IOException {
        JsonNode project = json(QUESTION).get("project");
        JsonNode smallest = project.at("/relaxation/smallest/relaxed");
        assertAll(
                () -> assertEquals("C-002", project.get("concept").asText()),
                () -> assertEquals(0, project.get("missNothing").asInt()),
                () -> assertEquals(288, project.at("/relaxation/tried").asInt()),
                // 45 over 10 teeth is 450 %, whatever lies between
                () -> assertEquals(450, targetOf(project.at("/relaxation/outOfReach"), "R-007.k1"), 1e-9),
                // the step from 16 to 19 teeth
                () -> assertEquals(18.75, targetOf(smallest, "R-005.k1"), 1e-9),
                () -> assertEquals(
                        List.of("R-003.k1", "R-004.k1", "R-005.k1", "R-007.k1"), texts(smallest, "criterion")),
                () -> assertEquals(0, project.at("/relaxation/alone").size()));
    }

    private static double targetOf(JsonNode parts, String criterion) {
        return StreamSupport.stream(parts.spliterator(), false)
                .filter(part -> part.get("criterion").asText().equals(criterion))
                .mapToDouble(part -> part.get("target").asDouble())
                .findFirst()
                .orElseThrow();
    }

    /** What check says of the lead concept is what its own cogs are told here, weights aside. */
    @Test
    void todaysCogsMissWhatCheckSays() throws IOException {
        JsonNode check = new ObjectMapper()
                .readTree(Run.in(SAMPLES, "check", "tarnbeck", "--json").out());
        JsonNode project = json(QUESTION).get("project");
        List<String> judged = texts(project.get("judgedBy"), "");
        List<String> expected = StreamSupport.stream(check.get("verdicts").spliterator(), false)
                .filter(verdict -> verdict.get("concept").asText().equals("C-002"))
                .filter(verdict -> verdict.get("outcome").asText().equals("misses"))
                .map(verdict -> verdict.get("requirement").asText() + "."
                        + verdict.path("criterion").asText())
                .filter(judged::contains)
                .toList();
        assertEquals(expected, texts(project.at("/today/misses"), ""));
        assertTrue(!expected.isEmpty());
    }

    @Test
    void theParagraphNamesWhatWouldHaveToGive() {
        Run run = run(QUESTION);
        String text = run.out().replaceAll("[\u00a0\u202f]", " ");
        for (String words : List.of(
                "\nOf all 288 tried, none misses nothing. Out of reach: ",
                "R-007.k1 \"One range for valley and pass\" (at least 480 %), 450 % at best. No single one would do; the"
                        + " fewest are 4: ",
                "R-005.k1 \"No step that breaks the rhythm\" from at most 18 % to 18.75 % (4.2 %)")) {
            assertTrue(text.contains(words), text);
        }
        assertEquals(0, run.exit());
        assertEquals("", run.err());
    }

    @Test
    void tooManyToTryIsSaidSo() {
        Run run = run("--smallest 10 --largest 45 --cogs 11 --show 10 --for tarnbeck --ring 30");
        assertTrue(
                run.out()
                        .endsWith(
                                "What would have to give way is found by trying each cassette, and 52\u2009451\u2009256"
                                        + " are left, more than 20\u2009000; narrow ends and count, or add a limit such as"
                                        + " --largest-step.\n"),
                run.out());
        assertTrue(run.out().contains("\nJudged in C-002 with ring 30 by "), run.out());
    }

    @Test
    void verdictsOfRiderGroupsAreColumns() {
        List<String> lines = run(QUESTION + " --csv").out().lines().toList();
        assertTrue(
                lines.get(0)
                        .endsWith(
                                "gear range (%),G-001 Marathon racer,G-002 All-day trail rider,G-003 Loaded bikepacker,misses"),
                lines.get(0));
        assertEquals(33, lines.size());
        assertTrue(
                lines.stream().skip(1).allMatch(line -> line.matches(".*,(meets|misses).*R-[0-9]{3}.*")),
                lines.toString());
    }

    @Test
    void aProjectWhoseFilesAreBrokenIsJudgedAsFarAsItCanBe() throws IOException {
        SmallProject.below(folder);
        Files.writeString(folder.resolve("small/requirements/R-001.json"), "{");
        Run run = Run.in(
                folder, "cassettes", "--smallest", "10", "--largest", "20", "--cogs", "4", "--for", "small", "--json");
        assertEquals(2, run.exit());
        assertEquals(1, new ObjectMapper().readTree(run.out()).get("problems").size());
    }

    @Test
    void aConceptThatIsNotThereIsRefused() {
        Run run = run(QUESTION + " --concept C-099");
        assertEquals("there is no concept C-099 in this project; it has C-000, C-001, C-002, C-003.\n", run.err());
        assertEquals(2, run.exit());
    }
}
