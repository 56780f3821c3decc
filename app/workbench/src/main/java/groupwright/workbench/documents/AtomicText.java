package groupwright.workbench.documents;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Writes a text as a whole or not at all: beside its place first, forced to disk, then moved there. */
final class AtomicText {
    private AtomicText() {}

    /** Writes a file, in place of one that is there. */
    static void replace(Path file, String text) throws IOException {
        Path half = beside(file, text);
        try {
            Files.move(half, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(half);
        }
    }

    /**
     * Writes a new file.
     *
     * @throws java.nio.file.FileAlreadyExistsException if anything of that name is there; it stays as it is
     */
    static void create(Path file, String text) throws IOException {
        Path half = beside(file, text);
        try {
            Files.createLink(file, half); // the only way to give a name in one step that refuses a taken one
        } catch (FileAlreadyExistsException taken) {
            throw taken;
        } catch (UnsupportedOperationException | FileSystemException noLinks) {
            Files.move(half, file); // where the file system has no second names
        } finally {
            Files.deleteIfExists(half);
        }
    }

    private static Path beside(Path file, String text) throws IOException {
        Files.createDirectories(file.getParent());
        Path half = file.resolveSibling(
                "." + file.getFileName() + "-" + ProcessHandle.current().pid() + ".part");
        try (FileChannel channel = FileChannel.open(
                half, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE)) {
            ByteBuffer bytes = StandardCharsets.UTF_8.encode(text);
            while (bytes.hasRemaining()) {
                channel.write(bytes);
            }
            channel.force(true);
        }
        return half;
    }
}
