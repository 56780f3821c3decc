package groupwright.documents.project;

import static org.junit.jupiter.api.Assertions.assertEquals;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.ledger.Ledger;
import groupwright.definition.project.ProjectFiles;
import groupwright.documents.numbers.Measures;
import groupwright.documents.numbers.Reader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Documents of the sample read as recorded. After a change that is meant, write them anew and read the difference:
 * {@code mvn -pl app/documents -am test -Dtest=GoldenDocumentsTest -Dsurefire.failIfNoSpecifiedTests=false
 * -Dgolden.write=true}.
 */
class GoldenDocumentsTest {
    private static final Path SAMPLE = Path.of("..", "..", "samples", "tarnbeck");
    private static final Path GOLDEN = Path.of("src/test/resources/groupwright/documents/project");

    @TempDir
    Path out;

    @ParameterizedTest
    @CsvSource({
        "brief, en, METRIC",
        "brief, de, METRIC",
        "brief, en, IMPERIAL",
        "claims, en, METRIC",
        "fit, en, METRIC",
        "fit, de, METRIC"
    })
    void aDocumentOfTheSampleReadsAsRecorded(String name, String language, Measures measures) throws IOException {
        ProjectFiles files = ProjectFiles.read(SAMPLE);
        Ledger ledger = new Ledger(Catalogue.ofServices(), files.definition().orElseThrow(), 1000);
        Reader reader = new Reader(Locale.forLanguageTag(language), measures);
        ProjectDocuments.Outcome outcome = new ProjectDocuments(ledger, files, SAMPLE, reader)
                .write(List.of(name), Optional.empty(), out, Set.of(Format.MARKDOWN));
        assertEquals(List.of(), outcome.problems());
        String found = Files.readString(out.resolve(name + ".md"));
        Path golden = GOLDEN.resolve(name + "-" + language + (measures == Measures.METRIC ? "" : "-imperial") + ".md");
        if (Boolean.getBoolean("golden.write")) {
            Files.createDirectories(GOLDEN);
            Files.writeString(golden, found);
        }
        assertEquals(Files.readString(golden), found, "see the comment of this test");
    }
}
