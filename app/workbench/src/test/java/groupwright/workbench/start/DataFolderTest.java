package groupwright.workbench.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.project.ProjectFiles;
import groupwright.documents.numbers.Measures;
import groupwright.documents.pages.PaperSize;
import groupwright.documents.project.Format;
import groupwright.workbench.Sample;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DataFolderTest {
    @TempDir
    Path folder;

    @Test
    void theSampleIsCopiedOnceAndWhatIsMadeOfItStays() throws IOException {
        DataFolder data = new DataFolder(folder.resolve("data"));
        Path copy = data.sampleLike(Sample.FOLDER);
        assertEquals(
                ProjectFiles.read(Sample.FOLDER).contentHash(),
                ProjectFiles.read(copy).contentHash());
        Files.delete(copy.resolve("needs/N-001.json"));
        data.sampleLike(Sample.FOLDER);
        assertTrue(Files.notExists(copy.resolve("needs/N-001.json")));
    }

    @Test
    void aFreshSampleKeepsTheEarlierOne() throws IOException {
        DataFolder data = new DataFolder(folder);
        Path copy = data.sampleLike(Sample.FOLDER);
        Files.delete(copy.resolve("needs/N-001.json"));
        Path kept = data.freshSample(Sample.FOLDER).orElseThrow();
        assertTrue(Files.exists(copy.resolve("needs/N-001.json")));
        assertTrue(Files.notExists(kept.resolve("needs/N-001.json")));
        assertTrue(Files.exists(kept.resolve("project.json")));
    }

    @Test
    void preferencesAreReadAsTheyWereWritten() throws IOException {
        DataFolder data = new DataFolder(folder);
        DocumentChoices documents = DocumentChoices.USUAL
                .in("de")
                .on(PaperSize.LETTER)
                .with(Measures.IMPERIAL)
                .as(EnumSet.of(Format.MARKDOWN));
        Preferences chosen =
                new Preferences(Preferences.Dark.YES, 150, "de", Optional.of(folder.resolve("ä b")), documents);
        chosen.write(data);
        assertEquals(chosen, Preferences.read(data));
    }

    @Test
    void unknownChoicesOfDocumentsAreLeftOut() throws IOException {
        DataFolder data = new DataFolder(folder);
        Files.writeString(data.preferences(), "documents.formats=SCROLL,MARKDOWN\n");
        assertEquals(
                EnumSet.of(Format.MARKDOWN), Preferences.read(data).documents().formats());
    }

    @ParameterizedTest
    @ValueSource(strings = {"scale=many", "\\u00", "project=\\u0000", "\0"})
    void damagedPreferencesAreTheUsualOnes(String text) throws IOException {
        DataFolder data = new DataFolder(folder);
        Files.writeString(data.preferences(), text);
        assertEquals(Preferences.USUAL, Preferences.read(data));
    }

    @Test
    void aScaleOutOfLimitsIsBroughtInside() throws IOException {
        DataFolder data = new DataFolder(folder);
        Files.writeString(data.preferences(), "scale=900\ndark=true\n");
        assertEquals(200, Preferences.read(data).scalePct());
        assertEquals(Preferences.Dark.YES, Preferences.read(data).dark());
    }
}
