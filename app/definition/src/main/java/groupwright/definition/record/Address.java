package groupwright.definition.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where a value stands in a project, for example {@code R-014.criteria.k1.target}: a record, then the field, then for
 * lists of objects the object's own id and its field.
 *
 * <p>Reads, inputs in workings, missing inputs, problems and links from a page are all addresses.
 *
 * @param record the record
 * @param path field names from the outside in; empty means the record itself
 */
public record Address(RecordId record, List<String> path) implements Comparable<Address> {
    public Address {
        path = List.copyOf(path);
    }

    /** The address of a field of a record. */
    public static Address of(RecordId record, String... path) {
        return new Address(record, List.of(path));
    }

    /** The address this text spells, or nothing where it spells none. */
    public static Optional<Address> parse(String text) {
        String[] words = text.split("\\.", -1);
        List<String> path = new ArrayList<>();
        for (int i = 1; i < words.length; i++) {
            if (words[i].isEmpty()) {
                return Optional.empty();
            }
            path.add(words[i]);
        }
        return RecordId.parse(words[0]).map(id -> new Address(id, path));
    }

    /** The address one level further in. */
    public Address child(String name) {
        List<String> longer = new ArrayList<>(path);
        longer.add(name);
        return new Address(record, longer);
    }

    /** The part behind the record, for example {@code criteria.k1.target}. */
    public String field() {
        return String.join(".", path);
    }

    @Override
    public int compareTo(Address other) {
        int byRecord = record.compareTo(other.record);
        return byRecord != 0 ? byRecord : field().compareTo(other.field());
    }

    @Override
    public String toString() {
        return path.isEmpty() ? record.text() : record.text() + "." + field();
    }
}
