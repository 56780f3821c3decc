package groupwright.definition.storage;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The few things storage does with files; everything it writes passes here, so that tests can stop the machine before and
 * after each step and lose what was not forced.
 */
interface Disk {
    /** Makes a folder; fails if there is anything of that name. */
    void createDirectory(Path folder) throws IOException;

    /** Makes a file with this content, not forced; fails if there is anything of that name. */
    void createFile(Path file, Content content) throws IOException;

    /** Returns once the content of the file is safe from a power cut. */
    void force(Path file) throws IOException;

    /** Returns once the contents of all the files are safe from a power cut. */
    void forceAll(List<Path> files) throws IOException;

    /** Gives a file or folder another name in one step; a file of that name is replaced, a link not followed. */
    void replace(Path from, Path to) throws IOException;

    /** As {@link #replace}, but throws {@link java.nio.file.FileAlreadyExistsException} if the name is taken. */
    void moveToNew(Path from, Path to) throws IOException;

    /** Returns once the names in the folder are safe from a power cut. */
    void forceDirectory(Path folder) throws IOException;

    /** Deletes a file, a link or an empty folder. */
    void delete(Path path) throws IOException;

    /** At most this many bytes from the start of the file, a link not followed. */
    byte[] read(Path file, int most) throws IOException;

    /** What lies in the folder, in no order. */
    List<Path> list(Path folder) throws IOException;

    /** Whether names in the folder can be changed, as far as the system tells without trying. */
    boolean isWritable(Path folder);

    /** Takes the lock in this file and writes this process's number there; nothing if it is taken. */
    Optional<LockFile> lock(Path file) throws IOException;
}
