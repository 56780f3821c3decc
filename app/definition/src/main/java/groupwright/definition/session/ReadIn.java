package groupwright.definition.session;

import groupwright.definition.interchange.Loading;
import groupwright.definition.problem.Problem;
import groupwright.definition.project.ProjectFiles;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKind;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.storage.RecordPath;
import groupwright.definition.storage.Snapshot;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A folder as it was read, laid over what was known of it: a record whose file can no longer be read stays as it was, and a
 * record that is still the same stays the same object, so that only what differs is compared and asked again.
 *
 * @param files the files, with the definition so completed
 * @param broken records whose files are there but cannot be read, with what is wrong
 * @param problems what is wrong with single files and folders
 */
record ReadIn(ProjectFiles files, SortedMap<RecordId, Problem> broken, List<Problem> problems) {
    ReadIn {
        problems = List.copyOf(problems);
    }

    /**
     * Linear in the size of the project.
     *
     * @param known what the folder said before
     * @return nothing where the snapshot holds no project
     */
    static Optional<ReadIn> of(Snapshot snapshot, Optional<Definition> known) {
        ProjectFiles read = ProjectFiles.of(snapshot);
        return read.definition().map(said -> of(read, said, known));
    }

    private static ReadIn of(ProjectFiles read, Definition said, Optional<Definition> known) {
        SortedMap<RecordId, Problem> broken = unreadable(read, said);
        List<Problem> problems = new ArrayList<>(read.problems());
        problems.removeAll(Loading.consistency(said, Set.copyOf(broken.keySet())));
        known.ifPresent(before -> broken.putAll(inUnreadableFolders(read, before)));

        Definition completed =
                known.map(before -> completed(said, before, broken.keySet())).orElse(said);
        return new ReadIn(
                new ProjectFiles(Optional.of(completed), read.files(), read.problems(), read.access()),
                broken,
                problems);
    }

    private static SortedMap<RecordId, Problem> unreadable(ProjectFiles read, Definition said) {
        SortedMap<RecordId, Problem> broken = new TreeMap<>();
        for (Problem problem : read.problems()) {
            RecordPath.parse(problem.file())
                    .flatMap(path -> RecordId.parse(path.id()))
                    .filter(id -> said.get(id).isEmpty())
                    .ifPresent(id -> broken.putIfAbsent(id, problem));
        }
        return broken;
    }

    /** When a whole folder cannot be read, its records are not gone. */
    private static SortedMap<RecordId, Problem> inUnreadableFolders(ProjectFiles read, Definition before) {
        SortedMap<RecordId, Problem> broken = new TreeMap<>();
        for (Problem problem : read.problems()) {
            for (RecordKind<?> kind : RecordKinds.all()) {
                if (!kind.folder().isEmpty() && problem.file().equals(kind.folder())) {
                    before.all(kind).forEach(record -> broken.put(record.id(), problem));
                }
            }
        }
        return broken;
    }

    private static Definition completed(Definition said, Definition before, Set<RecordId> broken) {
        Definition completed = said;
        boolean differs = false;
        for (Definition.Change change : Definition.changes(before, said)) {
            boolean kept = change.before().isPresent()
                    && (broken.contains(change.id()) || change.before().equals(change.after()));
            differs |= !kept;
            completed = kept ? completed.with(change.before().orElseThrow()) : completed;
        }
        return differs ? completed : before;
    }

    Definition definition() {
        return files.definition().orElseThrow();
    }

    /** The same after the folder was written. */
    ReadIn with(ProjectFiles written) {
        return new ReadIn(written, broken, problems);
    }

    /** What may be written of a definition: files that cannot be read are never overwritten. */
    Definition writable(Definition wanted) {
        Definition writable = wanted;
        for (RecordId id : broken.keySet()) {
            Optional<Entry> kept = definition().get(id);
            if (!kept.equals(writable.get(id))) {
                writable = kept.isPresent() ? writable.with(kept.get()) : writable.without(id);
            }
        }
        return writable;
    }
}
