package groupwright.definition.ledger;

import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.figure.Subject;
import groupwright.definition.record.Address;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import groupwright.definition.record.Part;
import groupwright.definition.record.RandomRecords;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKind;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.Settings;
import groupwright.definition.record.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;

/** Small and large projects for tests of the ledger. */
final class Toys {
    private static final RandomRecords RECORDS = new RandomRecords(new Random(5));

    private Toys() {}

    /** A project without records. */
    static Definition empty() {
        return Definition.of(RECORDS.project(1).project())
                .with(Address.of(RecordId.PROJECT, "leadConcept"), Optional.empty());
    }

    /** A record with these fields, the others at random; give names and values in turn. */
    static <R extends Entry> R record(RecordKind<R> kind, int number, Object... fields) {
        R like = RECORDS.record(kind, RecordId.of(kind.letters(), number), empty());
        return with(like, like.id(), fields);
    }

    /** The same record with another id and other fields. */
    static <R extends Entry> R with(R like, RecordId id, Object... fields) {
        @SuppressWarnings("unchecked") // the class of a record is that of its shape
        Shape<R> shape = (Shape<R>) Shape.of(like.getClass());
        Object[] values = new Object[shape.components().size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = shape.value(like, i);
        }
        values[shape.indexOf("id")] = id;
        for (int i = 0; i < fields.length; i += 2) {
            values[shape.indexOf((String) fields[i])] = fields[i + 1];
        }
        return shape.create(values);
    }

    static RecordId id(String text) {
        return new RecordId(text);
    }

    /** A question in the order figure, record, parameters as name and value. */
    static Ask ask(Catalogue catalogue, String figure, String record, String... parameters) {
        TreeMap<String, String> values = new TreeMap<>();
        for (int i = 0; i < parameters.length; i += 2) {
            values.put(parameters[i], parameters[i + 1]);
        }
        return new Ask(
                catalogue.find(figure).orElseThrow(),
                record.isEmpty() ? Subject.NONE : Subject.of(id(record)),
                new Settings(values));
    }

    /** Parts of which each is the parent of the next, from P-000 on. */
    static Definition chain(int length) {
        Part like = record(RecordKinds.PART, 0, "parent", Optional.empty());
        List<Entry> parts = new ArrayList<>(List.of(like));
        for (int i = 1; i < length; i++) {
            parts.add(with(like, RecordId.of("P", i), "parent", Optional.of(RecordId.of("P", i - 1))));
        }
        return Definition.of(empty().project(), parts);
    }
}
