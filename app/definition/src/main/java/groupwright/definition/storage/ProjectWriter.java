package groupwright.definition.storage;

import groupwright.definition.problem.Problem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A project open for writing; nobody else can write to it until it is closed. Safe for use by several threads. */
public final class ProjectWriter implements AutoCloseable {
    private final Place place;
    private final Path root;
    private final Disk disk;
    private final LockFile lock;

    ProjectWriter(Place place, LockFile lock) {
        this.place = place;
        this.root = place.root();
        this.disk = place.disk();
        this.lock = lock;
    }

    /** Reads the whole project as it is now; see {@link ProjectFolder#read()}. */
    public synchronized Snapshot read() {
        return new ProjectReading(place).read();
    }

    /**
     * Saves an edit: after {@link Outcome.Committed} all of it survives a power cut, after anything else none of it is in
     * the project, but for what {@link Outcome.Conflict} says of changes in the moment of saving. An interrupt that came
     * before is put off; one that comes meanwhile may make it fail.
     *
     * @param changes one for each file concerned
     * @throws IllegalArgumentException if a file occurs twice or lies in no record folder
     * @throws IllegalStateException if the writer is closed
     */
    public synchronized Outcome commit(Collection<Change> changes) {
        requireSound(changes);
        boolean interrupted = Thread.interrupted(); // file channels close under an interrupted thread
        try {
            return checkedAndSaved(List.copyOf(changes));
        } catch (IOException e) {
            clearAfter(e);
            return new Outcome.Failed(DiskTrouble.of(e, root).nothingSaved());
        } finally {
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }

    private Outcome checkedAndSaved(List<Change> changes) throws IOException {
        Optional<Outcome> refusal = unfinished().or(() -> new CommitCheck(root, disk).refusal(changes));
        return refusal.isPresent() ? refusal.get() : save(changes);
    }

    /** False once somebody deleted or moved the lock, or the whole folder: from then on nothing more is saved. */
    public synchronized boolean isStillOurs() {
        return lock.isHeld() && lock.isInPlace();
    }

    private void requireSound(Collection<Change> changes) {
        if (!lock.isHeld()) {
            throw new IllegalStateException("the project was closed");
        }
        Set<RecordPath> seen = new HashSet<>();
        for (Change change : changes) {
            String folder = change.path().folder();
            if (!folder.isEmpty() && !place.recordFolders().contains(folder)) {
                throw new IllegalArgumentException("no record folder: " + change.path());
            }
            if (!seen.add(change.path())) {
                throw new IllegalArgumentException("two changes of " + change.path() + " in one edit");
            }
        }
    }

    /** Finishes an edit that was left waiting. */
    private Optional<Outcome> unfinished() {
        if (!lock.isInPlace()) {
            return failed("Nothing was saved because somebody deleted or moved " + OwnFolder.NAME
                    + ", which guards this project; open the project again.");
        }
        try {
            Optional<Problem> problem = new Recovery(root, disk).recover();
            return problem.flatMap(found -> failed("Nothing was saved: " + found.sentence()));
        } catch (IOException e) {
            DiskTrouble trouble = DiskTrouble.of(e, root);
            return failed("Nothing was saved because " + trouble.wrong() + "; " + trouble.remedy() + ".");
        }
    }

    private static Optional<Outcome> failed(String sentence) {
        return Optional.of(new Outcome.Failed(sentence));
    }

    private Outcome save(List<Change> changes) throws IOException {
        List<Change> real =
                changes.stream().filter(change -> !change.changesNothing()).toList();
        Outcome outcome = saveReal(real);
        if (outcome instanceof Outcome.Committed committed) {
            // unchanged files are part of the edit: their hash is wanted too
            return new Outcome.Committed(Manifest.of(changes).hashes(), committed.warning());
        }
        return outcome;
    }

    private Outcome saveReal(List<Change> changes) throws IOException {
        return switch (changes.size()) {
            case 0 -> new Outcome.Committed(Collections.emptySortedMap(), Optional.empty());
            case 1 -> new SavingOne(root, disk).save(changes.get(0));
            default -> new SavingSeveral(root, disk).save(changes);
        };
    }

    private void clearAfter(IOException cause) {
        try {
            new OwnFolder(root, disk).clear();
        } catch (IOException e) {
            cause.addSuppressed(e); // what is left is cleared before the next edit
        }
    }

    /** Lets others write; edits are safe already. */
    @Override
    public synchronized void close() throws IOException {
        lock.close();
    }
}
