package groupwright.workbench.form;

import groupwright.definition.interchange.Draft;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.Item;
import groupwright.definition.record.ObjectEdit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;

/** A draft: edits change it alone, until it is added to the project. */
final class DraftSource implements FormSource {
    private final Runnable changed;
    private Draft draft;

    DraftSource(Draft draft, Runnable changed) {
        this.draft = draft;
        this.changed = changed;
    }

    Draft draft() {
        return draft;
    }

    @Override
    public Optional<Object> object() {
        return Optional.of(draft.object());
    }

    @Override
    public boolean isAsked(List<String> path) {
        return path.size() == 1 && draft.asked().contains(path.get(0));
    }

    @Override
    public Optional<Object> before(List<String> path) {
        return Optional.empty();
    }

    @Override
    public void edit(List<String> object, Map<String, Optional<?>> values, Consumer<Invalid> refused) {
        take(() -> draft.with(object, values), refused);
    }

    @Override
    public void list(
            String editName, List<String> list, UnaryOperator<List<? extends Item>> change, Consumer<Invalid> refused) {
        List<String> object = list.subList(0, list.size() - 1);
        String name = list.get(list.size() - 1);
        take(() -> draft.with(object, Map.of(name, Optional.of(change.apply(items(list))))), refused);
    }

    @SuppressWarnings("unchecked") // the path leads to a list of items
    private List<? extends Item> items(List<String> list) {
        return (List<? extends Item>) ObjectEdit.value(draft.object(), list).orElse(List.of());
    }

    private void take(java.util.function.Supplier<Draft> next, Consumer<Invalid> refused) {
        try {
            draft = next.get();
        } catch (Invalid invalid) {
            refused.accept(invalid);
            return;
        }
        changed.run();
    }
}
