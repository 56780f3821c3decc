package groupwright.definition.storage;

import static java.nio.file.LinkOption.NOFOLLOW_LINKS;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Saves an edit of several files through the journal. */
final class SavingSeveral {
    private final Path root;
    private final Disk disk;
    private final OwnFolder own;
    private final Journal journal;

    SavingSeveral(Path root, Disk disk) {
        this.root = root;
        this.disk = disk;
        this.own = new OwnFolder(root, disk);
        this.journal = new Journal(root, disk);
    }

    /** @throws IOException if nothing was changed */
    Outcome save(List<Change> changes) throws IOException {
        Manifest manifest = Manifest.of(changes);
        stage(changes, manifest);
        disk.replace(own.staging(), own.journal());
        try {
            disk.forceDirectory(own.path());
            return outcome(manifest, new Finishing(root, disk).finish(manifest));
        } catch (IOException e) {
            return outcomeOfTrouble(manifest, e);
        }
    }

    private void stage(List<Change> changes, Manifest manifest) throws IOException {
        List<Path> files = new ArrayList<>();
        disk.createDirectory(own.staging());
        for (Change change : changes) {
            if (change.after().isPresent()) {
                files.add(own.staging().resolve(change.path().stagedName()));
                disk.createFile(files.get(files.size() - 1), change.after().get());
            }
        }
        files.add(own.staging().resolve(Manifest.NAME));
        disk.createFile(own.staging().resolve(Manifest.NAME), manifest.encoded());
        disk.forceAll(files);
        disk.forceDirectory(own.staging());
    }

    private static Outcome outcome(Manifest manifest, Finishing.Result result) {
        return result instanceof Finishing.Result.SetAside aside
                ? new Outcome.Conflict(aside.obstacles(), Optional.of(aside.keptAs()))
                : new Outcome.Committed(manifest.hashes(), Optional.empty());
    }

    /** Takes the edit back if none of it is in place; else it stays in the journal, and so is saved. */
    private Outcome outcomeOfTrouble(Manifest manifest, IOException cause) throws IOException {
        boolean untouched = manifest.entries().stream().allMatch(entry -> journal.state(entry) == Journal.State.READY);
        if (untouched && isTakenBack(cause)) {
            throw cause;
        }
        DiskTrouble trouble = DiskTrouble.of(cause, root);
        if (!Files.isDirectory(own.path(), NOFOLLOW_LINKS)) {
            return new Outcome.Failed("The edit was being saved when the project folder went away (" + trouble.wrong()
                    + "); bring it back and open it: the edit is then found whole or not at all.");
        }
        return new Outcome.Committed(
                manifest.hashes(),
                Optional.of("The edit is saved in the journal but not all files are in place because " + trouble.wrong()
                        + "; " + trouble.remedy() + "."));
    }

    private boolean isTakenBack(IOException cause) {
        try {
            own.removeJournal();
        } catch (IOException e) {
            cause.addSuppressed(e);
        }
        return Files.isDirectory(own.path(), NOFOLLOW_LINKS)
                && !Files.exists(own.journal().resolve(Manifest.NAME), NOFOLLOW_LINKS);
    }
}
