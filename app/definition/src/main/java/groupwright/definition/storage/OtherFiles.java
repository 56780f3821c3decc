package groupwright.definition.storage;

import groupwright.definition.problem.Problem;
import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Copies the files of a project that are no records it knows to another folder; never over a file that is there. */
final class OtherFiles extends SimpleFileVisitor<Path> {
    private final Path from;
    private final Path to;
    private final Set<RecordPath> records;
    private final List<Problem> problems = new ArrayList<>();

    private OtherFiles(Path from, Path to, Set<RecordPath> records) {
        this.from = from;
        this.to = to;
        this.records = records;
    }

    static List<Problem> copy(Path from, Path to, Set<RecordPath> records) {
        OtherFiles copy = new OtherFiles(
                from.toAbsolutePath().normalize(), to.toAbsolutePath().normalize(), records);
        try {
            if (Files.isDirectory(copy.from)) { // it may be gone, which may be why the project is saved elsewhere
                Files.walkFileTree(copy.from, copy);
            }
        } catch (IOException e) {
            copy.add(copy.from, e);
        }
        return copy.problems;
    }

    @Override
    public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
        boolean skipped = folder.equals(to) || !folder.equals(from) && isHidden(folder);
        return skipped ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
        Path target = to.resolve(from.relativize(file));
        boolean wanted = attributes.isRegularFile() && !isHidden(file) && !isRecord(file);
        if (wanted && !Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
            try {
                Files.createDirectories(target.getParent());
                Files.copy(file, target, LinkOption.NOFOLLOW_LINKS);
            } catch (IOException e) {
                add(file, e);
            }
        }
        return FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFileFailed(Path file, IOException e) {
        add(file, e);
        return FileVisitResult.CONTINUE;
    }

    private static boolean isHidden(Path path) {
        return path.getFileName().toString().startsWith(".");
    }

    private boolean isRecord(Path file) {
        String name =
                from.relativize(file).toString().replace(file.getFileSystem().getSeparator(), "/");
        return RecordPath.parse(name).filter(records::contains).isPresent();
    }

    private void add(Path file, IOException e) {
        problems.add(Problem.ofFile(
                file.toString(), "was not copied (" + DiskTrouble.detail(e) + ")", "copy it by hand if it is needed"));
    }
}
