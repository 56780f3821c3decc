package groupwright.documents.project;

import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.Requirement;
import groupwright.definition.record.Shape;
import java.util.ArrayList;
import java.util.List;

/** The sample with more of the same. */
final class LargeProjects {
    private LargeProjects() {}

    /** The sample with its requirements repeated under new ids until there are so many. */
    static Definition withRequirements(Definition sample, int count) {
        List<Requirement> given = sample.all(RecordKinds.REQUIREMENT);
        List<Entry> copies = new ArrayList<>();
        for (int i = given.size(); i < count; i++) {
            Requirement model = given.get(i % given.size());
            copies.add(copy(model, RecordId.of("R", i + 1)));
        }
        Definition all = sample;
        for (Entry copy : copies) {
            all = all.with(copy);
        }
        return all;
    }

    private static Requirement copy(Requirement model, RecordId id) {
        Shape<Requirement> shape = Shape.of(Requirement.class);
        Object[] values = new Object[shape.components().size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = shape.value(model, i);
        }
        values[shape.indexOf("id")] = id;
        return shape.create(values);
    }
}
