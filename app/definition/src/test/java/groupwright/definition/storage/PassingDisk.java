package groupwright.definition.storage;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Passes everything on to the real disk but forces nothing, which saves much time; tests change single operations. */
class PassingDisk implements Disk {
    private final Disk real = new RealDisk();

    @Override
    public void createDirectory(Path folder) throws IOException {
        real.createDirectory(folder);
    }

    @Override
    public void createFile(Path file, Content content) throws IOException {
        real.createFile(file, content);
    }

    @Override
    public void force(Path file) throws IOException {
        // the file system of the running machine shows everything written, forced or not
    }

    /** One after the other, so that tests can stop between. */
    @Override
    public void forceAll(List<Path> files) throws IOException {
        for (Path file : files) {
            force(file);
        }
    }

    @Override
    public void replace(Path from, Path to) throws IOException {
        real.replace(from, to);
    }

    @Override
    public void moveToNew(Path from, Path to) throws IOException {
        real.moveToNew(from, to);
    }

    @Override
    public void forceDirectory(Path folder) throws IOException {
        // as for files
    }

    @Override
    public void delete(Path path) throws IOException {
        real.delete(path);
    }

    @Override
    public byte[] read(Path file, int most) throws IOException {
        return real.read(file, most);
    }

    @Override
    public List<Path> list(Path folder) throws IOException {
        return real.list(folder);
    }

    @Override
    public boolean isWritable(Path folder) {
        return real.isWritable(folder);
    }

    @Override
    public Optional<LockFile> lock(Path file) throws IOException {
        return real.lock(file);
    }
}
