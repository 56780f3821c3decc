package groupwright.documents.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.ledger.Ledger;
import groupwright.definition.project.ProjectFiles;
import groupwright.definition.record.Definition;
import groupwright.documents.numbers.Reader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** All documents of a project with 2,000 requirements. */
class LargeProjectTest {
    private static final int REQUIREMENTS = 2000;
    private static final Path SAMPLE = Path.of("..", "..", "samples", "tarnbeck");

    @TempDir
    Path out;

    @Test
    void everyDocumentOfTwoThousandRequirementsIsWrittenWhole() throws IOException {
        Definition definition = LargeProjects.withRequirements(SampleProject.DEFINITION, REQUIREMENTS);
        Ledger ledger = new Ledger(Catalogue.ofServices(), definition, 1000);
        ProjectDocuments documents =
                new ProjectDocuments(ledger, ProjectFiles.read(SAMPLE), SAMPLE, new Reader(Locale.ENGLISH));
        for (String name : ProjectDocuments.names()) {
            ProjectDocuments.Outcome outcome = documents.write(List.of(name), Optional.empty(), out);
            assertEquals(List.of(), outcome.problems(), name);
            assertEquals(List.of(), outcome.warnings(), name);
            try (PDDocument pdf = Loader.loadPDF(out.resolve(name + ".pdf").toFile())) {
                if (!List.of("claims", "cassette-study").contains(name)) { // these speak of no requirement
                    String text = new PDFTextStripper().getText(pdf);
                    String last =
                            name.equals("fit") ? "R-1968" : "R-1961"; // of R-008, which is about bikes, and of R-001
                    assertTrue(text.contains(last), name + " holds the last copy, " + last);
                }
            }
            assertTrue(Files.readString(out.resolve(name + ".md")).length() > 1000, name);
        }
    }
}
