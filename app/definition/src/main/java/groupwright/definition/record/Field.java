package groupwright.definition.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A typed way to one field of a record (or of an object inside it). Figures read through these and through nothing else,
 * which is why every read is known.
 *
 * <p>Two fields are equal when they lead to the same place and take the same from it: the ids in a list of objects are
 * another field than the objects.
 *
 * @param <R> the record or object it starts from
 * @param <T> what stands there
 */
public final class Field<R, T> {
    private final Class<?> owner;
    private final List<String> path;
    private final Function<R, T> getter;
    private final Part part;
    private final int hash;

    /** What of the place is read: all of it, all with one Optional for two, or only which objects a list holds. */
    private enum Part {
        WHOLE,
        FLAT,
        IDS
    }

    private Field(Class<?> owner, List<String> path, Function<R, T> getter) {
        this(owner, path, getter, Part.WHOLE);
    }

    private Field(Class<?> owner, List<String> path, Function<R, T> getter, Part part) {
        this.owner = owner;
        this.part = part;
        this.path = List.copyOf(path);
        this.getter = getter;
        this.hash = 31 * owner.hashCode() + this.path.hashCode() + part.ordinal();
    }

    /**
     * A field of a Java record.
     *
     * @param name the component's name; a test holds it against the description of the record
     */
    public static <R extends Record, T> Field<R, T> of(Class<R> owner, String name, Function<R, T> getter) {
        return new Field<>(owner, List.of(name), getter);
    }

    /** A field inside an object that may be absent; absent there means absent here. */
    public static <R, O, T> Field<R, Optional<T>> inside(Field<R, Optional<O>> outer, Field<O, T> inner) {
        return new Field<>(
                outer.owner,
                joined(outer.path, inner.path),
                record -> outer.getter.apply(record).map(inner.getter));
    }

    /** An optional field inside an object that may be absent itself; absent either way means absent here. */
    public static <R, O, T> Field<R, Optional<T>> optionalInside(
            Field<R, Optional<O>> outer, Field<O, Optional<T>> inner) {
        return new Field<>(
                outer.owner,
                joined(outer.path, inner.path),
                record -> outer.getter.apply(record).flatMap(inner.getter),
                Part.FLAT);
    }

    /** A field of the object with the given id in a list; absent where the list has no such object. */
    public static <R, I extends Item, T> Field<R, Optional<T>> item(
            Field<R, List<I>> list, String id, Field<I, T> inner) {
        List<String> path = new ArrayList<>(list.path);
        path.add(id);
        return new Field<>(list.owner, joined(path, inner.path), record -> {
            for (I item : list.getter.apply(record)) {
                if (item.id().equals(id)) {
                    return Optional.of(inner.getter.apply(item));
                }
            }
            return Optional.empty();
        });
    }

    /** The ids in a list of objects, in the list's order. */
    public static <R, I extends Item> Field<R, List<String>> ids(Field<R, List<I>> list) {
        return new Field<>(
                list.owner,
                list.path,
                record -> list.getter.apply(record).stream().map(Item::id).toList(),
                Part.IDS);
    }

    private static List<String> joined(List<String> first, List<String> second) {
        List<String> all = new ArrayList<>(first);
        all.addAll(second);
        return all;
    }

    /** The class of records it belongs to. */
    public Class<?> owner() {
        return owner;
    }

    /** Names from the outside in, as in an {@link Address}. */
    public List<String> path() {
        return path;
    }

    /** The value in a record. */
    public T in(R record) {
        return getter.apply(record);
    }

    /** The unit that ends the innermost name, as it is shown, for example {@code kg/m³}; empty where there is none. */
    public String unit() {
        return UnitSuffix.shown(path.get(path.size() - 1));
    }

    @Override
    public boolean equals(Object other) {
        return other == this
                || other instanceof Field<?, ?> field
                        && field.hash == hash
                        && field.owner == owner
                        && field.part == part
                        && field.path.equals(path);
    }

    @Override
    public int hashCode() {
        return hash;
    }

    @Override
    public String toString() {
        return owner.getSimpleName() + "." + String.join(".", path);
    }
}
