package groupwright.definition.interchange;

import groupwright.definition.problem.Problem;
import groupwright.definition.record.Component;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import groupwright.definition.record.FieldType;
import groupwright.definition.record.Item;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKind;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Finds references to records that are not there. */
public final class ReferenceCheck {
    private final Definition definition;
    private final Set<RecordId> unreadable;
    private final List<Problem> problems = new ArrayList<>();

    private ReferenceCheck(Definition definition, Set<RecordId> unreadable) {
        this.definition = definition;
        this.unreadable = unreadable;
    }

    /**
     * All references that lead nowhere or to the wrong kind. O(fields).
     *
     * @param unreadable records whose files are there but could not be read
     */
    public static List<Problem> check(Definition definition, Set<RecordId> unreadable) {
        ReferenceCheck check = new ReferenceCheck(definition, unreadable);
        for (RecordKind<?> kind : RecordKinds.all()) {
            for (Entry record : definition.all(kind)) {
                check.object(kind, record, kind.shape(), record, "");
            }
        }
        return check.problems;
    }

    private void object(RecordKind<?> kind, Entry record, Shape<?> shape, Object object, String path) {
        for (int i = 0; i < shape.components().size(); i++) {
            Component component = shape.components().get(i);
            Object value = shape.value(object, i);
            String at = path.isEmpty() ? component.name() : path + "." + component.name();
            Object present = value instanceof Optional<?> optional ? optional.orElse(null) : value;
            if (present != null) { // absent refers to nothing
                value(kind, record, component.type(), present, at);
            }
        }
    }

    private void value(RecordKind<?> kind, Entry record, FieldType type, Object value, String path) {
        if (type instanceof FieldType.Reference reference) {
            reference(kind, record, reference, (RecordId) value, path);
        } else if (type instanceof FieldType.Nested nested) {
            object(kind, record, nested.shape(), value, path);
        } else if (type instanceof FieldType.ListOf list) {
            for (Object element : (List<?>) value) {
                value(
                        kind,
                        record,
                        list.element(),
                        element,
                        element instanceof Item item ? path + "." + item.id() : path);
            }
        }
    }

    private void reference(RecordKind<?> kind, Entry record, FieldType.Reference type, RecordId target, String path) {
        RecordKind<?> wanted = RecordKinds.of(type.kind());
        String wrong;
        String remedy;
        if (!target.letters().equals(wanted.letters())) {
            wrong = "names " + target + ", which is no " + wanted.noun();
            remedy = "name one like " + wanted.letters() + "-001";
        } else if (unreadable.contains(target)) {
            wrong = "names " + target + ", whose file could not be read";
            remedy = "mend " + wanted.path(target);
        } else if (definition.get(target).isEmpty()) {
            wrong = "names " + target + ", but there is no such " + wanted.noun();
            remedy = "add it or name another";
        } else {
            return;
        }
        problems.add(new Problem(kind.path(record.id()), 0, 0, record.id().text(), path, wrong, remedy));
    }
}
