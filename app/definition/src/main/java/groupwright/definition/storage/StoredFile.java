package groupwright.definition.storage;

import java.util.Objects;

/**
 * One file of the project as read.
 *
 * @param path where it lies
 * @param content its bytes, sound UTF-8 without byte order mark, at least one and at most {@link Snapshot#MOST_BYTES}
 */
public record StoredFile(RecordPath path, Content content) {
    public StoredFile {
        Objects.requireNonNull(path, "path");
        Objects.requireNonNull(content, "content");
    }

    /** The hash that an edit of this file names as the version it replaces. */
    public Sha256 sha256() {
        return content.sha256();
    }
}
