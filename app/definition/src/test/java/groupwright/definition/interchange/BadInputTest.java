package groupwright.definition.interchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.problem.Problem;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is wrong with a file is said in one sentence with its place; the rest of the project opens. */
class BadInputTest {
    private static final String PROJECT = "{\"id\": \"project\", \"name\": \"P\"}";
    private static final String LED = PROJECT.replace("}", ", \"leadConcept\": \"C-001\"}");
    private static final String CONCEPT = """
            {
              "id": "C-001",
              "title": "One ring",
              "rings": [32],
              "cogs": [10, 12, 14]
            }
            """;

    private static List<String> problems(String path, String text) {
        TreeMap<String, byte[]> files = new TreeMap<>();
        files.put("project.json", PROJECT.getBytes(StandardCharsets.UTF_8));
        files.put("concepts/C-001.json", CONCEPT.getBytes(StandardCharsets.UTF_8));
        files.put(path, text.getBytes(StandardCharsets.UTF_8));
        return Loading.load(files).problems().stream().map(Problem::sentence).toList();
    }

    private static String only(String path, String text) {
        List<String> problems = problems(path, text);
        assertEquals(1, problems.size(), problems.toString());
        return problems.get(0);
    }

    @Test
    void theFilesOfTheseTestsAreSound() {
        assertEquals(List.of(), problems("concepts/C-001.json", CONCEPT));
    }

    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource(delimiter = '|', quoteCharacter = '\0', textBlock = """
            [10, 12, 0]    | concepts/C-001.json:5:11: C-001, cogs: 0 is out of its limits; write 5 to 80.
            [-10, 12]      | concepts/C-001.json:5:11: C-001, cogs: -10 is out of its limits; write 5 to 80.
            [10, 14, 12]   | concepts/C-001.json:5:11: C-001, cogs: 12 follows 14, but cogs stand smallest first; sort them, each once.
            [10, 10]       | concepts/C-001.json:5:11: C-001, cogs: 10 follows 10, but cogs stand smallest first; sort them, each once.
            []             | concepts/C-001.json:5:11: C-001, cogs: has 0 entries; write 1 to 14.
            "10-12"        | concepts/C-001.json:5:11: C-001, cogs: "10-12" is no list; write for example [1].
            [10, "12"]     | concepts/C-001.json:5:16: C-001, cogs.1: "12" is no whole number; write for example 1.
            [10, 12.5]     | concepts/C-001.json:5:16: C-001, cogs.1: 12.5 is no whole number; write for example 1.
            """)
    void cogsAreRefusedWithPlaceAndRemedy(String cogs, String sentence) {
        String text = CONCEPT.replace("[10, 12, 14]", cogs);
        assertEquals(sentence, only("concepts/C-001.json", text));
    }

    @Test
    void textThatIsNoJsonIsNamedWithLineAndColumn() {
        String sentence = only("needs/N-001.json", "{\n  \"id\": \"N-001\",\n  \"words\" \"no colon\"\n}");
        assertTrue(sentence.startsWith("needs/N-001.json:3:"), sentence);
        assertTrue(sentence.contains("is no JSON"), sentence);
    }

    @Test
    void anUnclosedFileIsSaidToEndTooEarly() {
        assertTrue(only("needs/N-001.json", "{\"id\": \"N-001\"").contains("ends too early"));
    }

    @Test
    void aFieldThatStandsTwiceIsRefused() {
        String sentence = only("needs/N-001.json", "{\"id\": \"N-001\", \"words\": \"a\", \"words\": \"b\"}");
        assertTrue(sentence.contains("the field \"words\" stands twice"), sentence);
    }

    @Test
    void textBehindTheRecordIsRefused() {
        assertTrue(only("concepts/C-001.json", CONCEPT + "{}").contains("goes on after the end"));
    }

    @Test
    void nestingBeyondAHundredLevelsIsRefusedAndNothingOverflows() {
        String deep = "{\"id\": \"N-001\", \"x\": " + "[".repeat(5000) + "]".repeat(5000) + "}";
        assertTrue(only("needs/N-001.json", deep).contains("more than 100 levels deep"));
    }

    @Test
    void idAndFileNameMustAgree() {
        assertEquals(
                "concepts/C-002.json:2:9: C-002, id: says C-001, but the file is called C-002; make both the same; an id that"
                        + " is in use elsewhere needs a number of its own.",
                only("concepts/C-002.json", CONCEPT));
    }

    @Test
    void everythingWrongWithARecordIsSaidAtOnce() {
        List<String> problems = problems("needs/N-001.json", """
                {
                  "id": "N-001",
                  "words": "",
                  "source": "hearsay",
                  "date": "9 March"
                }
                """);
        assertEquals(
                List.of(
                        "needs/N-001.json:3:12: N-001, words: is empty; write it.",
                        "needs/N-001.json:4:13: N-001, source: \"hearsay\" is none of the words allowed; write interview, ride,"
                                + " dealer, warranty.",
                        "needs/N-001.json:1:1: N-001, importance: is missing; add \"importance\": \"must\".",
                        "needs/N-001.json:5:11: N-001, date: \"9 March\" is no date; write for example \"2026-03-09\"."),
                problems);
    }

    @Test
    void aMissingFieldUnderAlmostItsNameIsPointedOut() {
        String sentence = only("concepts/C-001.json", CONCEPT.replace("\"cogs\"", "\"cog\""));
        assertTrue(sentence.contains("(the file has \"cog\")"), sentence);
    }

    @Test
    void problemsInListsNameTheEntryByItsId() {
        String text = """
                {
                  "id": "R-001", "kind": "function", "title": "T", "statement": "S", "verification": "analysis",
                  "criteria": [
                    {"id": "k7", "figure": "gear-range", "comparator": "at-least", "target": "much"}
                  ]
                }
                """;
        assertEquals(
                "requirements/R-001.json:4:78: R-001, criteria.k7.target: \"much\" is no number; write for example 50.",
                only("requirements/R-001.json", text));
    }

    @Test
    void aReferenceToNothingIsAProblemAndTheRecordOpens() {
        TreeMap<String, byte[]> files = new TreeMap<>();
        files.put("project.json", LED.getBytes(StandardCharsets.UTF_8));
        Loading.Outcome outcome = Loading.load(files);
        assertEquals(
                List.of("project.json: project, leadConcept: names C-001, but there is no such concept; add it or name"
                        + " another."),
                outcome.problems().stream().map(Problem::sentence).toList());
        assertEquals(
                RecordId.parse("C-001"),
                outcome.definition().orElseThrow().project().leadConcept());
    }

    @Test
    void aReferenceToABrokenFileSendsThereAndNotElsewhere() {
        TreeMap<String, byte[]> files = new TreeMap<>();
        files.put("project.json", LED.getBytes(StandardCharsets.UTF_8));
        files.put("concepts/C-001.json", "{\"id\": \"C-001\"}".getBytes(StandardCharsets.UTF_8));
        List<String> problems =
                Loading.load(files).problems().stream().map(Problem::sentence).toList();
        assertTrue(
                problems.contains("project.json: project, leadConcept: names C-001, whose file could not be read; mend"
                        + " concepts/C-001.json."),
                problems.toString());
    }

    @Test
    void aReferenceToTheWrongKindIsNamed() {
        String text =
                "{\"id\": \"N-001\", \"words\": \"w\", \"source\": \"ride\", \"importance\": \"must\", \"riders\":"
                        + " [\"C-001\"]}";
        assertEquals(
                "needs/N-001.json: N-001, riders: names C-001, which is no rider group; name one like G-001.",
                only("needs/N-001.json", text));
    }

    @Test
    void partsThatAreEachOthersAssemblyAreReportedOnceFromTheSmallest() {
        TreeMap<String, byte[]> files = new TreeMap<>();
        files.put("project.json", "{\"id\": \"project\", \"name\": \"P\"}".getBytes(StandardCharsets.UTF_8));
        String[][] parents = {{"P-003", "P-001"}, {"P-001", "P-002"}, {"P-002", "P-003"}, {"P-009", "P-002"}};
        for (String[] part : parents) {
            String text = "{\"id\": \"" + part[0] + "\", \"title\": \"t\", \"parent\": \"" + part[1] + "\"}";
            files.put("parts/" + part[0] + ".json", text.getBytes(StandardCharsets.UTF_8));
        }
        assertEquals(
                List.of(
                        "parts/P-001.json: P-001, parent: is its own assembly in the end: P-001 → P-002 → P-003 → P-001;"
                                + " change one of these parents."),
                Loading.load(files).problems().stream().map(Problem::sentence).toList());
    }

    @Test
    void withoutReadableSettingsThereIsNoProject() {
        TreeMap<String, byte[]> files = new TreeMap<>();
        files.put("project.json", "{\"id\": \"project\"}".getBytes(StandardCharsets.UTF_8));
        Loading.Outcome outcome = Loading.load(files);
        assertTrue(outcome.definition().isEmpty());
        assertEquals(1, outcome.problems().size());
    }

    @Test
    void aNewerFormatOpensForReadingOnly() {
        TreeMap<String, byte[]> files = new TreeMap<>();
        files.put(
                "project.json",
                "{\"id\": \"project\", \"name\": \"P\", \"format\": 2}".getBytes(StandardCharsets.UTF_8));
        Loading.Outcome outcome = Loading.load(files);
        assertEquals(Loading.Access.READ_ONLY, outcome.access());
        assertTrue(outcome.problems().get(0).sentence().contains("newer than this program"));
    }

    @Test
    void aRecordOfNoKnownKindOfFolderIsLeftAlone() {
        assertTrue(RecordKinds.byFolder("rides").isEmpty());
        assertEquals(List.of(), problems("rides/X-001.json", "not json at all"));
    }
}
