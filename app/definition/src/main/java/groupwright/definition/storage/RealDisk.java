package groupwright.definition.storage;

import static java.nio.file.LinkOption.NOFOLLOW_LINKS;
import static java.nio.file.StandardOpenOption.CREATE_NEW;
import static java.nio.file.StandardOpenOption.READ;
import static java.nio.file.StandardOpenOption.WRITE;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The disk of this machine. */
final class RealDisk implements Disk {
    /** Windows has no way to force a folder (opening one fails); its renames are journalled by the file system. */
    private static final boolean FOLDERS_CAN_BE_FORCED =
            !System.getProperty("os.name", "").startsWith("Windows");

    @Override
    public void createDirectory(Path folder) throws IOException {
        Files.createDirectory(folder);
    }

    @Override
    public void createFile(Path file, Content content) throws IOException {
        try (FileChannel channel = FileChannel.open(file, CREATE_NEW, WRITE)) {
            for (ByteBuffer rest = content.buffer(); rest.hasRemaining(); ) {
                channel.write(rest);
            }
        }
    }

    @Override
    public void force(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, WRITE, NOFOLLOW_LINKS)) {
            channel.force(true);
        }
    }

    @Override
    public void forceAll(List<Path> files) throws IOException {
        new Forcing(this).force(files);
    }

    @Override
    public void replace(Path from, Path to) throws IOException {
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    }

    @Override
    public void moveToNew(Path from, Path to) throws IOException {
        try {
            Files.createLink(to, from); // in one step and never over an existing file, unlike a rename
        } catch (FileAlreadyExistsException e) {
            throw e;
        } catch (UnsupportedOperationException | FileSystemException e) {
            Files.move(from, to); // no hard links here (memory sticks): looks first, then renames
            return;
        }
        Files.delete(from);
    }

    @Override
    public void forceDirectory(Path folder) throws IOException {
        if (FOLDERS_CAN_BE_FORCED) {
            try (FileChannel channel = FileChannel.open(folder, READ)) {
                channel.force(true);
            }
        }
    }

    @Override
    public void delete(Path path) throws IOException {
        Files.delete(path);
    }

    @Override
    public byte[] read(Path file, int most) throws IOException {
        try (InputStream in = Files.newInputStream(file, READ, NOFOLLOW_LINKS)) {
            return in.readNBytes(most);
        }
    }

    @Override
    public List<Path> list(Path folder) throws IOException {
        List<Path> paths = new ArrayList<>();
        try (DirectoryStream<Path> stream = Files.newDirectoryStream(folder)) {
            stream.forEach(paths::add);
        } catch (DirectoryIteratorException e) {
            throw e.getCause();
        }
        return paths;
    }

    @Override
    public boolean isWritable(Path folder) {
        return Files.isWritable(folder);
    }

    @Override
    public Optional<LockFile> lock(Path file) throws IOException {
        return LockFile.take(file);
    }
}
