package groupwright.workbench.form;

import groupwright.definition.record.Component;
import groupwright.definition.record.Item;
import groupwright.definition.record.Settings;
import groupwright.definition.record.Shape;
import groupwright.workbench.notation.Notations;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What decides which rows a form has: while it is equal, rows only change their texts. */
final class Outline {
    private final List<String> lines = new ArrayList<>();

    private Outline() {}

    static List<String> of(Object root) {
        Outline outline = new Outline();
        outline.object(root, "");
        return outline.lines;
    }

    private void object(Object object, String at) {
        Shape<?> shape = Shape.of(object.getClass());
        lines.add(at + " " + object.getClass().getName());
        for (int i = 0; i < shape.components().size(); i++) {
            Component component = shape.components().get(i);
            Object value = shape.value(object, i);
            String path = at + "." + component.name();
            if (Notations.namesFigure(shape, component)) {
                lines.add(path + "=" + value);
            } else if (value instanceof Settings settings) {
                lines.add(path + "=" + settings.values().keySet());
            } else if (Notations.isPlain(component.type())) {
                lines.add(path + " " + Notations.unit(shape, component, object));
            } else {
                inner(value, path);
            }
        }
    }

    private void inner(Object value, String path) {
        Object present = value instanceof Optional<?> optional
                ? optional.map(Object.class::cast).orElse("")
                : value;
        if (present instanceof List<?> list) {
            list.forEach(item -> object(item, path + "." + ((Item) item).id()));
        } else if (present instanceof Record nested) {
            object(nested, path);
        }
    }
}
