package groupwright.definition.session;

import groupwright.definition.interchange.Loading;
import groupwright.definition.problem.Problem;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Invalid;
import groupwright.definition.storage.Change;
import groupwright.definition.storage.FolderState;
import groupwright.definition.storage.Opening;
import groupwright.definition.storage.Outcome;
import groupwright.definition.storage.ProjectFolder;
import groupwright.definition.storage.ProjectWriter;
import groupwright.definition.storage.Snapshot;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Opens the folders that sessions live in.
 *
 * @param folders the folder at a path; tests put a disk with faults behind it
 */
record Homes(Function<Path, ProjectFolder> folders) {
    /** An open folder, or why there is none. */
    sealed interface Result {
        record Found(Home home, List<Problem> problems) implements Result {}

        record None(Problem problem) implements Result {}
    }

    Result open(Path path) {
        ProjectFolder folder = folders.apply(path);
        Opening opening = folder.openForWriting();
        if (opening instanceof Opening.Opened opened) {
            return read(path, folder, Optional.of(opened.writer()), Optional.empty(), opened.problems());
        } else if (opening instanceof Opening.InUse inUse) {
            String holder =
                    inUse.process().isPresent() ? "process " + inUse.process().getAsLong() : "another process";
            String why = path + " is being edited by " + holder
                    + "; it is open for reading only; close it there and open it again to edit it.";
            return read(path, folder, Optional.empty(), Optional.of(why), List.of());
        }
        Problem problem = ((Opening.NotOpened) opening).problem();
        Result read = read(path, folder, Optional.empty(), Optional.of(problem.sentence()), List.of());
        return read instanceof Result.Found ? read : new Result.None(problem);
    }

    private static Result read(
            Path path,
            ProjectFolder folder,
            Optional<ProjectWriter> writer,
            Optional<String> readOnly,
            List<Problem> left) {
        Optional<FolderState> seen = folder.state();
        Snapshot snapshot = folder.read();
        Optional<ReadIn> read = ReadIn.of(snapshot, Optional.empty());
        if (read.isEmpty()) {
            writer.ifPresent(Homes::release);
            return new Result.None(reason(path, snapshot));
        }
        boolean newer = read.get().files().access() == Loading.Access.READ_ONLY;
        if (newer) {
            writer.ifPresent(Homes::release);
        }
        List<Problem> problems = new ArrayList<>(left);
        problems.addAll(read.get().files().problems());
        return new Result.Found(
                new Home(
                        path,
                        folder,
                        newer ? Optional.empty() : writer,
                        newer ? Optional.of(Home.newerFormat(read.get())) : readOnly,
                        read.get(),
                        seen),
                problems);
    }

    /** The lock is gone with the process at the latest; nothing was written. */
    private static void release(ProjectWriter writer) {
        try {
            writer.close();
        } catch (IOException e) {
            throw new UncheckedIOException("a lock could not be released", e);
        }
    }

    private static Problem reason(Path path, Snapshot snapshot) {
        return snapshot.problems().stream()
                .filter(problem ->
                        problem.file().equals("project.json") || problem.file().equals(path.toString()))
                .findFirst()
                .orElseGet(() -> Problem.ofFile(path.toString(), "cannot be opened", "look at its project.json"));
    }

    /**
     * Saves a whole project in another folder, new or empty, with all that the old one holds beside the records.
     *
     * @throws Invalid if that was not possible; then the old home stays
     */
    Home elsewhere(Home old, Definition definition, Path path) {
        ProjectFolder folder = folders.apply(path);
        Opening opening = folder.startNew();
        if (opening instanceof Opening.NotOpened refused) {
            throw new Invalid("", refused.problem().sentence(), "name another folder");
        } else if (opening instanceof Opening.InUse inUse) {
            throw new Invalid("", inUse.sentence(), "name another folder");
        }
        ProjectWriter writer = ((Opening.Opened) opening).writer();
        List<Change> changes = new ArrayList<>();
        old.found()
                .files()
                .contents(definition, old.broken())
                .forEach((file, content) -> changes.add(Change.create(file, content)));
        Outcome outcome = writer.commit(changes);
        if (!(outcome instanceof Outcome.Committed committed)) {
            release(writer);
            throw new Invalid("", outcome.sentence(), "name another folder");
        }
        List<Problem> left =
                old.folder().copyOthersTo(path, old.found().files().files().keySet());
        Optional<FolderState> seen = folder.state();
        Optional<ReadIn> read = ReadIn.of(folder.read(), Optional.of(definition));
        if (read.isEmpty()) {
            release(writer);
            throw new Invalid("", path + " cannot be read after saving", "look at the disk and name another folder");
        }
        Home home = new Home(path, folder, Optional.of(writer), Optional.empty(), read.get(), seen);
        home.caution(committed.warning().or(() -> left.stream().findFirst().map(Problem::sentence)));
        return home;
    }
}
