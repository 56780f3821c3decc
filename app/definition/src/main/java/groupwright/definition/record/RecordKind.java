package groupwright.definition.record;

/**
 * One kind of record: its letters, its folder, its Java record. A new kind is one class and one line in
 * {@link RecordKinds}.
 *
 * @param letters what its ids begin with
 * @param folder where its files lie in a project
 * @param noun what one of them is called
 * @param type the Java record
 * @param <R> the Java record
 */
public record RecordKind<R extends Entry>(String letters, String folder, String noun, Class<R> type) {
    /** The description of its fields. */
    public Shape<R> shape() {
        return Shape.of(type);
    }

    /** Where a record of this kind lies, relative to the project's folder. */
    public String path(RecordId id) {
        return folder.isEmpty() ? id.text() + ".json" : folder + "/" + id.text() + ".json";
    }
}
