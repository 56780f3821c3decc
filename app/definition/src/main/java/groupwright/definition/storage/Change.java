package groupwright.definition.storage;

import java.util.Objects;
import java.util.Optional;

/**
 * What an edit does to one file.
 *
 * @param path the file
 * @param before hash of the version the edit was made from; empty if there must be no file yet
 * @param after the new version; empty if the file goes
 */
public record Change(RecordPath path, Optional<Sha256> before, Optional<Content> after) {
    public Change {
        Objects.requireNonNull(path, "path");
        if (before.isEmpty() && after.isEmpty()) {
            throw new IllegalArgumentException("a change of " + path + " needs a version before or after");
        }
    }

    /** A new file; never overwrites one. */
    public static Change create(RecordPath path, Content after) {
        return new Change(path, Optional.empty(), Optional.of(after));
    }

    /** A new version of a file. */
    public static Change replace(RecordPath path, Sha256 before, Content after) {
        return new Change(path, Optional.of(before), Optional.of(after));
    }

    /** The end of a file, as when its creation is undone. */
    public static Change remove(RecordPath path, Sha256 before) {
        return new Change(path, Optional.of(before), Optional.empty());
    }

    Optional<Sha256> afterHash() {
        return after.map(Content::sha256);
    }

    boolean changesNothing() {
        return before.equals(afterHash());
    }
}
