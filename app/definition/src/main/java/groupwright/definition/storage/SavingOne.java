package groupwright.definition.storage;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Saves an edit of one file: written aside, forced, renamed into its place, the folder forced. */
final class SavingOne {
    private final Path root;
    private final Disk disk;
    private final OwnFolder own;

    SavingOne(Path root, Disk disk) {
        this.root = root;
        this.disk = disk;
        this.own = new OwnFolder(root, disk);
    }

    /**
     * Between the last look at the old version and the rename lies a moment in which a program that knows no lock could
     * change the file; no file system in common use offers to close it.
     *
     * @throws IOException if nothing was changed
     */
    Outcome save(Change change) throws IOException {
        Path target = change.path().below(root);
        if (change.after().isPresent()) {
            disk.createFile(own.saving(), change.after().get());
            disk.force(own.saving());
            if (change.before().isEmpty()) {
                new RecordFolders(root, disk).make(change.path());
                disk.forceDirectory(root);
            }
        }
        if (!new RecordReader(root, disk).read(change.path()).is(change.before())) {
            return conflict(change);
        }
        try {
            putInPlace(change, target);
        } catch (FileAlreadyExistsException e) {
            return conflict(change);
        } catch (IOException e) {
            if (!isDone(change, target)) {
                throw e;
            }
        }
        return forced(change, target);
    }

    private void putInPlace(Change change, Path target) throws IOException {
        if (change.after().isEmpty()) {
            disk.delete(target);
        } else if (change.before().isEmpty()) {
            disk.moveToNew(own.saving(), target);
        } else {
            disk.replace(own.saving(), target);
        }
    }

    /** Network drives may report trouble with a step that they have done. */
    private boolean isDone(Change change, Path target) {
        return Files.isDirectory(target.getParent())
                && new RecordReader(root, disk).read(change.path()).is(change.afterHash());
    }

    private Outcome forced(Change change, Path target) {
        SortedMap<RecordPath, Sha256> hashes = new TreeMap<>();
        change.afterHash().ifPresent(hash -> hashes.put(change.path(), hash));
        try {
            disk.forceDirectory(target.getParent());
            return new Outcome.Committed(hashes, Optional.empty());
        } catch (IOException e) {
            DiskTrouble trouble = DiskTrouble.of(e, root);
            return new Outcome.Committed(
                    hashes,
                    Optional.of("The edit is in place but may not survive a power cut because " + trouble.wrong() + "; "
                            + trouble.remedy() + "."));
        }
    }

    private Outcome conflict(Change change) throws IOException {
        own.clear();
        return new Outcome.Conflict(List.of(change.path()), Optional.empty());
    }
}
