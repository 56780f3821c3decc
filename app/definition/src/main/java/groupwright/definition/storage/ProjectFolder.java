package groupwright.definition.storage;

import groupwright.definition.problem.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A folder that holds a project, or is to hold one. */
public final class ProjectFolder {
    private final Path folder;
    private final Set<String> recordFolders;
    private final Disk disk;

    ProjectFolder(Path folder, Set<String> recordFolders, Disk disk) {
        this.folder = folder;
        this.recordFolders = Set.copyOf(recordFolders);
        this.disk = disk;
        recordFolders.forEach(ProjectFolder::requireFolderName);
    }

    private static void requireFolderName(String name) {
        if (!RecordPath.isFolderName(name)) {
            throw new IllegalArgumentException("record folders are lower-case words joined by -, was " + name);
        }
    }

    /**
     * The folder, which need not exist.
     *
     * @param recordFolders names of the folders that hold records, such as {@code requirements}; all others are left alone
     * @throws IllegalArgumentException if such a name is not of lower-case words joined by {@code -}
     */
    public static ProjectFolder at(Path folder, Set<String> recordFolders) {
        return new ProjectFolder(folder, recordFolders, new RealDisk());
    }

    /**
     * Reads all files, without lock and without writing anything. A committed edit whose writer was stopped is shown whole.
     * Files that change meanwhile are read again. Linear in the size of the files, which it holds in memory.
     */
    public Snapshot read() {
        try {
            Optional<Problem> problem = folderProblem();
            return problem.isPresent()
                    ? new Snapshot(List.of(), List.of(problem.get()))
                    : new ProjectReading(place()).read();
        } catch (IOException e) {
            return new Snapshot(List.of(), List.of(trouble(e)));
        }
    }

    /**
     * What tells its files' versions apart, without reading any of them; nothing where the folder cannot be looked at. Costs
     * one listing of each record folder and one look at each file's size and time.
     */
    public Optional<FolderState> state() {
        try {
            long now = System.currentTimeMillis();
            Place place = place();
            return Optional.of(new FolderState(Listing.of(place.root(), recordFolders, disk), now));
        } catch (IOException e) {
            return Optional.empty(); // reading the project will say why
        }
    }

    /** Whether a file is this version; an empty version means that there is to be no file. Reads the file. */
    public boolean holds(RecordPath path, Optional<Sha256> version) {
        try {
            return new RecordReader(folder.toRealPath(), disk).read(path).is(version);
        } catch (IOException e) {
            return false; // the folder itself is gone
        }
    }

    /**
     * Copies what is in this folder and not yet in another: pictures, templates, files that are no records. Links and names
     * that start with a point are left.
     *
     * @param records files that are not to be copied, because they are known and were saved or taken out
     * @return what could not be copied
     */
    public List<Problem> copyOthersTo(Path other, Set<RecordPath> records) {
        return OtherFiles.copy(folder, other, records);
    }

    /** Opens a project for writing and finishes an edit whose writer was stopped. The caller closes the writer. */
    public Opening openForWriting() {
        return opening(this::noProject);
    }

    /** Makes the folder if need be and opens it for writing; it must be empty, save names that start with a point. */
    public Opening startNew() {
        try {
            if (!Files.exists(folder)) {
                disk.createDirectory(folder);
                disk.forceDirectory(folder.toRealPath().getParent());
            }
            return opening(this::notEmpty);
        } catch (IOException e) {
            return new Opening.NotOpened(trouble(e));
        }
    }

    private Opening opening(Check check) {
        try {
            Optional<Problem> problem = folderProblem();
            if (problem.isEmpty()) {
                problem = check.problem(names());
            }
            return problem.isPresent() ? new Opening.NotOpened(problem.get()) : locked(place());
        } catch (IOException e) {
            return new Opening.NotOpened(trouble(e));
        }
    }

    private interface Check {
        Optional<Problem> problem(List<String> names);
    }

    private Opening locked(Place place) throws IOException {
        OwnFolder own = new OwnFolder(place.root(), disk);
        Optional<Problem> unsound = new RecordReader(place.root(), disk).folderProblem(OwnFolder.NAME);
        if (unsound.isPresent()) {
            return new Opening.NotOpened(unsound.get());
        }
        own.make();
        Optional<LockFile> lock = disk.lock(own.lock());
        return lock.isPresent()
                ? recovered(place, lock.get())
                : new Opening.InUse(folder.toString(), LockFile.holder(own.lock(), disk));
    }

    private Opening recovered(Place place, LockFile lock) throws IOException {
        boolean opened = false;
        try {
            if (new Journal(place.root(), disk).find() instanceof Journal.Found.Newer newer) {
                return new Opening.NotOpened(newer.problem());
            }
            Optional<Problem> left = new Recovery(place.root(), disk).recover();
            opened = true;
            return new Opening.Opened(
                    new ProjectWriter(place, lock), left.stream().toList());
        } finally {
            if (!opened) {
                lock.close();
            }
        }
    }

    private Place place() throws IOException {
        return new Place(folder.toRealPath(), folder.toString(), recordFolders, disk);
    }

    /**
     * Names in the folder; those that start with a point (version control, ours) do not count. A first edit may still wait
     * in the journal: then the project is there although its file is not.
     */
    private List<String> names() throws IOException {
        if (!(new Journal(folder.toRealPath(), disk).find() instanceof Journal.Found.None)) {
            return List.of(RecordPath.PROJECT.text());
        }
        return disk.list(folder).stream()
                .map(path -> path.getFileName().toString())
                .filter(name -> !name.startsWith("."))
                .toList();
    }

    private Optional<Problem> folderProblem() {
        if (!Files.exists(folder)) {
            return problem("does not exist", "look at the name or " + NoProject.START_ONE);
        }
        return Files.isDirectory(folder) ? Optional.empty() : problem("is no folder", "name the folder of the project");
    }

    private Optional<Problem> noProject(List<String> names) {
        return names.contains(RecordPath.PROJECT.text())
                ? Optional.empty()
                : Optional.of(NoProject.problem(folder.toString(), names));
    }

    private Optional<Problem> notEmpty(List<String> names) {
        return names.isEmpty() ? Optional.empty() : problem("is not empty", "name a new folder or an empty one");
    }

    private Optional<Problem> problem(String wrong, String remedy) {
        return Optional.of(Problem.ofFile(folder.toString(), wrong, remedy));
    }

    private Problem trouble(IOException e) {
        DiskTrouble trouble = DiskTrouble.of(e, folder);
        return Problem.ofFile(folder.toString(), "cannot be opened: " + trouble.wrong(), trouble.remedy());
    }
}
