package groupwright.definition.storage;

import static java.nio.file.LinkOption.NOFOLLOW_LINKS;

import groupwright.definition.problem.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;

/** Reads single files of a project without ever following a link or waiting on a pipe. */
final class RecordReader {
    private static final String NO_LINKS = "put the file itself in its place";

    private final Path root;
    private final Disk disk;

    /** @param root the real path of the project folder */
    RecordReader(Path root, Disk disk) {
        this.root = root;
        this.disk = disk;
    }

    Reading read(RecordPath path) {
        Optional<Problem> folder = path.folder().isEmpty() ? Optional.empty() : folderProblem(path.folder());
        return folder.<Reading>map(Reading.Broken::new).orElseGet(() -> read(path.below(root), path.text(), path.id()));
    }

    /** Reads a file whose folder is known to be sound. */
    Reading read(Path file, String name, String id) {
        try {
            BasicFileAttributes attributes = Files.readAttributes(file, BasicFileAttributes.class, NOFOLLOW_LINKS);
            if (attributes.isSymbolicLink()) {
                return broken(name, id, "is a link", NO_LINKS);
            }
            if (!attributes.isRegularFile()) {
                return broken(name, id, "is no file", "move it away, records are files");
            }
            byte[] bytes = disk.read(file, Snapshot.MOST_BYTES + 1);
            return TextCheck.problem(name, id, bytes)
                    .<Reading>map(Reading.Broken::new)
                    .orElseGet(() -> new Reading.Whole(Content.adopt(bytes)));
        } catch (NoSuchFileException e) {
            return new Reading.Absent();
        } catch (IOException e) {
            return broken(name, id, "cannot be read (" + DiskTrouble.detail(e) + ")", "look at its access rights");
        }
    }

    private static Reading broken(String name, String id, String wrong, String remedy) {
        return new Reading.Broken(new Problem(name, 0, 0, id, "", wrong, remedy));
    }

    /** What is wrong with a folder directly below the root; an absent folder is fine. */
    Optional<Problem> folderProblem(String name) {
        Path folder = root.resolve(name);
        try {
            BasicFileAttributes attributes = Files.readAttributes(folder, BasicFileAttributes.class, NOFOLLOW_LINKS);
            if (attributes.isSymbolicLink() || attributes.isOther() && attributes.isDirectory()) {
                return Optional.of(Problem.ofFile(name, "is a link", "put the folder itself in its place"));
            }
            if (!attributes.isDirectory()) {
                return Optional.of(Problem.ofFile(name, "is no folder", "move it away, records lie in a folder"));
            }
            if (!folder.toRealPath().startsWith(root)) {
                return Optional.of(Problem.ofFile(name, "leads out of the project", "put the folder in its place"));
            }
            return Optional.empty();
        } catch (NoSuchFileException e) {
            return Optional.empty();
        } catch (IOException e) {
            return Optional.of(Problem.ofFile(
                    name, "cannot be read (" + DiskTrouble.detail(e) + ")", "look at its access rights"));
        }
    }
}
