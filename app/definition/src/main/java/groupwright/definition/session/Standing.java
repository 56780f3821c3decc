package groupwright.definition.session;

import groupwright.definition.history.Conflict;
import groupwright.definition.history.EditName;
import groupwright.definition.problem.Problem;
import groupwright.definition.project.ProjectFiles;
import groupwright.definition.storage.Sha256;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * How an open project stands beside its answers.
 *
 * @param undo the edit that would be undone
 * @param redo the edit that would be done again
 * @param saving whether the folder says the same
 * @param problems files and folders that cannot be read; records they held before are kept as they were
 * @param conflicts places that wait for a decision: the session holds ours, the folder theirs
 * @param folder where the project lies
 * @param files what the folder holds, as far as the session knows
 */
public record Standing(
        Optional<EditName> undo,
        Optional<EditName> redo,
        Saving saving,
        List<Problem> problems,
        List<Conflict> conflicts,
        Path folder,
        ProjectFiles files) {
    public Standing {
        problems = List.copyOf(problems);
        conflicts = List.copyOf(conflicts);
    }

    /** One hash over all files, see {@link ProjectFiles#contentHash()}; linear in their number. */
    public Sha256 contentHash() {
        return files.contentHash();
    }

    /** Whether there is nothing to tell apart from another for somebody who looks at the project's files. */
    boolean isLike(Standing other) {
        return saving.equals(other.saving) && problems.equals(other.problems) && conflicts.equals(other.conflicts);
    }
}
