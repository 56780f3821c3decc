package groupwright.benchmarks;

import groupwright.definition.record.Address;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Criterion;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import groupwright.definition.record.Project;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Requirement;
import groupwright.definition.record.RiderGroup;
import groupwright.definition.record.Settings;
import groupwright.definition.record.Shape;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;

/** An invented project of 10,000 requirements, three concepts and three rider groups. */
final class LargeProject {
    static final int REQUIREMENTS = 10_000;
    static final int CONCEPTS = 3;
    static final int GROUPS = 3;

    private LargeProject() {}

    static RecordId requirement(int i) {
        return RecordId.of("R", i);
    }

    static RecordId concept(int i) {
        return RecordId.of("C", i + 1);
    }

    static RecordId group(int i) {
        return RecordId.of("G", i + 1);
    }

    static Definition make() {
        List<Entry> records = new ArrayList<>();
        for (int i = 0; i < REQUIREMENTS; i++) {
            records.add(requirementRecord(i));
        }
        for (int i = 0; i < CONCEPTS; i++) {
            records.add(
                    plain(Concept.class, concept(i), "rings", List.of(32 + i), "cogs", List.of(10, 12, 14, 40 + i)));
        }
        for (int i = 0; i < GROUPS; i++) {
            Amount rollOut = new Amount(2200 + i, 10);
            records.add(plain(RiderGroup.class, group(i), "rollOut_mm", Optional.of(rollOut)));
        }
        Project project = plain(Project.class, RecordId.PROJECT, "format", 1, "airDensity_kg_m3", Amount.of(1.2));
        return Definition.of(project, records);
    }

    private static Requirement requirementRecord(int i) {
        Criterion criterion = new Criterion(
                "k1",
                "reach",
                Settings.NONE,
                Criterion.Comparator.AT_LEAST,
                Amount.of(1500 + i % 1000),
                Optional.empty(),
                "mm",
                Optional.empty());
        return plain(Requirement.class, requirement(i), "criteria", List.of(criterion), "weight", 5);
    }

    /** With the targets of so many requirements, evenly spread, raised or set back. */
    static Definition withTargets(Definition definition, int count, double raisedBy) {
        return withEach(
                definition,
                count,
                i -> Address.of(requirement(i), "criteria", "k1", "target"),
                i -> Amount.of(1500 + i % 1000 + raisedBy));
    }

    /** With the rider groups of so many requirements, evenly spread, named or not. */
    static Definition withRiders(Definition definition, int count, List<RecordId> riders) {
        return withEach(definition, count, i -> Address.of(requirement(i), "riders"), i -> riders);
    }

    /** With the field that lies behind every answer set to this. */
    static Definition withAirDensity(Definition definition, double density) {
        return definition.with(Address.of(RecordId.PROJECT, "airDensity_kg_m3"), Optional.of(Amount.of(density)));
    }

    private static Definition withEach(
            Definition definition, int count, IntFunction<Address> place, IntFunction<Object> value) {
        Definition changed = definition;
        for (int i = 0; i < REQUIREMENTS; i += REQUIREMENTS / count) {
            changed = changed.with(place.apply(i), Optional.of(value.apply(i)));
        }
        return changed;
    }

    /** A record with these fields and as little as possible in the others. */
    private static <R extends Record & Entry> R plain(Class<R> type, RecordId id, Object... fields) {
        Shape<R> shape = Shape.of(type);
        Object[] values = new Object[shape.components().size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = usual(
                    shape.type().getRecordComponents()[i].getType(),
                    shape.components().get(i).least());
        }
        values[shape.indexOf("id")] = id;
        for (int i = 0; i < fields.length; i += 2) {
            values[shape.indexOf((String) fields[i])] = fields[i + 1];
        }
        if (shape.indexOf("retired") >= 0) {
            values[shape.indexOf("retired")] = "";
        }
        if (shape.indexOf("currency") >= 0) {
            values[shape.indexOf("currency")] = "EUR";
        }
        return shape.create(values);
    }

    private static Object usual(Class<?> type, double least) {
        if (type == Optional.class) {
            return Optional.empty();
        } else if (type == List.class) {
            return List.of();
        } else if (type == String.class) {
            return "words";
        } else if (type == Amount.class) {
            return Amount.of(Math.max(0, least));
        } else if (type == int.class) {
            return (int) Math.max(0, least);
        } else if (type == LocalDate.class) {
            return LocalDate.EPOCH;
        } else if (type.isEnum()) {
            return type.getEnumConstants()[0];
        }
        return RecordId.PROJECT;
    }
}
