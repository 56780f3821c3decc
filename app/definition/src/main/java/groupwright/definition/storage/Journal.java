package groupwright.definition.storage;

import static java.nio.file.LinkOption.NOFOLLOW_LINKS;

import groupwright.definition.problem.Problem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Reads a committed edit that is not wholly in place. */
final class Journal {
    /** How far one file of the edit has come. */
    enum State {
        /** The target is the new version. */
        DONE,
        /** The target is the old version and the journal holds the new one. */
        READY,
        /** The target is neither, or cannot be read. */
        CHANGED,
        /** The target is the old version and the journal does not hold the new one. */
        LOST
    }

    /** What was found in place of a journal. */
    sealed interface Found {
        record None() implements Found {}

        record Edit(Manifest manifest) implements Found {}

        record Damaged(Problem problem) implements Found {}

        record Newer(Problem problem) implements Found {}
    }

    /** Room for a manifest of 400,000 files. */
    private static final int MOST_MANIFEST_BYTES = 64 << 20;

    private static final String PLACE = OwnFolder.NAME + "/" + OwnFolder.JOURNAL;

    private final Path folder;
    private final Disk disk;
    private final RecordReader reader;

    Journal(Path root, Disk disk) {
        this.folder = new OwnFolder(root, disk).journal();
        this.disk = disk;
        this.reader = new RecordReader(root, disk);
    }

    Found find() throws IOException {
        if (reader.folderProblem(OwnFolder.NAME).isPresent() || !Files.isDirectory(folder, NOFOLLOW_LINKS)) {
            return new Found.None();
        }
        try {
            byte[] bytes = disk.read(folder.resolve(Manifest.NAME), MOST_MANIFEST_BYTES);
            return parsed(new String(bytes, StandardCharsets.UTF_8));
        } catch (NoSuchFileException e) {
            return new Found.None();
        }
    }

    private static Found parsed(String text) {
        if (Manifest.isNewer(text)) {
            return new Found.Newer(Problem.ofFile(
                    PLACE, "holds an edit by a newer version of Groupwright", "open the project with that version"));
        }
        return Manifest.parse(text)
                .<Found>map(Found.Edit::new)
                .orElseGet(() -> new Found.Damaged(Problem.ofFile(
                        PLACE, "holds an edit that is damaged", "compare the files in it with those of the project")));
    }

    State state(Manifest.Entry entry) {
        Reading target = reader.read(entry.path());
        if (target.is(entry.after())) {
            return State.DONE;
        }
        if (!target.is(entry.before())) {
            return State.CHANGED;
        }
        return entry.after().isEmpty() || stagedContent(entry).isPresent() ? State.READY : State.LOST;
    }

    /** The files that keep the edit from being put in place. */
    List<RecordPath> obstacles(Manifest manifest) {
        return manifest.entries().stream()
                .filter(entry -> state(entry) == State.CHANGED || state(entry) == State.LOST)
                .map(Manifest.Entry::path)
                .toList();
    }

    Path staged(Manifest.Entry entry) {
        return folder.resolve(entry.path().stagedName());
    }

    /** The new version waiting in the journal, if it is there and sound. */
    Optional<Content> stagedContent(Manifest.Entry entry) {
        Reading staged =
                reader.read(staged(entry), entry.path().text(), entry.path().id());
        return staged instanceof Reading.Whole whole && staged.is(entry.after())
                ? Optional.of(whole.content())
                : Optional.empty();
    }
}
