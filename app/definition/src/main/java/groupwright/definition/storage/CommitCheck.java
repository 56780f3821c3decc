package groupwright.definition.storage;

import groupwright.definition.problem.Problem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reasons to refuse an edit before anything is written. */
final class CommitCheck {
    /** The largest edit; it lies twice in memory while it is saved. */
    private static final long MOST_EDIT_BYTES = 256L << 20;

    private final Path root;
    private final Disk disk;
    private final RecordReader reader;

    CommitCheck(Path root, Disk disk) {
        this.root = root;
        this.disk = disk;
        this.reader = new RecordReader(root, disk);
    }

    /** Reads each target once. */
    Optional<Outcome> refusal(List<Change> changes) {
        return unfitContent(changes).or(() -> readOnlyFolder(changes)).or(() -> unfitTarget(changes));
    }

    /** Nothing is written that could not be read again. */
    private static Optional<Outcome> unfitContent(List<Change> changes) {
        long total = 0;
        for (Change change : changes) {
            if (change.after().isEmpty()) {
                continue;
            }
            byte[] bytes = change.after().get().bytes();
            total += bytes.length;
            Optional<Problem> problem =
                    TextCheck.problem(change.path().text(), change.path().id(), bytes);
            if (problem.isPresent()) {
                return failed("the new version of " + problem.get().sentence());
            }
        }
        return total <= MOST_EDIT_BYTES
                ? Optional.empty()
                : failed("the edit is larger than 256 MiB; save it in several parts.");
    }

    private static Optional<Outcome> failed(String why) {
        return Optional.of(new Outcome.Failed("Nothing was saved: " + why));
    }

    /** Found now, it harms nothing; found while putting files in place, it would leave some waiting. */
    private Optional<Outcome> readOnlyFolder(List<Change> changes) {
        return changes.stream()
                .map(change -> change.path().below(root).getParent())
                .distinct()
                .filter(folder -> Files.isDirectory(folder) && !disk.isWritable(folder))
                .findFirst()
                .flatMap(folder -> failed("the folder " + folder + " cannot be written to; make it writable."));
    }

    private Optional<Outcome> unfitTarget(List<Change> changes) {
        List<Problem> unreadable = new ArrayList<>();
        List<RecordPath> conflicts = new ArrayList<>();
        for (Change change : changes) {
            Reading target = reader.read(change.path());
            if (target instanceof Reading.Broken broken) {
                unreadable.add(broken.problem());
            } else if (!target.is(change.before())) {
                conflicts.add(change.path());
            }
        }
        if (!unreadable.isEmpty()) {
            return Optional.of(new Outcome.Unreadable(unreadable));
        }
        return conflicts.isEmpty() ? Optional.empty() : Optional.of(new Outcome.Conflict(conflicts, Optional.empty()));
    }
}
