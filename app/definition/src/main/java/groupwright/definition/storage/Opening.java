package groupwright.definition.storage;

import groupwright.definition.problem.Problem;
import java.util.List;
import java.util.Objects;
import java.util.OptionalLong;

/** What became of opening a project for writing. */
public sealed interface Opening {
    /**
     * The project is ours to write until the writer is closed.
     *
     * @param writer the open project
     * @param problems edits found interrupted that could not be finished
     */
    record Opened(ProjectWriter writer, List<Problem> problems) implements Opening {
        public Opened {
            Objects.requireNonNull(writer, "writer");
            problems = List.copyOf(problems);
        }
    }

    /**
     * Somebody else is writing; reading works all the same.
     *
     * @param folder the project folder
     * @param process number of the process that writes, if it could be read
     */
    record InUse(String folder, OptionalLong process) implements Opening {
        /** What happened and what to do, in one sentence for the user. */
        public String sentence() {
            String holder = process.isPresent() ? "process " + process.getAsLong() : "another process";
            return folder + " is being edited by " + holder + "; close it there, or open it for reading only.";
        }
    }

    /** The project cannot be written; the problem says why. */
    record NotOpened(Problem problem) implements Opening {}
}
