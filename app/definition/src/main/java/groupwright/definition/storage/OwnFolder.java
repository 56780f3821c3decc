package groupwright.definition.storage;

import static java.nio.file.LinkOption.NOFOLLOW_LINKS;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The folder {@code .groupwright} of a project: names and housekeeping. */
final class OwnFolder {
    static final String NAME = ".groupwright";
    static final String JOURNAL = "journal";
    private static final String CONFLICT = "conflict-";

    private final Path root;
    private final Disk disk;

    OwnFolder(Path root, Disk disk) {
        this.root = root;
        this.disk = disk;
    }

    Path path() {
        return root.resolve(NAME);
    }

    Path lock() {
        return path().resolve("lock");
    }

    Path saving() {
        return path().resolve("saving");
    }

    Path staging() {
        return path().resolve("staging");
    }

    Path journal() {
        return path().resolve(JOURNAL);
    }

    /** Makes the folder where there is none. Forced even where there is one: its maker may have died before doing so. */
    void make() throws IOException {
        if (!Files.exists(path(), NOFOLLOW_LINKS)) {
            disk.createDirectory(path());
        }
        disk.forceDirectory(root);
    }

    /** Deletes what saving left behind when it was stopped before the edit was committed, or after it was in place. */
    void clear() throws IOException {
        if (Files.exists(saving(), NOFOLLOW_LINKS)) {
            disk.delete(saving());
        }
        deleteFolder(staging());
        if (!Files.exists(journal().resolve(Manifest.NAME), NOFOLLOW_LINKS)) {
            deleteFolder(journal());
        }
    }

    private void deleteFolder(Path folder) throws IOException {
        if (Files.isDirectory(folder, NOFOLLOW_LINKS)) {
            for (Path file : disk.list(folder)) {
                disk.delete(file);
            }
        }
        if (Files.exists(folder, NOFOLLOW_LINKS)) {
            disk.delete(folder);
        }
    }

    /** Ends a journal whose files are in place and forced, or none of whose files are in place. */
    void removeJournal() throws IOException {
        disk.delete(journal().resolve(Manifest.NAME));
        disk.forceDirectory(journal()); // else the journal could come back and meet files of later edits
        deleteFolder(journal());
    }

    /** Keeps the journal out of the way for the user; returns where, seen from the project folder. */
    String setJournalAside() throws IOException {
        int number = 1;
        while (Files.exists(conflict(number), NOFOLLOW_LINKS)) {
            number++;
        }
        disk.replace(journal(), conflict(number));
        disk.forceDirectory(path());
        return NAME + "/" + conflict(number).getFileName();
    }

    /** The edits kept aside, seen from the project folder, sorted. */
    List<String> setAside() throws IOException {
        if (!Files.isDirectory(path(), NOFOLLOW_LINKS)) {
            return List.of();
        }
        return disk.list(path()).stream()
                .map(path -> path.getFileName().toString())
                .filter(name -> name.startsWith(CONFLICT))
                .map(name -> NAME + "/" + name)
                .sorted()
                .toList();
    }

    private Path conflict(int number) {
        return path().resolve(CONFLICT + "%03d".formatted(number));
    }
}
