package groupwright.definition.ledger;

import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import groupwright.definition.record.Field;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Gives what a read asks for from one definition. */
final class Source {
    /** Stands for the field of a record that is not there. */
    static final Object ABSENT = new Object() {
        @Override
        public String toString() {
            return "no such record";
        }
    };

    private final Definition definition;
    private final References references;
    private final Circles circles;
    private RecordId latest = RecordId.PROJECT; // fields of one record are read one after another
    private Optional<Entry> latestEntry;

    Source(Definition definition, References references, Circles circles) {
        this.definition = definition;
        this.references = references;
        this.circles = circles;
        this.latestEntry = definition.get(latest);
    }

    Definition definition() {
        return definition;
    }

    References references() {
        return references;
    }

    Object read(Read read) {
        if (read instanceof Read.OfField field) {
            return field(field.record(), field.field());
        } else if (read instanceof Read.Presence presence) {
            return definition.get(presence.record()).isPresent();
        } else if (read instanceof Read.Members members) {
            return definition.idsBetween(members.kind(), 0, Integer.MAX_VALUE);
        } else if (read instanceof Read.Block block) {
            return block(block);
        } else if (read instanceof Read.Referring referring) {
            return references.to(definition, referring.reference(), referring.target());
        }
        Read.Circle circle = (Read.Circle) read;
        return circles.from(definition, circle.next(), circle.from());
    }

    @SuppressWarnings("unchecked") // a field is only ever read from records of its owner
    Object field(RecordId record, Field<?, ?> field) {
        if (!record.equals(latest)) {
            latest = record;
            latestEntry = definition.get(record);
        }
        Optional<Entry> entry = latestEntry;
        if (entry.isEmpty()) {
            return ABSENT;
        }
        if (!field.owner().isInstance(entry.get())) {
            throw new IllegalArgumentException(record + " has no field " + field);
        }
        return ((Field<Entry, Object>) field).in(entry.get());
    }

    private Object block(Read.Block block) {
        RecordKind<?> kind = block.kind();
        if (block.level() == 0) {
            return definition.idsBetween(kind, 16 * block.index(), 16 * block.index() + 16);
        }
        int width = 1 << (4 * block.level());
        List<Integer> filled = new ArrayList<>();
        for (int i = 0; i < 16; i++) {
            int first = (16 * block.index() + i) * width;
            if (definition.anyBetween(kind, first, first + width)) {
                filled.add(i);
            }
        }
        return List.copyOf(filled);
    }
}
