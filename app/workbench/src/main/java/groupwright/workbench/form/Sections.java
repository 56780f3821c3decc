package groupwright.workbench.form;

import groupwright.definition.interchange.Draft;
import groupwright.definition.record.Component;
import groupwright.definition.record.FieldType;
import groupwright.definition.record.Item;
import groupwright.definition.record.ItemList;
import groupwright.definition.record.Shape;
import groupwright.documents.numbers.FieldLabel;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Words;
import groupwright.workbench.notation.FieldWords;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.swing.BorderFactory;

/** The parts of a form for objects inside the record: one that may be there, or a list of them. */
final class Sections {
    private static final Pattern EXAMPLE = Pattern.compile("for example ([A-Za-z0-9-]+)");
    private static final List<String> TITLES = List.of("name", "figure", "text", "quantity", "by", "criterion");

    private final FormContext context;
    private final FormSource source;
    private final FormBody body;
    private final Map<List<String>, DraftPanel> drafts = new LinkedHashMap<>();

    Sections(FormContext context, FormSource source, FormBody body) {
        this.context = context;
        this.source = source;
        this.body = body;
    }

    private Words words() {
        return context.words();
    }

    /** An object that may be there or not. */
    void inner(Stack into, Component component, FieldType.Nested nested, Optional<Object> object, List<String> path) {
        String noun = FieldLabel.of(component.name());
        boolean optional = component.optional() == Component.Presence.OPTIONAL && !body.isLocked(path);
        List<Action> actions = !optional
                ? List.of()
                : object.isPresent()
                        ? List.of(action("form.remove", noun, () -> replace(path, Optional.empty())))
                        : List.of(action("form.add", noun, () -> add(path, nested.shape(), noun)));
        into.add(new SectionHead(
                SectionHead.Level.SECTION, FieldWords.label(component), note(object.isEmpty()), actions));
        object.ifPresent(present -> body.build(into, present, path));
        addDraft(into, path);
    }

    private String note(boolean empty) {
        return empty ? words().text("section.none") : "";
    }

    private void replace(List<String> path, Optional<?> value) {
        source.edit(
                path.subList(0, path.size() - 1),
                Map.of(path.get(path.size() - 1), value),
                invalid -> body.say(invalid));
    }

    private void add(List<String> path, Shape<?> shape, String noun) {
        Draft draft = Draft.of(shape, Map.of());
        if (draft.isComplete()) {
            replace(path, Optional.of(draft.object()));
        } else {
            open(path, draft, noun, object -> replace(path, Optional.of(object)));
        }
    }

    /** A list of items. */
    void items(
            Stack into, Component component, FieldType.Nested nested, List<? extends Item> items, List<String> path) {
        String noun = noun(nested.shape());
        boolean locked = body.isLocked(path);
        List<Action> add = locked ? List.of() : List.of(action("form.add", noun, () -> addItem(path, nested, items)));
        into.add(new SectionHead(SectionHead.Level.SECTION, FieldWords.label(component), note(items.isEmpty()), add));
        for (int i = 0; i < items.size(); i++) {
            Item item = items.get(i);
            into.add(new SectionHead(
                    SectionHead.Level.ITEM,
                    item.id(),
                    title(item),
                    locked ? List.of() : itemActions(path, noun, items, i)));
            body.build(into, item, RowMaker.and(path, item.id()));
        }
        addDraft(into, path);
    }

    private List<Action> itemActions(List<String> path, String noun, List<? extends Item> items, int at) {
        String id = items.get(at).id();
        Action up = itemAction("item.up", noun, id, path, list -> ItemList.moved(list, id, -1));
        Action down = itemAction("item.down", noun, id, path, list -> ItemList.moved(list, id, 1));
        up.setEnabled(at > 0);
        down.setEnabled(at < items.size() - 1);
        return List.of(
                up,
                down,
                itemAction("item.duplicate", noun, id, path, list -> ItemList.duplicated(list, id)),
                itemAction("item.remove", noun, id, path, list -> ItemList.removed(list, id)));
    }

    private Action itemAction(
            String key, String noun, String id, List<String> path, UnaryOperator<List<? extends Item>> change) {
        String name = words().text(key + ".name", noun + " " + id);
        return new Action(words().text(key), name, () -> source.list(name, path, change, invalid -> body.say(invalid)));
    }

    private Action action(String key, String noun, Runnable action) {
        String text = words().text(key, noun);
        return new Action(text, text, action);
    }

    private void addItem(List<String> path, FieldType.Nested nested, List<? extends Item> items) {
        String noun = noun(nested.shape());
        Draft draft = Draft.of(nested.shape(), Map.of("id", ItemList.freeId(items, likeId(nested.shape(), items))));
        java.util.function.Consumer<Object> add = object -> source.list(
                words().text("form.add", noun),
                path,
                list -> ItemList.added(list, (Item) object),
                invalid -> body.say(invalid));
        if (draft.isComplete()) {
            add.accept(draft.object());
        } else {
            open(path, draft, noun, add);
        }
    }

    /** The id new ones are numbered after: the last one's, or the example in the description. */
    private static String likeId(Shape<?> shape, List<? extends Item> items) {
        if (!items.isEmpty()) {
            return items.get(items.size() - 1).id();
        }
        Matcher example =
                EXAMPLE.matcher(shape.components().get(shape.indexOf("id")).help());
        return example.find() ? example.group(1) : noun(shape).charAt(0) + "1";
    }

    private static String noun(Shape<?> shape) {
        String name = shape.type().getSimpleName();
        return FieldLabel.of(name.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + name.substring(1));
    }

    /** What an item is about: its first telling text. */
    private String title(Item item) {
        Shape<?> shape = Shape.of(item.getClass());
        for (String name : TITLES) {
            int position = shape.indexOf(name);
            if (position >= 0 && shape.value(item, position) instanceof String text && !text.isEmpty()) {
                return context.notations()
                        .catalogue()
                        .find(text)
                        .map(figure -> figure.name())
                        .orElse(text);
            }
        }
        return "";
    }

    private void open(List<String> path, Draft draft, String noun, java.util.function.Consumer<Object> add) {
        DraftPanel panel = new DraftPanel(
                context.ofObject(),
                draft,
                noun,
                object -> {
                    close(path);
                    add.accept(object);
                },
                () -> close(path));
        drafts.put(path, panel);
        body.rebuildNow();
        panel.focusFirst();
    }

    private void close(List<String> path) {
        drafts.remove(path);
        body.rebuildNow();
    }

    private void addDraft(Stack into, List<String> path) {
        DraftPanel panel = drafts.get(path);
        if (panel != null) {
            panel.setBorder(BorderFactory.createEmptyBorder(Metric.STEP.px(), 0, Metric.STEP.px(), 0));
            into.add(panel);
        }
    }

    /** The draft open in a list or for an inner object. */
    Optional<DraftPanel> draft(List<String> path) {
        return Optional.ofNullable(drafts.get(path));
    }
}
