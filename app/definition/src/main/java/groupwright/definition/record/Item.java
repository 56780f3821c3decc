package groupwright.definition.record;

/** An object in a list of a record, known inside that list by its own id, for example a criterion {@code k1}. */
public interface Item {
    /** Unique inside the list; letters, digits and hyphens. */
    String id();
}
