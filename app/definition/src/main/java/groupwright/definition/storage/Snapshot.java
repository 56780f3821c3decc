package groupwright.definition.storage;

import groupwright.definition.problem.Problem;
import java.util.List;

/**
 * The files of a project at one moment, no edit half in it.
 *
 * @param files all that could be read, sorted by path
 * @param problems all that could not, and names that do not belong, sorted by file
 */
public record Snapshot(List<StoredFile> files, List<Problem> problems) {
    /** The largest file read or written, 4 MiB; a record of an honest project has a few thousand bytes. */
    public static final int MOST_BYTES = 4 << 20;

    public Snapshot {
        files = List.copyOf(files);
        problems = List.copyOf(problems);
    }
}
