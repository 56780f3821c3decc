package groupwright.definition.record;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Random valid records and projects, made from nothing but the descriptions of the records: limits, list sizes, choices,
 * optional fields, references. Rules between fields of one record, which no description states, are met by
 * {@link RecordRules}. The same seed gives the same records.
 */
public final class RandomRecords {
    private static final int NAMED_NOWHERE = 20; // one reference in so many names a record that is not there
    private static final List<String> WORDS = List.of(
            "cog",
            "Ring",
            "climb",
            "größer",
            "10 %",
            "\"quoted\"",
            "two\nlines",
            "{braces}",
            "=1+2",
            "ø-å",
            "😀",
            "\\");

    private final Random random;

    /** A generator whose every choice comes from this source. */
    public RandomRecords(Random random) {
        this.random = random;
    }

    /** The source of all choices. */
    Random random() {
        return random;
    }

    /**
     * A project with about this many records beside itself, at least one of each kind; they refer to one another forwards
     * and backwards, so circles among parts are likely, and now and then to a record that does not exist.
     */
    public Definition project(int records) {
        Map<RecordKind<?>, List<RecordId>> ids = new LinkedHashMap<>();
        List<RecordKind<?>> kinds =
                RecordKinds.all().subList(1, RecordKinds.all().size());
        for (RecordKind<?> kind : kinds) {
            ids.put(kind, ids(kind, 1 + random.nextInt(2 * Math.max(1, records / kinds.size()))));
        }
        List<Entry> made = new ArrayList<>();
        Known known = kind -> ids.getOrDefault(kind, List.of());
        ids.forEach((kind, own) -> own.forEach(id -> made.add(record(kind, id, known))));
        return Definition.of(record(RecordKinds.PROJECT, RecordId.PROJECT, known), made);
    }

    private List<RecordId> ids(RecordKind<?> kind, int count) {
        List<RecordId> ids = new ArrayList<>();
        int number = random.nextInt(3);
        for (int i = 0; i < count; i++) {
            ids.add(RecordId.of(kind.letters(), number));
            number += random.nextInt(8) == 0 ? 1 + random.nextInt(300) : 1; // gaps, as after many years
        }
        return ids;
    }

    /** A record that refers to records of a project, or to itself. */
    public <R extends Entry> R record(RecordKind<R> kind, RecordId id, Definition around) {
        return record(kind, id, known(around));
    }

    /** The ids that can be referred to. */
    private interface Known {
        List<RecordId> of(RecordKind<?> kind);
    }

    private static Known known(Definition definition) {
        return kind -> definition.idsBetween(kind, 0, Integer.MAX_VALUE);
    }

    private <R extends Entry> R record(RecordKind<R> kind, RecordId id, Known ids) {
        return kind.type().cast(object(kind.shape(), id.text(), ids));
    }

    private Object object(Shape<?> shape, String id, Known ids) {
        Draft draft = new Draft(shape);
        for (Component component : shape.components()) {
            boolean isId = component.name().equals("id");
            if (isId) {
                draft.set("id", component.type() instanceof FieldType.OwnId ? new RecordId(id) : id);
            } else if (component.optional() == Component.Presence.OPTIONAL) {
                draft.set(component.name(), random.nextInt(4) == 0 ? Optional.empty() : optional(component, ids));
            } else {
                draft.set(component.name(), value(component, component.type(), ids));
            }
        }
        RecordRules.keep(draft, random);
        return draft.create();
    }

    private Optional<Object> optional(Component component, Known ids) {
        return Optional.of(value(component, component.type(), ids));
    }

    /** A random value for a field, without the Optional around it; keeps the limits of the field and nothing else. */
    public Object value(Component component, Definition around) {
        return value(component, component.type(), known(around));
    }

    private Object value(Component component, FieldType type, Known ids) {
        if (type instanceof FieldType.Text) {
            return words();
        } else if (type instanceof FieldType.Whole) {
            return whole(component);
        } else if (type instanceof FieldType.Number) {
            return amount(component);
        } else if (type instanceof FieldType.Choice choice) {
            return one(Arrays.asList(choice.type().getEnumConstants()));
        } else if (type instanceof FieldType.Day) {
            return LocalDate.of(2015, 1, 1).plusDays(random.nextInt(6000));
        } else if (type instanceof FieldType.Reference reference) {
            return reference(RecordKinds.of(reference.kind()), ids);
        } else if (type instanceof FieldType.Parameters) {
            return settings();
        } else if (type instanceof FieldType.Nested nested) {
            return object(nested.shape(), "i" + random.nextInt(1000), ids);
        } else if (type instanceof FieldType.ListOf list) {
            return list(component, list, ids);
        }
        throw new IllegalStateException("an object's own id is not chosen at random");
    }

    private List<Object> list(Component component, FieldType.ListOf type, Known ids) {
        int size = type.least() + random.nextInt(Math.min(type.most() - type.least(), 4) + 1);
        List<Object> list = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            list.add(
                    type.element() instanceof FieldType.Nested nested
                            ? object(nested.shape(), "k" + (i + 1), ids) // each id once
                            : value(component, type.element(), ids));
        }
        return list;
    }

    private RecordId reference(RecordKind<?> kind, Known ids) {
        List<RecordId> known = ids.of(kind);
        return known.isEmpty() || random.nextInt(NAMED_NOWHERE) == 0
                ? RecordId.of(kind.letters(), 900_000 + random.nextInt(1000))
                : one(known);
    }

    private String words() {
        int count = 1 + random.nextInt(4);
        return random.ints(count, 0, WORDS.size()).mapToObj(WORDS::get).collect(Collectors.joining(" "));
    }

    private int whole(Component component) {
        long least = (long) Math.max(component.least(), -1000);
        long most = (long) Math.min(component.most(), Math.max(1000, least));
        return (int) (least + random.nextInt((int) (most - least) + 1));
    }

    /** Mostly round numbers, some with every digit, some at a limit; one in two with a band. */
    private Amount amount(Component component) {
        double least = Math.max(component.least(), -1e6);
        double most = Math.min(component.most(), 1e6);
        double within = least + (most - least) * random.nextDouble();
        double value = switch (random.nextInt(8)) {
            case 0 -> least;
            case 1 -> most;
            case 2 -> within;
            default -> Math.min(most, Math.max(least, Math.rint(within * 10) / 10));
        };
        return new Amount(value, random.nextBoolean() ? 0 : Math.rint(1 + (most - least) * random.nextDouble()) / 100);
    }

    private Settings settings() {
        TreeMap<String, String> values = new TreeMap<>();
        for (int i = random.nextInt(3); i > 0; i--) {
            values.put("p-" + random.nextInt(5), random.nextBoolean() ? "word" : "" + random.nextInt(100) / 10.0);
        }
        return new Settings(values);
    }

    <T> T one(Collection<T> from) {
        List<T> list = from instanceof List<T> already ? already : List.copyOf(new TreeSet<>(from));
        return list.get(random.nextInt(list.size()));
    }
}
