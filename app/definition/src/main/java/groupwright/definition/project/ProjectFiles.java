package groupwright.definition.project;

import groupwright.definition.interchange.Loading;
import groupwright.definition.interchange.RecordWriter;
import groupwright.definition.problem.Problem;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKind;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.storage.Change;
import groupwright.definition.storage.Content;
import groupwright.definition.storage.ProjectFolder;
import groupwright.definition.storage.RecordPath;
import groupwright.definition.storage.Sha256;
import groupwright.definition.storage.Snapshot;
import groupwright.definition.storage.StoredFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A project as it was read: what its files say, and the files themselves, so that saving can keep what it does not know.
 *
 * @param definition what the files say; nothing where project.json cannot be read
 * @param files the files by path, those that could not be read left out
 * @param problems everything that is wrong, sorted by file
 * @param access whether the format allows writing
 */
public record ProjectFiles(
        Optional<Definition> definition,
        SortedMap<RecordPath, Content> files,
        List<Problem> problems,
        Loading.Access access) {
    public ProjectFiles {
        files = Collections.unmodifiableSortedMap(new TreeMap<>(files));
        problems = List.copyOf(problems);
    }

    /** The folders that hold records. */
    public static Set<String> recordFolders() {
        Set<String> folders = new TreeSet<>();
        RecordKinds.all().stream()
                .map(RecordKind::folder)
                .filter(name -> !name.isEmpty())
                .forEach(folders::add);
        return folders;
    }

    /** The folder of a project. */
    public static ProjectFolder folder(Path path) {
        return ProjectFolder.at(path, recordFolders());
    }

    /** Reads a project; writes nothing. */
    public static ProjectFiles read(Path path) {
        return of(folder(path).read());
    }

    /** What a snapshot of the folder says. */
    public static ProjectFiles of(Snapshot snapshot) {
        SortedMap<String, byte[]> bytes = new TreeMap<>();
        SortedMap<RecordPath, Content> files = new TreeMap<>();
        for (StoredFile file : snapshot.files()) {
            bytes.put(file.path().text(), file.content().bytes());
            files.put(file.path(), file.content());
        }
        Loading.Outcome loaded = Loading.load(bytes, lost(snapshot));
        List<Problem> problems = new ArrayList<>(snapshot.problems());
        problems.addAll(loaded.problems());
        problems.sort(java.util.Comparator.comparing(Problem::file)); // stable: one file's problems keep their order
        return new ProjectFiles(loaded.definition(), files, problems, loaded.access());
    }

    private static Set<RecordId> lost(Snapshot snapshot) {
        Set<RecordId> lost = new TreeSet<>();
        for (Problem problem : snapshot.problems()) {
            RecordPath.parse(problem.file())
                    .flatMap(path -> RecordId.parse(path.id()))
                    .ifPresent(lost::add);
        }
        return lost;
    }

    /** One hash over all files and their paths: equal content, equal hash, wherever the folder lies. */
    public Sha256 contentHash() {
        StringBuilder list = new StringBuilder();
        files.forEach((path, content) ->
                list.append(content.sha256()).append("  ").append(path).append('\n'));
        return Sha256.of(list.toString().getBytes(StandardCharsets.UTF_8));
    }

    /**
     * What must be written so that the files say what a definition says; records that are the same objects as now are left
     * alone, and so is a changed record whose file would hold the same bytes.
     */
    public List<Change> changesTo(Definition next) {
        List<Change> changes = new ArrayList<>();
        Definition now = definition.orElseThrow(() -> new IllegalStateException("project.json could not be read"));
        for (Definition.Change change : Definition.changes(now, next)) {
            RecordPath path = pathOf(change.id());
            Optional<Content> base = Optional.ofNullable(files.get(path));
            Optional<Content> after = change.after().map(record -> content(record, base));
            if (!after.equals(base)) {
                changes.add(new Change(path, base.map(Content::sha256), after));
            }
        }
        return changes;
    }

    /**
     * Every file of the project as it would be if it said what a definition says; for saving it somewhere else.
     *
     * @param anew records to be written without regard to what their files held, because that is no record
     */
    public SortedMap<RecordPath, Content> contents(Definition next, Set<RecordId> anew) {
        SortedMap<RecordPath, Content> contents = new TreeMap<>(files);
        Definition now = definition.orElseThrow(() -> new IllegalStateException("project.json could not be read"));
        for (Definition.Change change : Definition.changes(now, next)) {
            if (change.after().isEmpty()) {
                contents.remove(pathOf(change.id()));
            } else if (!anew.contains(change.id())) {
                Optional<Content> base = Optional.ofNullable(files.get(pathOf(change.id())));
                contents.put(pathOf(change.id()), content(change.after().get(), base));
            }
        }
        for (RecordId id : anew) {
            next.get(id).ifPresent(record -> contents.put(pathOf(id), content(record, Optional.empty())));
        }
        return contents;
    }

    /** Where a record lies. */
    public static RecordPath pathOf(RecordId id) {
        return new RecordPath(RecordKinds.of(id).orElseThrow().path(id));
    }

    private static Content content(Entry record, Optional<Content> base) {
        return Content.of(base.map(content -> RecordWriter.write(record, content.bytes()))
                .orElseGet(() -> RecordWriter.write(record)));
    }

    /** The project after these changes were committed. */
    public ProjectFiles after(Definition next, List<Change> committed) {
        SortedMap<RecordPath, Content> copy = new TreeMap<>(files);
        for (Change change : committed) {
            change.after()
                    .ifPresentOrElse(content -> copy.put(change.path(), content), () -> copy.remove(change.path()));
        }
        return new ProjectFiles(Optional.of(next), copy, problems, access);
    }
}
