package groupwright.definition.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The small values: paths, contents, hashes, changes, the manifest. */
class ValuesTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "/etc/passwd",
                "..",
                "../R-001.json",
                "requirements/../R-001.json",
                "requirements/R-001.json/",
                "requirements//R-001.json",
                "requirements\\R-001.json",
                "/requirements/R-001.json",
                "R-001.json",
                "requirements/r-001.json",
                "requirements/R-01.json",
                "requirements/R-1234567.json",
                "requirements/ABCD-001.json",
                "requirements/R-001.JSON",
                "requirements/R-001.json\n",
                "requirements/R-\u0661\u0662\u0663.json",
                "Requirements/R-001.json",
                ".groupwright/R-001.json",
                "requirements/a/R-001.json",
                "project.json/R-001.json",
                "requirements/R-001.json\u0000",
                "C:/R-001.json",
                "-/R-001.json",
                "a--b/R-001.json"
            })
    void noTextNamesAnotherPlace(String text) {
        assertEquals(Optional.empty(), RecordPath.parse(text));
        assertThrows(IllegalArgumentException.class, () -> new RecordPath(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"project.json", "requirements/R-001.json", "rider-groups/G-123456.json", "a/ABC-999.json"})
    void placesOfRecords(String text) {
        RecordPath path = RecordPath.parse(text).orElseThrow();
        assertEquals(path, path.id().isEmpty() ? RecordPath.PROJECT : RecordPath.of(path.folder(), path.id()));
    }

    /** The example of one block in FIPS 180-2, appendix B.1. */
    @Test
    void sha256OfThePublishedExample() {
        assertEquals(
                "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
                Content.ofText("abc").sha256().hex());
    }

    @Test
    void contentDoesNotFollowItsArray() {
        byte[] bytes = "abc".getBytes(StandardCharsets.UTF_8);
        Content content = Content.of(bytes);
        bytes[0] = 'x';
        content.bytes()[1] = 'x';
        assertEquals("abc", content.text());
        assertEquals(Content.ofText("abc"), content);
    }

    @Test
    void aChangeNeedsAVersion() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new Change(RecordPath.PROJECT, Optional.empty(), Optional.empty()));
    }

    private static final Manifest MANIFEST = Manifest.of(List.of(
            Change.remove(Project.path("needs/N-001.json"), Project.text("a").sha256()),
            Change.create(Project.path("concepts/C-001.json"), Project.text("b"))));

    @Test
    void theManifestIsReadBack() {
        assertEquals(Optional.of(MANIFEST), Manifest.parse(MANIFEST.encoded().text()));
    }

    @Test
    void anyByteOfTheManifestMatters() {
        byte[] bytes = MANIFEST.encoded().bytes();
        for (int i = 0; i < bytes.length; i++) {
            byte[] damaged = bytes.clone();
            damaged[i] ^= 1;
            assertEquals(Optional.empty(), Manifest.parse(new String(damaged, StandardCharsets.UTF_8)), "byte " + i);
            String cut = new String(bytes, 0, i, StandardCharsets.UTF_8);
            assertEquals(Optional.empty(), Manifest.parse(cut), "cut at " + i);
        }
    }

    @Test
    void aManifestOfANewerVersionIsTold() {
        assertEquals(true, Manifest.isNewer("groupwright journal 2\nwhatever"));
        assertEquals(false, Manifest.isNewer(MANIFEST.encoded().text()));
    }
}
