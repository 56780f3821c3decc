package groupwright.definition.interchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.figure.FigureText;
import groupwright.definition.record.Claim;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import groupwright.definition.record.RecordKind;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.Support;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The sample project is read without a problem and holds what its description in samples/README.md says. */
class SampleOpensTest {
    private static final Path ROOT = Path.of("..", "..", "samples", "tarnbeck");
    private static final Pattern PLACEHOLDER = Pattern.compile("\\{\\{([^}]*)}}");

    private static SortedMap<String, byte[]> files;
    private static Loading.Outcome outcome;

    @BeforeAll
    static void load() throws IOException {
        files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(ROOT)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                files.put(ROOT.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
            }
        }
        outcome = Loading.load(files);
    }

    private static Definition definition() {
        return outcome.definition().orElseThrow();
    }

    @Test
    void nothingIsWrongWithIt() {
        assertEquals(List.of(), outcome.problems());
        assertEquals(Loading.Access.WRITABLE, outcome.access());
    }

    @ParameterizedTest(name = "{1} files in {0}")
    @CsvSource(textBlock = """
            riders,        3
            needs,        45
            requirements, 49
            bikes,         6
            concepts,      4
            parts,        37
            yardsticks,    3
            lines,         2
            claims,       25
            decisions,     2
            milestones,    9
            """)
    void eachFileIsARecord(String folder, int count) {
        RecordKind<?> kind = RecordKinds.byFolder(folder).orElseThrow();
        assertEquals(count, definition().count(kind));
        assertEquals(
                count,
                files.keySet().stream()
                        .filter(path -> path.startsWith(folder + "/"))
                        .count());
    }

    @Test
    void writingItBackChangesNoByte() {
        for (RecordKind<?> kind : RecordKinds.all()) {
            for (Entry record : definition().all(kind)) {
                byte[] base = files.get(kind.path(record.id()));
                assertEquals(text(base), text(RecordWriter.write(record, base)), record.id()::text);
            }
        }
    }

    @Test
    void claimsNameFiguresInTheGrammar() {
        int named = 0;
        for (Claim claim : definition().all(RecordKinds.CLAIM)) {
            for (Support support : claim.supports()) {
                allRecordsAreThere(FigureText.parse(support.figure()), claim);
                named++;
            }
            String words = claim.wording() + claim.basis();
            for (MatchResult found : PLACEHOLDER.matcher(words).results().toList()) {
                allRecordsAreThere(FigureText.parse(found.group(1)), claim);
                named++;
            }
        }
        assertTrue(named > 20, "only " + named + " figures are named in claims");
    }

    private static void allRecordsAreThere(FigureText figure, Claim claim) {
        figure.records().forEach(id -> assertTrue(definition().get(id).isPresent(), claim.id() + " names " + id));
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }
}
