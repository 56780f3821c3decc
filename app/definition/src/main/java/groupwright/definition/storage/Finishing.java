package groupwright.definition.storage;

import static java.nio.file.LinkOption.NOFOLLOW_LINKS;

import groupwright.definition.problem.Problem;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Puts the files of a committed edit in place; stopped anywhere, it can be done again. */
final class Finishing {
    /** What became of a committed edit. */
    sealed interface Result {
        record InPlace() implements Result {}

        record SetAside(List<RecordPath> obstacles, String keptAs) implements Result {
            Problem problem() {
                String names = obstacles.stream().map(RecordPath::text).collect(Collectors.joining(", "));
                return Problem.ofFile(
                        keptAs,
                        "holds an edit that was interrupted and cannot be finished because somebody else changed "
                                + names,
                        "take from it what you need, then delete it");
            }
        }
    }

    private final Path root;
    private final Disk disk;
    private final OwnFolder own;
    private final Journal journal;

    Finishing(Path root, Disk disk) {
        this.root = root;
        this.disk = disk;
        this.own = new OwnFolder(root, disk);
        this.journal = new Journal(root, disk);
    }

    /** On a conflict nothing more is put in place; files that were in place before stay as they are. */
    Result finish(Manifest manifest) throws IOException {
        List<RecordPath> obstacles = journal.obstacles(manifest);
        if (!obstacles.isEmpty()) {
            return new Result.SetAside(obstacles, own.setJournalAside());
        }
        makeFolders(manifest);
        for (Manifest.Entry entry : manifest.entries()) {
            if (!isPutInPlace(entry)) {
                return new Result.SetAside(List.of(entry.path()), own.setJournalAside());
            }
        }
        forceFolders(manifest);
        own.removeJournal();
        return new Result.InPlace();
    }

    /** Forced before anything is moved there: a power cut could take a new folder away with what was moved. */
    private void makeFolders(Manifest manifest) throws IOException {
        for (Manifest.Entry entry : manifest.entries()) {
            if (entry.after().isPresent()) {
                new RecordFolders(root, disk).make(entry.path());
            }
        }
        disk.forceDirectory(root);
    }

    /** False if the target was changed since the obstacles were looked for. */
    private boolean isPutInPlace(Manifest.Entry entry) throws IOException {
        Journal.State state = journal.state(entry);
        if (state != Journal.State.READY) {
            return state == Journal.State.DONE;
        }
        try {
            putInPlace(entry);
            return true;
        } catch (FileAlreadyExistsException e) {
            return false;
        }
    }

    private void putInPlace(Manifest.Entry entry) throws IOException {
        Path target = entry.path().below(root);
        if (entry.after().isEmpty()) {
            disk.delete(target);
        } else if (entry.before().isEmpty()) {
            disk.moveToNew(journal.staged(entry), target);
        } else {
            disk.replace(journal.staged(entry), target);
        }
    }

    /** Also folders of files found in place: who put them there may have died before forcing them. */
    private void forceFolders(Manifest manifest) throws IOException {
        Set<Path> folders = new TreeSet<>();
        manifest.entries().forEach(entry -> folders.add(entry.path().below(root).getParent()));
        for (Path folder : folders) {
            if (Files.isDirectory(folder, NOFOLLOW_LINKS)) {
                disk.forceDirectory(folder);
            }
        }
    }
}
