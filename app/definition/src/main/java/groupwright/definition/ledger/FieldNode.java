package groupwright.definition.ledger;

import groupwright.definition.record.Field;
import groupwright.definition.record.RecordId;

/** A field that is read and what it gave; most reads are of this kind, so they go without an object for the read itself. */
final class FieldNode extends InputNode {
    final RecordId record;
    final Field<?, ?> field;

    FieldNode(RecordId record, Field<?, ?> field, Object value) {
        super(value);
        this.record = record;
        this.field = field;
    }

    @Override
    Read.OfField read() {
        return new Read.OfField(record, field);
    }

    @Override
    Object valueIn(Source source) {
        return source.field(record, field);
    }
}
