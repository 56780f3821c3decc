package groupwright.definition.ledger;

import groupwright.definition.record.Field;
import groupwright.definition.record.Item;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Fields of objects in lists, made once for each id that is in use, so that reading one again makes no garbage. */
final class FieldCache {
    private record Key(Field<?, ?> list, String id, Field<?, ?> inner) {}

    private final Map<Key, Field<?, ?>> items = new HashMap<>();
    private final Map<Field<?, ?>, Field<?, ?>> ids = new HashMap<>();

    @SuppressWarnings("unchecked") // the key decides the type of the value
    <R, I extends Item, T> Field<R, Optional<T>> item(Field<R, List<I>> list, String id, Field<I, T> inner) {
        return (Field<R, Optional<T>>)
                items.computeIfAbsent(new Key(list, id, inner), any -> Field.item(list, id, inner));
    }

    @SuppressWarnings("unchecked") // the key decides the type of the value
    <R, I extends Item> Field<R, List<String>> ids(Field<R, List<I>> list) {
        return (Field<R, List<String>>) ids.computeIfAbsent(list, any -> Field.ids(list));
    }
}
