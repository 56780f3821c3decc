package groupwright.workbench.form;

import groupwright.definition.figure.Figure;
import groupwright.definition.figure.Parameter;
import groupwright.definition.record.Component;
import groupwright.definition.record.FieldType;
import groupwright.definition.record.Item;
import groupwright.definition.record.ObjectEdit;
import groupwright.definition.record.Settings;
import groupwright.definition.record.Shape;
import groupwright.workbench.notation.Criteria;
import groupwright.workbench.notation.FieldWords;
import groupwright.workbench.notation.Notations;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Makes the rows of one object of a form. */
final class RowMaker {
    private final FormContext context;
    private final FieldRow.Commit commit;
    private final java.util.function.Consumer<List<String>> restored;

    RowMaker(FormContext context, FieldRow.Commit commit, java.util.function.Consumer<List<String>> restored) {
        this.context = context;
        this.commit = commit;
        this.restored = restored;
    }

    /** The rows of a plain field: one, or one for each parameter where the field holds those of a known figure. */
    List<BoundRow> rows(Shape<?> shape, Component component, Object object, List<String> at) {
        Optional<Figure> figure = context.notations().figure(shape, object);
        if (component.type() instanceof FieldType.Parameters && figure.isPresent()) {
            Settings given = (Settings) shape.value(object, shape.indexOf(component.name()));
            List<String> known =
                    figure.get().parameters().stream().map(Parameter::name).toList();
            if (known.containsAll(given.values().keySet())) {
                return figure.get().parameters().stream()
                        .map(parameter -> parameter(shape, component, object, at, parameter))
                        .toList();
            }
        }
        return List.of(field(shape, component, object, at));
    }

    private BoundRow field(Shape<?> shape, Component component, Object object, List<String> at) {
        FieldWords words = context.fieldWords();
        List<String> path = and(at, component.name());
        boolean number = Editors.isShort(component);
        String unit = number || component.unit().isEmpty() ? "" : ", " + component.unit();
        String label = FieldWords.label(component) + unit;
        String behind = Notations.unit(shape, component, object);
        FieldRow.About about = new FieldRow.About(
                label,
                nameOf(label, object),
                number ? behind : "",
                words.help(component) + (behind.isEmpty() || !number ? "" : " (" + behind + ")"),
                number ? RowStack.Room.HALF : RowStack.Room.LINE);
        Editor editor = context.editors().of(shape, component, object);
        return new BoundRow(
                row(about, editor, context.notations().of(shape, component, object), path),
                at,
                path,
                root -> ObjectEdit.value(root, path),
                root -> context.notations().of(shape, component, owner(root, at, object)),
                (holder, value) -> spread(shape, component, holder, value));
    }

    /** A figure brings its unit, parameters and comparator with it. */
    private Map<String, Optional<?>> spread(Shape<?> shape, Component component, Object object, Optional<?> value) {
        if (Notations.namesFigure(shape, component) && value.isPresent()) {
            Optional<Figure> figure =
                    context.notations().catalogue().find(value.get().toString());
            if (figure.isPresent()) {
                return Criteria.choosing(figure.get(), shape, object, context.currency());
            }
        }
        return Map.of(component.name(), value);
    }

    private FieldRow row(
            FieldRow.About about, Editor editor, groupwright.workbench.notation.Notation notation, List<String> path) {
        return new FieldRow(about, editor, notation, commit, () -> restored.accept(path));
    }

    private BoundRow parameter(
            Shape<?> shape, Component component, Object object, List<String> at, Parameter parameter) {
        List<String> holder = and(at, component.name());
        List<String> path = and(holder, parameter.name());
        String label = FieldWords.sentenceCase(parameter.name().replace('-', ' '));
        boolean word = parameter.type() == Parameter.Type.WORD;
        FieldRow.About about = new FieldRow.About(
                label,
                nameOf(label, object),
                "",
                context.fieldWords().help(parameter),
                word ? RowStack.Room.LINE : RowStack.Room.HALF);
        return new BoundRow(
                row(
                        about,
                        word ? new LineEditor() : LineEditor.number(""),
                        context.notations().of(parameter),
                        path),
                at,
                path,
                root -> settings(root, holder).get(parameter.name()),
                root -> context.notations().of(parameter),
                (owner, value) ->
                        Map.of(component.name(), Optional.of(with(settings(owner, component), parameter, value))));
    }

    private static Settings settings(Object root, List<String> path) {
        return (Settings) ObjectEdit.value(root, path).orElse(Settings.NONE);
    }

    private static Settings settings(Object owner, Component component) {
        return settings(owner, List.of(component.name()));
    }

    private static Settings with(Settings settings, Parameter parameter, Optional<?> value) {
        java.util.TreeMap<String, String> values = new java.util.TreeMap<>(settings.values());
        values.remove(parameter.name());
        value.ifPresent(text -> values.put(parameter.name(), (String) text));
        return new Settings(values);
    }

    private static Object owner(Object root, List<String> at, Object otherwise) {
        return ObjectEdit.value(root, at).orElse(otherwise);
    }

    private static String nameOf(String label, Object object) {
        return object instanceof Item item ? label + ", " + item.id() : label;
    }

    static List<String> and(List<String> path, String name) {
        List<String> longer = new ArrayList<>(path);
        longer.add(name);
        return List.copyOf(longer);
    }
}
