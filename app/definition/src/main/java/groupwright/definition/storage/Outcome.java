package groupwright.definition.storage;

import groupwright.definition.problem.Problem;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What became of an edit. Only {@link Committed} changed the project. */
public sealed interface Outcome {
    /** What happened and what to do, in one sentence for the user. */
    String sentence();

    /**
     * The edit is saved and survives a crash.
     *
     * @param hashes the new hash of each file written
     * @param warning normally empty; else a sentence telling that files still wait in the journal to be put in place
     *     (reading shows the edit whole all the same; the next edit or opening tries again), or that the disk did not
     *     confirm the saving
     */
    record Committed(SortedMap<RecordPath, Sha256> hashes, Optional<String> warning) implements Outcome {
        public Committed {
            hashes = Collections.unmodifiableSortedMap(new TreeMap<>(hashes));
        }

        @Override
        public String sentence() {
            return warning.orElse("Saved.");
        }
    }

    /**
     * Files are not the versions the edit was made from: somebody else has changed, made or removed them.
     *
     * @param paths the files concerned, sorted
     * @param keptAs normally empty; if the files were changed in the moment of saving, the folder below the project folder
     *     that keeps what of the edit could not be put in place. Files put in place before stay
     */
    record Conflict(List<RecordPath> paths, Optional<String> keptAs) implements Outcome {
        public Conflict {
            paths = paths.stream().sorted().toList();
        }

        @Override
        public String sentence() {
            String names = paths.stream().map(RecordPath::text).collect(Collectors.joining(", "));
            return "The edit was not saved because somebody else changed " + names
                    + keptAs.map(folder -> "; it is kept in " + folder).orElse("") + "; reload, look and save again.";
        }
    }

    /**
     * Files stand in the way that cannot be read; such files are never overwritten.
     *
     * @param problems what is wrong with each
     */
    record Unreadable(List<Problem> problems) implements Outcome {
        public Unreadable {
            problems = List.copyOf(problems);
        }

        @Override
        public String sentence() {
            return "Nothing was saved: " + problems.get(0).sentence();
        }
    }

    /** The disk or the content did not allow it; the files are as before. */
    record Failed(String sentence) implements Outcome {}
}
