package groupwright.definition.storage;

import groupwright.definition.problem.Problem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Reads a whole project without writing, a committed edit laid over files that still wait for it. */
final class ProjectReading {
    private static final int ATTEMPTS = 20;

    private final Place place;
    private final Path root;
    private final Disk disk;
    private final RecordReader reader;

    /** What was read so far; each is of the version in the last listing. */
    private final Map<RecordPath, Reading> readings = new TreeMap<>();

    ProjectReading(Place place) {
        this.place = place;
        this.root = place.root();
        this.disk = place.disk();
        this.reader = new RecordReader(root, disk);
    }

    /** If something changed meanwhile, as a writer may be at work, reads again what changed. */
    Snapshot read() {
        try {
            Listing listing = listing();
            for (int attempt = 1; ; attempt++) {
                Snapshot snapshot = read(listing);
                Listing after = listing();
                if (after.equals(listing)) {
                    return snapshot;
                }
                if (attempt == ATTEMPTS) {
                    return with(problem("keeps changing while it is being read", "read it again later"), snapshot);
                }
                forgetChanged(listing, after);
                listing = after;
            }
        } catch (IOException e) {
            Problem problem = problem("cannot be read (" + DiskTrouble.detail(e) + ")", "look at its access rights");
            return new Snapshot(List.of(), List.of(problem));
        }
    }

    private Listing listing() throws IOException {
        return Listing.of(root, place.recordFolders(), disk);
    }

    private void forgetChanged(Listing before, Listing after) {
        readings.keySet().removeIf(path -> {
            Optional<Listing.Stamp> stamp = before.stamp(path);
            return stamp.isEmpty() || !stamp.equals(after.stamp(path));
        });
    }

    private Problem problem(String wrong, String remedy) {
        return Problem.ofFile(place.name(), wrong, remedy);
    }

    private static Snapshot with(Problem problem, Snapshot snapshot) {
        List<Problem> problems = new ArrayList<>(List.of(problem));
        problems.addAll(snapshot.problems());
        return new Snapshot(snapshot.files(), problems);
    }

    private Snapshot read(Listing listing) throws IOException {
        List<Problem> problems = new ArrayList<>(listing.problems());
        problems.addAll(NameCheck.problems(listing, place.recordFolders()));
        SortedMap<RecordPath, Content> files = new TreeMap<>();
        for (String name : listing.entries().keySet()) {
            Optional<RecordPath> path = RecordPath.parse(name);
            if (path.isPresent()) {
                addFile(path.get(), files, problems);
            }
        }
        layJournalOver(files, problems);
        addSetAside(problems);
        addProject(listing, files, problems);
        problems.sort(Comparator.comparing(Problem::file)); // stable: problems of one file keep their order
        List<StoredFile> stored = new ArrayList<>(files.size());
        files.forEach((path, content) -> stored.add(new StoredFile(path, content)));
        return new Snapshot(stored, problems);
    }

    private void addFile(RecordPath path, SortedMap<RecordPath, Content> files, List<Problem> problems) {
        Reading reading = readings.computeIfAbsent(path, key -> reader.read(key.below(root), key.text(), key.id()));
        if (reading instanceof Reading.Whole whole) {
            files.put(path, whole.content());
        } else if (reading instanceof Reading.Broken broken) {
            problems.add(broken.problem());
        }
    }

    private void layJournalOver(SortedMap<RecordPath, Content> files, List<Problem> problems) throws IOException {
        Journal journal = new Journal(root, disk);
        Journal.Found found = journal.find();
        if (found instanceof Journal.Found.Edit edit) {
            List<RecordPath> obstacles = journal.obstacles(edit.manifest());
            if (obstacles.isEmpty()) {
                layOver(journal, edit.manifest(), files);
            } else {
                String place = OwnFolder.NAME + "/" + OwnFolder.JOURNAL;
                problems.add(new Finishing.Result.SetAside(obstacles, place).problem());
            }
        } else if (found instanceof Journal.Found.Damaged damaged) {
            problems.add(damaged.problem());
        } else if (found instanceof Journal.Found.Newer newer) {
            problems.add(newer.problem());
        }
    }

    private static void layOver(Journal journal, Manifest manifest, SortedMap<RecordPath, Content> files) {
        for (Manifest.Entry entry : manifest.entries()) {
            if (entry.after().isEmpty()) {
                files.remove(entry.path());
            } else {
                journal.stagedContent(entry).ifPresent(content -> files.put(entry.path(), content));
            }
        }
    }

    private void addSetAside(List<Problem> problems) throws IOException {
        for (String name : new OwnFolder(root, disk).setAside()) {
            problems.add(Problem.ofFile(
                    name,
                    "keeps an edit that was interrupted and could not be finished",
                    "take from it what you need, then delete it"));
        }
    }

    private void addProject(Listing listing, SortedMap<RecordPath, Content> files, List<Problem> problems) {
        if (!listing.top().contains(RecordPath.PROJECT.text()) && !files.containsKey(RecordPath.PROJECT)) {
            List<String> names =
                    listing.top().stream().filter(name -> !name.startsWith(".")).toList();
            problems.add(NoProject.problem(place.name(), names));
        }
    }
}
