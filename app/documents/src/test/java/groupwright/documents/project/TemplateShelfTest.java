package groupwright.documents.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TemplateShelfTest {
    @TempDir
    Path project;

    private Path templates;

    @BeforeEach
    void makeFolder() throws IOException {
        templates = Files.createDirectories(project.resolve("templates"));
    }

    private TemplateShelf shelf() {
        return new TemplateShelf(project);
    }

    @Test
    void templatesOfTheProjectComeBehindOursByName() throws IOException {
        for (String file : List.of(
                "zebra.md",
                "a-1.md",
                "claims.md",
                "README.md",
                "Upper.md",
                "1st.md",
                "note.txt",
                "x".repeat(41) + ".md",
                ".hidden.md",
                "with blank.md")) {
            Files.writeString(templates.resolve(file), "x");
        }
        List<String> expected = new java.util.ArrayList<>(TemplateShelf.NAMES);
        expected.addAll(List.of("a-1", "zebra"));
        assertEquals(expected, shelf().available());
    }

    @Test
    void withoutAFolderThereAreOurs() throws IOException {
        Files.delete(templates);
        assertEquals(TemplateShelf.NAMES, shelf().available());
    }

    @Test
    void aNameIsATitleInSentenceCase() {
        assertEquals("Service manual 2", TemplateShelf.title("service-manual-2"));
    }

    @Test
    void twoMebibytesAreRefusedBeforeTheyAreRead() throws IOException {
        Files.write(templates.resolve("big.md"), new byte[2 << 20]);
        TemplateShelf.Found found = shelf().find("big");
        assertTrue(found.template().isEmpty());
        assertEquals(
                "templates/big.md: has 2097152 bytes, at most 1048576 are read; shorten the file.", found.problem());
        assertTrue(Bench.sample().sentences("x".repeat(2 << 20)).get(0).contains("2097152 bytes"));
    }

    @Test
    void aTemplateThatIsGoneIsNamed() {
        assertEquals(
                "templates/gone.md: is not there any more; put it back or leave it out.",
                shelf().find("gone").problem());
    }

    @Test
    void aLinkInThePlaceOfATemplateIsRefused() throws IOException {
        Path outside = Files.writeString(project.resolve("outside.md"), "secret");
        Files.createSymbolicLink(templates.resolve("linked.md"), outside);
        assertTrue(shelf().available().contains("linked"));
        assertTrue(
                shelf().find("linked").problem().contains("is a link"),
                shelf().find("linked").problem());
    }
}
