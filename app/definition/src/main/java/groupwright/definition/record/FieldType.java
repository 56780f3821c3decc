package groupwright.definition.record;

/** What a field holds; a closed set, so that codec, forms and generators know all of them. */
public sealed interface FieldType {
    /** Words. */
    record Text(boolean required) implements FieldType {}

    /** A whole number. */
    record Whole() implements FieldType {}

    /** A number with an optional band, an {@link Amount}. */
    record Number() implements FieldType {}

    /** One of a few words, an enum. */
    record Choice(Class<? extends Enum<?>> type) implements FieldType {}

    /** A day, ISO 8601. */
    record Day() implements FieldType {}

    /** The record's own id. */
    record OwnId() implements FieldType {}

    /** The id of another record. */
    record Reference(Class<? extends Entry> kind) implements FieldType {}

    /** Parameters of a figure. */
    record Parameters() implements FieldType {}

    /** An object of its own. */
    record Nested(Shape<?> shape) implements FieldType {}

    /** A list of any of these but lists. */
    record ListOf(FieldType element, int least, int most) implements FieldType {}
}
