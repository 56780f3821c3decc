package groupwright.definition.storage;

import static java.nio.file.LinkOption.NOFOLLOW_LINKS;
import static java.nio.file.StandardOpenOption.CREATE;
import static java.nio.file.StandardOpenOption.READ;
import static java.nio.file.StandardOpenOption.WRITE;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** A lock held on a file until closed or until the process ends, however it ends. The file stays. */
final class LockFile implements AutoCloseable {
    /**
     * Locks this process holds. Kept for the whole process because the lock belongs to the whole process: on POSIX systems
     * closing any other channel on the file would drop it (see {@link java.nio.channels.FileLock}), so a second attempt
     * must not even open the file.
     */
    private static final Set<Path> HELD = ConcurrentHashMap.newKeySet();

    private static final int LONGEST_NUMBER = 20;

    private final Path file;
    private final FileChannel channel;
    private final Optional<Object> identity;

    private LockFile(Path file, FileChannel channel) throws IOException {
        this.file = file;
        this.channel = channel;
        this.identity = identity(file);
    }

    static Optional<LockFile> take(Path file) throws IOException {
        if (!HELD.add(file)) {
            return Optional.empty();
        }
        Optional<LockFile> taken = Optional.empty();
        try {
            taken = lock(file);
        } finally {
            if (taken.isEmpty()) {
                HELD.remove(file);
            }
        }
        return taken;
    }

    private static Optional<LockFile> lock(Path file) throws IOException {
        FileChannel channel = FileChannel.open(file, CREATE, READ, WRITE, NOFOLLOW_LINKS);
        boolean locked = false;
        try {
            // one byte far behind the text: where locks are mandatory (Windows), others can still read the number
            locked = channel.tryLock(Long.MAX_VALUE - 1, 1, false) != null;
            if (!locked) {
                return Optional.empty();
            }
            channel.truncate(0);
            String number = ProcessHandle.current().pid() + "\n";
            channel.write(ByteBuffer.wrap(number.getBytes(StandardCharsets.US_ASCII)), 0);
            return Optional.of(new LockFile(file, channel));
        } catch (OverlappingFileLockException e) {
            return Optional.empty(); // held by this process through another class loader
        } finally {
            if (!locked) {
                channel.close();
            }
        }
    }

    /** The number of the process that holds the lock, as far as it can be read. */
    static OptionalLong holder(Path file, Disk disk) {
        if (HELD.contains(file)) {
            return OptionalLong.of(ProcessHandle.current().pid());
        }
        try {
            String text = new String(disk.read(file, LONGEST_NUMBER), StandardCharsets.US_ASCII);
            return OptionalLong.of(Long.parseLong(text.strip()));
        } catch (IOException | NumberFormatException e) {
            return OptionalLong.empty(); // only said to help: who holds the lock may just be writing its number
        }
    }

    boolean isHeld() {
        return channel.isOpen();
    }

    /** False once somebody deleted the lock file: from then on another process may hold a lock on a new one. */
    boolean isInPlace() {
        try {
            return Files.exists(file, NOFOLLOW_LINKS) && identity.equals(identity(file));
        } catch (IOException e) {
            return false;
        }
    }

    /** Device and inode where there are such. */
    private static Optional<Object> identity(Path file) throws IOException {
        return Optional.ofNullable(Files.readAttributes(file, BasicFileAttributes.class, NOFOLLOW_LINKS)
                .fileKey());
    }

    @Override
    public void close() throws IOException {
        if (channel.isOpen()) {
            channel.close();
            HELD.remove(file);
        }
    }
}
