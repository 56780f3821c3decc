package groupwright.workbench.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.workbench.documents.Drafts.Draft;
import groupwright.workbench.documents.WrittenNumbers.Texts;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the place of documents keeps outside the project outlives it, and harms nothing where it is damaged. */
class KeptTest {
    private static final Path PROJECT = Path.of("somewhere", "tarnbeck");

    @TempDir
    Path folder;

    private static WrittenNumbers written() {
        return new WrittenNumbers(Map.of(
                "brief",
                        new Texts(Map.of("gear-range C-002", "450 %", "climb-cadence C-002 G-001 climb=a=b", "60 rpm")),
                "test-plan", new Texts(Map.of("gear-range C-002", "450 %"))));
    }

    private Path only(String name) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.endsWith(name)).findFirst().orElseThrow();
        }
    }

    @Test
    void writtenNumbersComeBack() throws IOException {
        written().write(folder, PROJECT);
        assertEquals(written(), WrittenNumbers.read(folder, PROJECT));
    }

    @Test
    void eachProjectHasItsOwn() throws IOException {
        written().write(folder, PROJECT);
        assertEquals(WrittenNumbers.NONE, WrittenNumbers.read(folder, Path.of("elsewhere", "tarnbeck")));
    }

    @Test
    void writingOneDocumentKeepsTheOthers() {
        Texts other = new Texts(Map.of("gear-range C-002", "500 %"));
        WrittenNumbers next = written().with(Map.of("test-plan", other));
        assertEquals(Optional.of(other), next.of("test-plan"));
        assertEquals(written().of("brief"), next.of("brief"));
    }

    @Test
    void damageCountsAsNothing() throws IOException {
        written().write(folder, PROJECT);
        Path file = only("written.properties");
        Files.write(file, new byte[] {(byte) 0xff, 0, 1});
        assertEquals(WrittenNumbers.NONE, WrittenNumbers.read(folder, PROJECT));
        Files.writeString(file, "no-document=1\nbrief\\tgear-range C-002=450 %\n\\u00=broken");
        assertEquals(WrittenNumbers.NONE, WrittenNumbers.read(folder, PROJECT));
        Files.writeString(file, "no-document=1\nbrief\\tgear-range\\ C-002=450 %\n");
        assertEquals(
                Optional.of(new Texts(Map.of("gear-range C-002", "450 %"))),
                WrittenNumbers.read(folder, PROJECT).of("brief"));
    }

    @Test
    void newAndOtherAnswersChangedAndGoneOnesDidNot() {
        Texts before = new Texts(Map.of("a", "1", "b", "2", "c", "3"));
        Texts now = new Texts(Map.of("a", "1", "b", "4", "d", "5"));
        assertEquals(Set.of("b", "d"), now.changedSince(before));
    }

    @Test
    void draftsComeBackToTheLetter() throws IOException {
        Drafts drafts = Drafts.NONE
                .with("brief", new Draft("base\r\n\ttext", "# Größe = #1\n! \\ {{ x }}\n"))
                .with("claims", new Draft("", ""));
        drafts.write(folder, PROJECT);
        assertEquals(drafts, Drafts.read(folder, PROJECT));
        drafts.without("brief").write(folder, PROJECT);
        assertTrue(Drafts.read(folder, PROJECT).of("brief").isEmpty());
    }
}
