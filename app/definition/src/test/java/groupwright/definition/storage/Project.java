package groupwright.definition.storage;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** Small projects for tests. */
final class Project {
    static final Set<String> FOLDERS = Set.of("requirements", "needs", "concepts", "rider-groups");

    private Project() {}

    static RecordPath path(String text) {
        return new RecordPath(text);
    }

    static Content text(String text) {
        return Content.ofText(text);
    }

    /** Writes files as an editor would, not through storage. */
    static void write(Path root, Map<String, String> files) {
        try {
            for (Map.Entry<String, String> file : files.entrySet()) {
                Path path = root.resolve(file.getKey());
                Files.createDirectories(path.getParent());
                Files.writeString(path, file.getValue());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static ProjectFolder folder(Path root, Disk disk) {
        return new ProjectFolder(root, FOLDERS, disk);
    }

    static ProjectWriter open(Path root, Disk disk) {
        return assertInstanceOf(Opening.Opened.class, folder(root, disk).openForWriting())
                .writer();
    }

    static SortedMap<String, String> texts(Snapshot snapshot) {
        SortedMap<String, String> texts = new TreeMap<>();
        snapshot.files()
                .forEach(file -> texts.put(file.path().text(), file.content().text()));
        return texts;
    }

    static List<String> sentences(Snapshot snapshot) {
        return snapshot.problems().stream().map(problem -> problem.sentence()).toList();
    }

    /** The names in our own folder, sorted. */
    static List<String> ownNames(Path root) {
        try {
            return new RealDisk()
                    .list(root.resolve(OwnFolder.NAME)).stream()
                            .map(path -> path.getFileName().toString())
                            .sorted()
                            .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static void delete(Path folder) throws IOException {
        Files.walkFileTree(folder, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                Files.delete(file);
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult postVisitDirectory(Path visited, IOException e) throws IOException {
                Files.delete(visited);
                return FileVisitResult.CONTINUE;
            }
        });
    }
}
