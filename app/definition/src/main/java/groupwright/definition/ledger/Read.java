package groupwright.definition.ledger;

import groupwright.definition.record.Address;
import groupwright.definition.record.Field;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKind;
import java.util.Optional;

/** One thing that was read from a project: each is remembered, and looked at again when the project changes. */
public sealed interface Read {
    /** A field of a record. */
    record OfField(RecordId record, Field<?, ?> field) implements Read {
        /** Where it stands. */
        public Address address() {
            return new Address(record, field.path());
        }
    }

    /** Whether a record exists. */
    record Presence(RecordId record) implements Read {}

    /** The ids of all records of a kind. */
    record Members(RecordKind<?> kind) implements Read {}

    /**
     * Which records a block holds: on level 0 the ids numbered 16·index to 16·index + 15, above that which of its 16
     * blocks of the level below hold any.
     */
    record Block(RecordKind<?> kind, int level, int index) implements Read {}

    /** The records whose field names the target; nothing for those that name none. */
    record Referring(Field<?, ?> reference, Optional<RecordId> target) implements Read {}

    /** The circle into which following a field leads. */
    record Circle(Field<?, ?> next, RecordId from) implements Read {}
}
