package groupwright.definition.session;

import groupwright.definition.interchange.Loading;
import groupwright.definition.problem.Problem;
import groupwright.definition.project.ProjectFiles;
import groupwright.definition.record.Definition;
import groupwright.definition.record.RecordId;
import groupwright.definition.storage.Change;
import groupwright.definition.storage.FolderState;
import groupwright.definition.storage.Opening;
import groupwright.definition.storage.Outcome;
import groupwright.definition.storage.ProjectFolder;
import groupwright.definition.storage.ProjectWriter;
import groupwright.definition.storage.RecordPath;
import groupwright.definition.storage.Sha256;
import groupwright.definition.storage.Snapshot;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The folder a session lives in: what it is known to hold, and the way there and back. */
final class Home implements AutoCloseable {
    private static final int ATTEMPTS = 5; // at saving while somebody else keeps writing

    private final Path path;
    private final ProjectFolder folder;
    private Optional<ProjectWriter> writer;
    private Optional<String> readOnly;
    private ReadIn found;
    private Optional<FolderState> seen; // taken before the files were read, so that a change meanwhile is found
    private Optional<String> away = Optional.empty(); // why the folder can no longer be read
    private Optional<String> trouble = Optional.empty(); // why the last saving came to nothing
    private Optional<String> caution = Optional.empty(); // what there is to say although it was saved

    /** @param readOnly why the project cannot be edited, if it cannot */
    Home(
            Path path,
            ProjectFolder folder,
            Optional<ProjectWriter> writer,
            Optional<String> readOnly,
            ReadIn found,
            Optional<FolderState> seen) {
        this.path = path;
        this.folder = folder;
        this.writer = writer;
        this.readOnly = readOnly;
        this.found = found;
        this.seen = seen;
    }

    Path path() {
        return path;
    }

    ProjectFolder folder() {
        return folder;
    }

    ReadIn found() {
        return found;
    }

    Optional<String> readOnly() {
        return readOnly;
    }

    void caution(Optional<String> sentence) {
        caution = sentence;
    }

    /** Single files and the folder itself. */
    List<Problem> problems() {
        List<Problem> problems = new ArrayList<>();
        away.ifPresent(wrong -> problems.add(Problem.ofFile(path.toString(), wrong, "bring it back")));
        problems.addAll(found.problems());
        return problems;
    }

    Saving saving(Sides sides) {
        if (readOnly.isPresent()) {
            return new Saving.ReadOnly(readOnly.get());
        }
        return away.map(wrong -> path + " " + wrong
                        + "; everything is kept in memory; bring the project back or save it" + " elsewhere.")
                .or(() -> trouble)
                .or(() -> withheld(sides))
                .or(() -> undecided(sides))
                .<Saving>map(Saving.Unsaved::new)
                .orElseGet(() -> new Saving.Saved(caution));
    }

    private Optional<String> withheld(Sides sides) {
        return found.broken().keySet().stream()
                .filter(id -> !found.definition().get(id).equals(sides.wanted().get(id)))
                .findFirst()
                .map(id -> id + " is kept in memory and not saved, because its file cannot be read: "
                        + found.broken().get(id).sentence());
    }

    private static Optional<String> undecided(Sides sides) {
        int more = sides.open().size() - 1;
        return sides.open().stream()
                .findFirst()
                .map(conflict -> conflict.address()
                        + (more > 0 ? " and " + more + " more differ" : " differs")
                        + " from what somebody else wrote and is kept in memory; the rest is saved; decide which is to"
                        + " stand.");
    }

    /** Saves what the folder is to say; joins what others changed since it was read. */
    Sides saved(Sides sides) {
        Sides now = sides;
        for (int attempt = 0; readOnly.isEmpty() && attempt < ATTEMPTS; attempt++) {
            Definition target = found.writable(now.wanted());
            List<Change> changes = found.files().changesTo(target);
            if (changes.isEmpty()) {
                written(Optional.empty(), target, changes);
                return now;
            } else if (!holdsLock() && !hasReopened()) {
                return now;
            }
            Outcome outcome = writer.orElseThrow().commit(changes);
            if (outcome instanceof Outcome.Committed committed) {
                away = Optional.empty();
                written(committed.warning(), target, changes);
                return now;
            } else if (outcome instanceof Outcome.Failed failed && holdsLock()) {
                return unsaved(failed.sentence(), now);
            }
            Optional<ReadIn> read = read();
            if (read.isEmpty()) {
                return now; // away tells why
            }
            now = joined(now, read.get());
        }
        return readOnly.isPresent() ? now : unsaved(path + " keeps changing while it is being saved; try again.", now);
    }

    private void written(Optional<String> warning, Definition target, List<Change> changes) {
        found = found.with(found.files().after(target, changes));
        trouble = Optional.empty();
        if (!changes.isEmpty()) {
            caution = warning;
        }
    }

    private Sides unsaved(String sentence, Sides sides) {
        String bare = sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
        trouble = Optional.of(bare + "; the edit is kept in memory.");
        return sides;
    }

    private boolean holdsLock() {
        return writer.filter(ProjectWriter::isStillOurs).isPresent();
    }

    /** The lock or the whole folder was taken away: it may be back. What it holds now is compared at saving. */
    private boolean hasReopened() {
        release();
        Opening opening = folder.openForWriting();
        if (opening instanceof Opening.Opened opened) {
            writer = Optional.of(opened.writer());
            return true;
        }
        String why = opening instanceof Opening.InUse inUse
                ? inUse.sentence()
                : ((Opening.NotOpened) opening).problem().sentence();
        trouble = Optional.of("Nothing was saved: " + why.substring(0, why.length() - 1)
                + "; everything is kept in memory; bring the project back or save it elsewhere.");
        return false;
    }

    private void release() {
        Optional<ProjectWriter> old = writer;
        writer = Optional.empty();
        try {
            if (old.isPresent()) {
                old.get().close();
            }
        } catch (IOException e) {
            caution = Optional.of("The lock of " + path + " could not be released: " + e.getMessage() + ".");
        }
    }

    /** Looks whether files changed and reads and joins them if so; the same sides where nothing did. */
    Sides looked(Sides sides) {
        Optional<FolderState> now = folder.state();
        if (away.isEmpty() && now.isPresent() && seen.isPresent() && !differs(now.get())) {
            seen = now;
            return sides;
        }
        return read().map(read -> joined(sides, read)).orElse(sides);
    }

    private boolean differs(FolderState now) {
        for (String name : now.mayDifferFrom(seen.orElseThrow())) {
            Optional<RecordPath> record = RecordPath.parse(name);
            boolean same = record.isPresent() ? folder.holds(record.get(), version(record.get())) : harmless(name);
            if (!same) {
                return true;
            }
        }
        return false;
    }

    /** A record folder that came with our own first record; any other name may be a file nearly called like one of ours. */
    private static boolean harmless(String name) {
        return name.startsWith(".") || ProjectFiles.recordFolders().contains(name);
    }

    private Optional<Sha256> version(RecordPath path) {
        return Optional.ofNullable(found.files().files().get(path)).map(content -> content.sha256());
    }

    private Optional<ReadIn> read() {
        Optional<FolderState> state = folder.state();
        Snapshot snapshot = folder.read();
        Optional<Problem> whole = snapshot.problems().stream()
                .filter(problem -> problem.file().equals(path.toString()))
                .findFirst();
        Optional<ReadIn> read = whole.isPresent()
                ? Optional.empty()
                : ReadIn.of(snapshot, found.files().definition());
        away = whole.map(Problem::wrong)
                .or(() -> read.isPresent() ? Optional.empty() : Optional.of(projectProblem(snapshot)));
        if (read.isPresent()) {
            seen = state;
        }
        return read;
    }

    private static String projectProblem(Snapshot snapshot) {
        return "has a project.json that cannot be read"
                + snapshot.problems().stream()
                        .filter(problem -> problem.file().equals(RecordPath.PROJECT.text()))
                        .findFirst()
                        .map(problem -> " (" + problem.wrong() + ")")
                        .orElse("");
    }

    private Sides joined(Sides sides, ReadIn read) {
        Sides joined = sides.joined(found.definition(), read.definition());
        found = read;
        if (readOnly.isEmpty() && read.files().access() == Loading.Access.READ_ONLY) {
            readOnly = Optional.of(newerFormat(read));
            release();
        }
        return joined;
    }

    /** Why a project of a newer format is open for reading only. */
    static String newerFormat(ReadIn read) {
        return read.problems().stream()
                .filter(problem -> problem.field().equals("format"))
                .findFirst()
                .map(Problem::sentence)
                .orElse("The project was written by a newer version of the program; it is open for reading only.");
    }

    /** Records whose files cannot be read. */
    Set<RecordId> broken() {
        return found.broken().keySet();
    }

    @Override
    public void close() throws IOException {
        Optional<ProjectWriter> old = writer;
        writer = Optional.empty();
        if (old.isPresent()) {
            old.get().close();
        }
    }
}
