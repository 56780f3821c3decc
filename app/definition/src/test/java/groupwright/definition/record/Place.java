package groupwright.definition.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A field of a record as it stands, found through the record's description.
 *
 * @param address where it stands
 * @param component its description
 */
public record Place(Address address, Component component) {
    /** All fields of a record that have an address, those inside objects and lists of objects too; not its own id. */
    public static List<Place> all(Entry entry) {
        List<Place> places = new ArrayList<>();
        collect(entry, new Address(entry.id(), List.of()), places);
        return places;
    }

    private static void collect(Object object, Address at, List<Place> places) {
        Shape<?> shape = Shape.of(object.getClass());
        for (int i = 0; i < shape.components().size(); i++) {
            Component component = shape.components().get(i);
            if (component.name().equals("id")) {
                continue;
            }
            Address address = inside(at, component.name());
            places.add(new Place(address, component));
            Object value = shape.value(object, i);
            Object inner = value instanceof Optional<?> optional && optional.isPresent() ? optional.get() : value;
            if (component.type() instanceof FieldType.Nested && inner instanceof Record) {
                collect(inner, address, places);
            } else if (inner instanceof List<?> list) {
                for (Object element : list) {
                    if (element instanceof Item item) {
                        collect(item, inside(address, item.id()), places);
                    }
                }
            }
        }
    }

    private static Address inside(Address outer, String name) {
        List<String> path = new ArrayList<>(outer.path());
        path.add(name);
        return new Address(outer.record(), path);
    }

    /** Whether the field may be empty. */
    public boolean isOptional() {
        return component.optional() == Component.Presence.OPTIONAL;
    }

    /** The kind of record the field refers to, be it by one id or by a list of them. */
    public Optional<RecordKind<?>> refersTo() {
        FieldType type = component.type() instanceof FieldType.ListOf list ? list.element() : component.type();
        return type instanceof FieldType.Reference reference
                ? Optional.of(RecordKinds.of(reference.kind()))
                : Optional.empty();
    }
}
