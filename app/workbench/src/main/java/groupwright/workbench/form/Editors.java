package groupwright.workbench.form;

import groupwright.definition.record.Component;
import groupwright.definition.record.FieldType;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Shape;
import groupwright.workbench.look.Words;
import groupwright.workbench.notation.Criteria;
import groupwright.workbench.notation.Notations;
import groupwright.workbench.notation.RecordChoices;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Which editor a field gets; the one place where a field type gets its editor. */
final class Editors {
    /** Texts of one short word. */
    private static final Set<String> SHORT = Set.of("id", "unit", "currency");

    /** Texts of more than a few words. */
    private static final Set<String> LONG = Set.of(
            "statement",
            "rationale",
            "description",
            "words",
            "wording",
            "basis",
            "note",
            "reason",
            "stateReason",
            "question",
            "purpose",
            "summary",
            "source");

    private final Notations notations;
    private final Words words;

    Editors(Notations notations, Words words) {
        this.notations = notations;
        this.words = words;
    }

    Editor of(Shape<?> shape, Component component, Object object) {
        FieldType type = component.type();
        if (Notations.namesFigure(shape, component)) {
            return new FindEditor(typed -> Criteria.find(notations.catalogue(), typed), found -> found.title());
        } else if (type instanceof FieldType.Choice) {
            return new ChoiceEditor(allowed(component));
        } else if (type instanceof FieldType.Reference) {
            RecordChoices choices = notations.choices(type).orElseThrow();
            return new FindEditor(choices::find, found -> found.id() + " " + found.title());
        } else if (type instanceof FieldType.ListOf list && list.element() instanceof FieldType.Reference) {
            RecordChoices choices = notations.choices(type).orElseThrow();
            return new ChipsEditor(
                    choices::find, id -> RecordId.parse(id).map(choices::shown).orElse(id), words);
        } else if (SHORT.contains(component.name())) {
            return new LineEditor();
        } else if (isShort(component)) {
            return LineEditor.number(Notations.unit(shape, component, object));
        }
        return isLong(component) ? new WordsEditor() : new LineEditor();
    }

    private static List<String> allowed(Component component) {
        List<String> all = new ArrayList<>(Notations.allowed(component.type()));
        if (component.optional() == Component.Presence.OPTIONAL) {
            all.add(0, "");
        }
        return all;
    }

    private static boolean isLong(Component component) {
        return component.type() instanceof FieldType.Text && LONG.contains(component.name())
                || component.type() instanceof FieldType.Parameters
                || component.type() instanceof FieldType.ListOf list && list.element() instanceof FieldType.Text;
    }

    /** Whether a number, a day or a word: two of them fit in a line. */
    static boolean isShort(Component component) {
        return SHORT.contains(component.name())
                || component.type() instanceof FieldType.OwnId
                || component.type() instanceof FieldType.Whole
                || component.type() instanceof FieldType.Choice
                || component.type() instanceof FieldType.Number
                || component.type() instanceof FieldType.Day;
    }
}
