package groupwright.definition.record;

/** A record of a project: an immutable value with a permanent id. */
public interface Entry {
    /** The permanent id. */
    RecordId id();

    /** What people call it, one line. */
    String title();

    /** Why it was retired, or empty while it is in use. Records are retired, never deleted. */
    String retired();

    /** Whether it is in use. */
    default boolean isCurrent() {
        return retired().isEmpty();
    }
}
