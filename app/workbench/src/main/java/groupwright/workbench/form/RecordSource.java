package groupwright.workbench.form;

import groupwright.definition.record.Address;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.Item;
import groupwright.definition.record.ItemList;
import groupwright.definition.record.ObjectEdit;
import groupwright.definition.record.RecordId;
import groupwright.workbench.bench.Bench;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;

/** A record of the project: each edit is an edit of the project. */
record RecordSource(Bench bench, RecordId id) implements FormSource {
    @Override
    public Optional<Object> object() {
        return bench.definition().get(id).map(Object.class::cast);
    }

    @Override
    public boolean isAsked(List<String> path) {
        return false;
    }

    @Override
    public Optional<Object> before(List<String> path) {
        return bench.recent().before(new Address(id, path));
    }

    @Override
    public void edit(List<String> object, Map<String, Optional<?>> values, Consumer<Invalid> refused) {
        Address at = new Address(id, object);
        bench.edit(Optional.empty(), definition -> ObjectEdit.with(definition, at, values), refused);
    }

    @Override
    public void list(
            String name, List<String> list, UnaryOperator<List<? extends Item>> change, Consumer<Invalid> refused) {
        Address at = new Address(id, list);
        bench.edit(Optional.of(name), definition -> ItemList.edit(definition, at, change), refused);
    }
}
