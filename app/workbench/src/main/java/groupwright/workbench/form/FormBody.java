package groupwright.workbench.form;

import groupwright.definition.record.Component;
import groupwright.definition.record.FieldType;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.Item;
import groupwright.definition.record.ObjectEdit;
import groupwright.definition.record.Shape;
import groupwright.workbench.notation.Notations;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The fields of one object and of all objects inside it. What a record refuses because of another field is held back and goes
 * with the next edit of the same object: a comparator and its upper limit change together.
 */
final class FormBody extends Stack {
    private static final long serialVersionUID = 1L;

    private final transient FormContext context;
    private final transient FormSource source;
    private final transient RowMaker rows;
    private final transient Sections sections;
    private final transient Map<List<String>, BoundRow> bound = new LinkedHashMap<>();
    private final transient Map<List<String>, Map<String, Optional<?>>> held = new LinkedHashMap<>();
    private transient List<String> outline = List.of();

    FormBody(FormContext context, FormSource source) {
        this.context = context;
        this.source = source;
        this.rows = new RowMaker(context, this::commit, this::restored);
        this.sections = new Sections(context, source, this);
        refresh();
    }

    /** Shows the object as it is now. */
    void refresh() {
        Optional<Object> object = source.object();
        List<String> next = object.map(Outline::of).orElse(List.of());
        if (!next.equals(outline)) {
            outline = next;
            rebuild(object);
        } else {
            object.ifPresent(root -> bound.values().forEach(row -> update(row, root)));
        }
    }

    private void update(BoundRow row, Object root) {
        Optional<?> value =
                source.isAsked(row.path()) ? Optional.empty() : row.value().apply(root);
        String asking = source.isAsked(row.path()) ? row.row().sentence() : "";
        row.row().show(value, row.notation().apply(root));
        if (!asking.isEmpty() && row.row().sentence().isEmpty()) {
            row.row().say(asking);
        }
        Optional<?> waiting = Optional.ofNullable(held.get(row.object()))
                .map(fields -> fields.get(last(row.path())))
                .orElse(Optional.empty());
        if (waiting.isPresent() && waiting.equals(value)) {
            held.get(row.object()).remove(last(row.path()));
        }
        row.row()
                .was(source.before(row.path())
                        .map(before -> context.words()
                                .text("field.was", row.notation().apply(root).shown(present(before)) + unit(row)))
                        .orElse(""));
    }

    private static Optional<?> present(Object before) {
        return before instanceof Optional<?> optional ? optional : Optional.of(before);
    }

    private static String unit(BoundRow row) {
        return row.row().unit().isEmpty() ? "" : "\u202f" + row.row().unit();
    }

    private static String last(List<String> path) {
        return path.get(path.size() - 1);
    }

    private void rebuild(Optional<Object> object) {
        Map<List<String>, String> typed = new LinkedHashMap<>();
        Optional<List<String>> focus = Optional.empty();
        for (BoundRow row : bound.values()) {
            if (row.row().isTouched()) {
                typed.put(row.path(), row.row().editor().text());
            }
            if (row.row().editor().input().isFocusOwner()) {
                focus = Optional.of(row.path());
            }
        }
        bound.clear();
        removeAll();
        object.ifPresent(root -> build(this, root, List.of()));
        object.ifPresent(root -> bound.values().forEach(row -> update(row, root)));
        typed.forEach((path, text) -> row(path).ifPresent(row -> row.resume(text)));
        focus.flatMap(this::row).ifPresent(row -> row.editor().input().requestFocusInWindow());
        revalidate();
        repaint();
    }

    /** Builds anew although the object did not change. */
    void rebuildNow() {
        rebuild(source.object());
    }

    /** The draft open in a list or for an inner object. */
    Optional<DraftPanel> draft(List<String> path) {
        return sections.draft(path);
    }

    /** Adds rows, then sections, of an object. */
    void build(Stack into, Object object, List<String> at) {
        Shape<?> shape = Shape.of(object.getClass());
        for (Component component : shown(shape, at)) {
            if (Notations.isPlain(component.type())) {
                for (BoundRow row : rows.rows(shape, component, object, at)) {
                    bound.put(row.path(), row);
                    into.add(row.row());
                    if (isLocked(row.path())) {
                        row.row().lock();
                    }
                }
            }
        }
        for (Component component : shown(shape, at)) {
            List<String> path = RowMaker.and(at, component.name());
            if (component.type() instanceof FieldType.Nested nested) {
                sections.inner(into, component, nested, ObjectEdit.value(object, List.of(component.name())), path);
            } else if (component.type() instanceof FieldType.ListOf list
                    && list.element() instanceof FieldType.Nested nested) {
                sections.items(into, component, nested, items(shape, component, object), path);
            }
        }
    }

    private List<Component> shown(Shape<?> shape, List<String> at) {
        return shape.components().stream()
                .filter(component ->
                        !at.isEmpty() || !context.arrangement().hidden().contains(component.name()))
                .toList();
    }

    boolean isLocked(List<String> path) {
        boolean itemId = path.size() > 1 && last(path).equals("id");
        return !itemId && context.arrangement().locked().contains(path.get(0));
    }

    @SuppressWarnings("unchecked") // described as a list of items
    private static List<? extends Item> items(Shape<?> shape, Component component, Object object) {
        return (List<? extends Item>) shape.value(object, shape.indexOf(component.name()));
    }

    private void restored(List<String> path) {
        Optional.ofNullable(bound.get(path))
                .flatMap(row -> Optional.ofNullable(held.get(row.object())))
                .ifPresent(fields -> fields.remove(last(path)));
        bound.values().stream() // what was said because of that field holds no more
                .filter(row -> !row.row().isTouched() && !source.isAsked(row.path()))
                .forEach(row -> row.row().say(""));
    }

    private void commit(FieldRow row, Optional<?> value) {
        BoundRow committed = bound.values().stream()
                .filter(one -> one.row() == row)
                .findFirst()
                .orElseThrow();
        Object object = source.object()
                .flatMap(root -> ObjectEdit.value(root, committed.object()))
                .orElse(Optional.empty());
        Map<String, Optional<?>> values = new LinkedHashMap<>(held.getOrDefault(committed.object(), Map.of()));
        values.putAll(committed.spread().values(object, value));
        source.edit(committed.object(), values, invalid -> refused(committed, values, invalid));
    }

    private void refused(BoundRow row, Map<String, Optional<?>> values, Invalid invalid) {
        Optional<FieldRow> named = nearest(List.of(invalid.field().split("\\.")));
        if (named.isPresent() && named.get() != row.row()) {
            held.computeIfAbsent(row.object(), any -> new LinkedHashMap<>()).putAll(values);
            row.row().was(context.words().text("field.waits", named.get().label()));
        }
        FieldRow at = named.orElse(row.row());
        at.say(context.fieldWords().refusal(invalid, at.label()));
    }

    /** Says a refusal at the field it names; false where no field here is meant. */
    boolean say(Invalid invalid) {
        Optional<FieldRow> named = nearest(List.of(invalid.field().split("\\.")));
        named.ifPresent(row -> row.say(context.fieldWords().refusal(invalid, row.label())));
        return named.isPresent();
    }

    /** The row of a field, or of the field around it. */
    private Optional<FieldRow> nearest(List<String> path) {
        for (int length = path.size(); length > 0; length--) {
            Optional<FieldRow> row = row(path.subList(0, length));
            if (row.isPresent()) {
                return row;
            }
        }
        return Optional.empty();
    }

    Optional<FieldRow> row(List<String> path) {
        return Optional.ofNullable(bound.get(path)).map(BoundRow::row);
    }

    boolean isAnythingWrong() {
        return bound.values().stream().anyMatch(row -> !row.row().sentence().isEmpty());
    }

    List<BoundRow> rows() {
        return List.copyOf(bound.values());
    }

    /** Takes what is typed anywhere, as leaving the fields would. */
    void commitAll() {
        List.copyOf(bound.values()).forEach(row -> row.row().commit());
    }
}
