package groupwright.definition.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What reading says of folders and files as people leave them. */
class ReadingTest {
    @TempDir(factory = MemoryFolder.class)
    private Path temp;

    private Path root;
    private Path outside;

    @BeforeEach
    void folders() throws IOException {
        root = Files.createDirectory(temp.resolve("project"));
        outside = Files.createDirectory(temp.resolve("outside"));
    }

    private Snapshot read() {
        return ProjectFolder.at(root, Project.FOLDERS).read();
    }

    private List<String> sentences() {
        return Project.sentences(read());
    }

    private void project(Map<String, String> more) {
        Project.write(root, Map.of("project.json", "{}\n", "needs/N-001.json", "{}\n"));
        Project.write(root, more);
    }

    /** The one problem, and the rest read all the same. */
    private void assertOnly(String expected) {
        Snapshot snapshot = read();
        assertEquals(List.of(expected), Project.sentences(snapshot));
        assertEquals(List.of("needs/N-001.json", "project.json"), paths(snapshot));
    }

    private static List<String> paths(Snapshot snapshot) {
        return List.copyOf(Project.texts(snapshot).keySet());
    }

    @Test
    void readingWritesNothing() {
        project(Map.of("templates/brief.md", "x", "rides/a.fit", "y", "README.md", "z", "needs/.gitkeep", ""));
        assertEquals(List.of(), sentences());
        assertTrue(Files.notExists(root.resolve(".groupwright")));
    }

    @Test
    void aFolderThatIsNotThere() {
        Path missing = root.resolve("alpine");
        assertEquals(
                List.of(missing + ": does not exist; look at the name or start one with groupwright new FOLDER."),
                Project.sentences(ProjectFolder.at(missing, Project.FOLDERS).read()));
    }

    @Test
    void aFileInPlaceOfTheFolder() throws IOException {
        Path file = Files.writeString(root.resolve("alpine"), "x");
        assertEquals(
                List.of(file + ": is no folder; name the folder of the project."),
                Project.sentences(ProjectFolder.at(file, Project.FOLDERS).read()));
    }

    @Test
    void anEmptyFolder() {
        assertEquals(List.of(root + ": is empty; start one with groupwright new FOLDER."), sentences());
        Project.write(root, Map.of(".git/HEAD", "x", ".groupwright/lock", "1"));
        assertEquals(List.of(root + ": is empty; start one with groupwright new FOLDER."), sentences());
    }

    @Test
    void aFolderThatIsNoProject() {
        Project.write(root, Map.of("holiday.txt", "x"));
        assertEquals(
                List.of(root + ": holds no project.json; open the folder that holds it, or start one with groupwright"
                        + " new FOLDER."),
                sentences());
    }

    @Test
    void anEmptyFile() {
        project(Map.of("needs/N-002.json", ""));
        assertOnly("needs/N-002.json: N-002: is empty (0 bytes); bring back an earlier version or delete the file.");
    }

    @Test
    void anEmptyProjectFile() {
        project(Map.of("project.json", ""));
        assertEquals(
                List.of("project.json: is empty (0 bytes); bring back an earlier version or delete the file."),
                sentences());
    }

    @Test
    void aFileTooLarge() {
        project(Map.of("needs/N-002.json", " ".repeat(Snapshot.MOST_BYTES + 1)));
        assertOnly("needs/N-002.json: N-002: is larger than 4 MiB;"
                + " keep large material in other files and refer to it.");
    }

    @Test
    void aFileInUtf16() throws IOException {
        project(Map.of());
        Files.write(root.resolve("needs/N-002.json"), new byte[] {(byte) 0xff, (byte) 0xfe, '{', 0, '}', 0});
        assertOnly("needs/N-002.json: N-002: is UTF-16; save it as UTF-8 without byte order mark.");
    }

    @Test
    void namesThatAreNoIds() {
        project(Map.of("needs/N-2.json", "{}", "needs/N-002.txt", "x", "needs/deep/N-003.json", "{}"));
        assertEquals(
                List.of(
                        "needs/N-002.txt: is no record; name it like R-001.json or move it away.",
                        "needs/N-2.json: is no record; name it like R-001.json or move it away.",
                        "needs/deep: is no record; name it like R-001.json or move it away."),
                sentences());
    }

    @Test
    void aFolderInPlaceOfARecord() {
        project(Map.of("needs/N-002.json/x", "{}"));
        assertOnly("needs/N-002.json: N-002: is no file; move it away, records are files.");
    }

    @Test
    void aFileInPlaceOfARecordFolder() {
        project(Map.of("concepts", "x"));
        assertOnly("concepts: is no folder; move it away, records lie in a folder.");
    }

    @Test
    void namesThatDifferOnlyByCapitals() {
        project(Map.of("needs/n-001.json", "{}"));
        assumeTrue(read().files().size() == 2 && !sentences().isEmpty(), "this file system tells capitals apart");
        assertEquals(
                List.of(
                        "needs/n-001.json: is no record; name it like R-001.json or move it away.",
                        "needs/n-001.json: differs from N-001.json only by capital letters; rename one of them."),
                sentences());
    }

    @Test
    void aRecordFolderInCapitals() {
        project(Map.of("Concepts/C-001.json", "{}"));
        assumeTrue(Files.notExists(root.resolve("concepts")), "this file system tells capitals apart");
        assertOnly("Concepts: is not read because of its capital letters; rename it to concepts.");
    }

    @Test
    void linksAreNotFollowed() throws IOException {
        Project.write(outside, Map.of("secret.json", "{}", "C-001.json", "{}"));
        project(Map.of());
        Files.createSymbolicLink(root.resolve("needs/N-002.json"), outside.resolve("secret.json"));
        Files.createSymbolicLink(root.resolve("needs/N-003.json"), Path.of("N-001.json"));
        Files.createSymbolicLink(root.resolve("needs/N-004.json"), Path.of("nowhere"));
        Files.createSymbolicLink(root.resolve("concepts"), outside);
        Files.createSymbolicLink(root.resolve("requirements"), Path.of("needs"));
        Snapshot snapshot = read();
        assertEquals(List.of("needs/N-001.json", "project.json"), paths(snapshot));
        assertEquals(
                List.of(
                        "concepts: is a link; put the folder itself in its place.",
                        "needs/N-002.json: N-002: is a link; put the file itself in its place.",
                        "needs/N-003.json: N-003: is a link; put the file itself in its place.",
                        "needs/N-004.json: N-004: is a link; put the file itself in its place.",
                        "requirements: is a link; put the folder itself in its place."),
                Project.sentences(snapshot));
    }

    @Test
    void theProjectFolderItselfMayBeALink() throws IOException {
        project(Map.of());
        Path link = Files.createSymbolicLink(outside.resolve("alpine"), root);
        assertEquals(2, ProjectFolder.at(link, Project.FOLDERS).read().files().size());
    }

    /** Access rights do not bind the administrator, who may run this test: so the disk refuses. */
    @Test
    void aFileThatCannotBeRead() {
        project(Map.of("needs/N-002.json", "{}"));
        Disk refusing = new PassingDisk() {
            @Override
            public byte[] read(Path file, int most) throws IOException {
                if (file.endsWith("N-002.json")) {
                    throw new AccessDeniedException(file.toString());
                }
                return super.read(file, most);
            }
        };
        Snapshot snapshot = Project.folder(root, refusing).read();
        assertEquals(
                List.of("needs/N-002.json: N-002: cannot be read (access denied); look at its access rights."),
                Project.sentences(snapshot));
        assertEquals(2, snapshot.files().size());
    }

    @Test
    void aFolderThatCannotBeRead() {
        project(Map.of("concepts/C-001.json", "{}"));
        Disk refusing = new PassingDisk() {
            @Override
            public List<Path> list(Path folder) throws IOException {
                if (folder.endsWith("concepts")) {
                    throw new AccessDeniedException(folder.toString());
                }
                return super.list(folder);
            }
        };
        assertEquals(
                List.of("concepts: cannot be read (access denied); look at its access rights."),
                Project.sentences(Project.folder(root, refusing).read()));
    }

    /** A pipe would keep a plain read waiting for ever. */
    @Test
    void aPipeInPlaceOfARecord() throws Exception {
        project(Map.of());
        Path pipe = root.resolve("needs/N-002.json");
        assumeTrue(makesPipe(pipe), "this system makes named pipes");
        assertOnly("needs/N-002.json: N-002: is no file; move it away, records are files.");
    }

    private static boolean makesPipe(Path pipe) throws InterruptedException {
        try {
            return new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor() == 0;
        } catch (IOException e) {
            return false; // no such command
        }
    }

    /** A change between two files must not be seen in one of them only. */
    @Test
    void aChangeWhileReadingIsReadAgain() {
        project(Map.of("needs/N-002.json", "{}\n"));
        Disk changing = new PassingDisk() {
            private int reads;

            @Override
            public byte[] read(Path file, int most) throws IOException {
                byte[] bytes = super.read(file, most);
                if (file.endsWith("N-001.json") && reads++ == 0) {
                    Project.write(root, Map.of("needs/N-001.json", "{1}\n", "needs/N-002.json", "{2}\n"));
                }
                return bytes;
            }
        };
        Map<String, String> texts = Project.texts(Project.folder(root, changing).read());
        assertEquals(Map.of("project.json", "{}\n", "needs/N-001.json", "{1}\n", "needs/N-002.json", "{2}\n"), texts);
    }

    @Test
    void aProjectThatKeepsChangingIsToldSo() {
        project(Map.of());
        Disk changing = new PassingDisk() {
            private int reads;

            @Override
            public byte[] read(Path file, int most) throws IOException {
                byte[] bytes = super.read(file, most);
                Project.write(root, Map.of("needs/N-001.json", "{}\n" + " ".repeat(reads++)));
                return bytes;
            }
        };
        assertEquals(
                List.of(root + ": keeps changing while it is being read; read it again later."),
                Project.sentences(Project.folder(root, changing).read()));
    }

    @Test
    void tenThousandFilesComeSortedWhateverTheDiskSays() {
        Random random = new Random(7);
        Map<String, String> files = new HashMap<>();
        List<String> expected = new ArrayList<>();
        for (int i = 0; i < 10_000; i++) {
            String path = (i % 2 == 0 ? "needs/N-" : "requirements/R-") + (100_000 + i);
            files.put(path + ".json", "{\"n\": " + i + "}\n");
            expected.add(path + ".json");
        }
        expected.add("project.json");
        Collections.sort(expected);
        files.put("project.json", "{}\n");
        Project.write(root, files);
        Disk shuffling = new PassingDisk() {
            @Override
            public List<Path> list(Path folder) throws IOException {
                List<Path> paths = new ArrayList<>(super.list(folder));
                Collections.shuffle(paths, random);
                return paths;
            }
        };
        Snapshot first = Project.folder(root, shuffling).read();
        assertEquals(
                expected, first.files().stream().map(file -> file.path().text()).toList());
        assertEquals(first, Project.folder(root, shuffling).read());
        assertEquals(files, Project.texts(first));
    }
}
